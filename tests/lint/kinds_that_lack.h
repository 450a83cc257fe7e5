// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A kind of entries of which all is stated, and kinds of which one thing is not: for must_not_compile.txt.

#include "record/kinds/body.h"

namespace crownring::sample {

template <int>
struct Said {
    ItemId item;
    bool operator==(const Said&) const = default;
};

template <class Body>
struct All {
    static constexpr std::string_view name = "sample.said";
    static constexpr std::string_view keys = "item";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &Body::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&Body::item};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static Body read(ObjectReader& reader);
    static void write(nlohmann::json& into, const Body& body);
};

using Whole = Said<0>;
using WithoutName = Said<1>;
using WithoutTime = Said<2>;
using WithoutMentions = Said<3>;
using WithoutBrings = Said<4>;
using WithoutToldUnder = Said<5>;
using WithoutHasRows = Said<6>;
using WithoutInspection = Said<7>;
using WithoutRead = Said<8>;
using WithoutWrite = Said<9>;
using WithoutKeys = Said<10>;
using NotStated = Said<11>;

}

namespace crownring {

template <>
struct Kind<sample::Whole> : sample::All<sample::Whole> {};
template <>
struct Kind<sample::WithoutName> : sample::All<sample::WithoutName> {
    void name() = delete;
};
template <>
struct Kind<sample::WithoutTime> : sample::All<sample::WithoutTime> {
    void time() = delete;
};
template <>
struct Kind<sample::WithoutMentions> : sample::All<sample::WithoutMentions> {
    void mentions() = delete;
};
template <>
struct Kind<sample::WithoutBrings> : sample::All<sample::WithoutBrings> {
    void brings() = delete;
};
template <>
struct Kind<sample::WithoutToldUnder> : sample::All<sample::WithoutToldUnder> {
    void toldUnder() = delete;
};
template <>
struct Kind<sample::WithoutHasRows> : sample::All<sample::WithoutHasRows> {
    void hasRows() = delete;
};
template <>
struct Kind<sample::WithoutInspection> : sample::All<sample::WithoutInspection> {
    void inspection() = delete;
};
template <>
struct Kind<sample::WithoutRead> : sample::All<sample::WithoutRead> {
    void read() = delete;
};
template <>
struct Kind<sample::WithoutWrite> : sample::All<sample::WithoutWrite> {
    void write() = delete;
};
template <>
struct Kind<sample::WithoutKeys> : sample::All<sample::WithoutKeys> {
    void keys() = delete;
};

}

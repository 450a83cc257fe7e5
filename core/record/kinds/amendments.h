// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries about entries. What they point at must be in the record too; `amends` and the record see to that.

#include "record/kinds/kind.h"

#include <string>

namespace crownring {

struct EntryCorrected {
    EntryId replaces;
    std::string with; ///< a JSON object: a shallow patch, null removes a key
    bool operator==(const EntryCorrected&) const = default;
};

template <>
struct Kind<EntryCorrected> {
    static constexpr std::string_view name = "entry.corrected";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static EntryCorrected read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EntryCorrected& body);
};

struct EntryVoided {
    EntryId voids;
    std::string reason;
    bool operator==(const EntryVoided&) const = default;
};

template <>
struct Kind<EntryVoided> {
    static constexpr std::string_view name = "entry.voided";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static EntryVoided read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EntryVoided& body);
};

}

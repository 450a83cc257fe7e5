// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// States of life: items and balloons go out of service and come back, and a balloon takes another registration. The
/// record keeps everything; what is out of service is no longer asked for.

#include "measure/name.h"
#include "record/kinds/kind.h"
#include "record/kinds/parts/parts.h"

#include <optional>
#include <string>

namespace crownring {

enum class ServiceState {
    InService,
    LaidUp,
    Sold,
    Scrapped,
    Lost,
    Away,          ///< at a test house or a shop; as all that follow, of items alone
    Unserviceable, ///< kept apart until it is released (ML.A.504, from memory)
    Quarantined,   ///< its state is not known: the same
    Condemned,     ///< for good (49 CFR 180.203, read)
};
inline constexpr int serviceStateCount = 9;
inline constexpr int balloonStateCount = 5;
/// "in-service", "laid-up", "sold", "scrapped", "lost", "away", "unserviceable", "quarantined", "condemned".
[[nodiscard]] std::string_view serviceStateName(ServiceState state);
[[nodiscard]] std::optional<ServiceState> serviceStateFrom(std::string_view name);
/// Whether it is kept apart from what may be fitted: it comes back with a release of its own, or not at all.
[[nodiscard]] constexpr bool isKeptApart(ServiceState state) { return state >= ServiceState::Unserviceable; }

/// From its moment on the item is in this state, until another entry says otherwise.
struct ItemState {
    ItemId item;
    ServiceState state = ServiceState::InService;
    std::string to;                       ///< with `Sold` and `Away`: to whom; may be empty
    std::optional<PartRelease> release{}; ///< by which it comes back
    bool operator==(const ItemState&) const = default;
};

template <>
struct Kind<ItemState> {
    static constexpr std::string_view name = "item.state";
    static constexpr std::string_view keys = "item state [to release{form number}]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", &ItemState::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ItemState::item};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static ItemState read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ItemState& body);
};

/// The same of a balloon, with all that is fitted to it then and later.
struct BalloonState {
    Registration balloon;
    ServiceState state = ServiceState::InService;
    std::string to; ///< with `Sold`: to whom; may be empty
    bool operator==(const BalloonState&) const = default;
};

template <>
struct Kind<BalloonState> {
    static constexpr std::string_view name = "balloon.state";
    static constexpr std::string_view keys = "balloon state [to]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloon", &BalloonState::balloon}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&BalloonState::balloon};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static BalloonState read(ObjectReader& reader);
    static void write(nlohmann::json& into, const BalloonState& body);
};

/// The balloon flies under another registration from then on, which was entered for it. What is fitted goes over, and
/// what was adopted for it by name binds it further; flights stay with the registration that they were logged for.
struct BalloonRenamed {
    Registration balloon;
    Registration to;
    bool operator==(const BalloonRenamed&) const = default;
};

template <>
struct Kind<BalloonRenamed> {
    static constexpr std::string_view name = "balloon.renamed";
    static constexpr std::string_view keys = "balloon to";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloon", &BalloonRenamed::balloon}, Key{"to", &BalloonRenamed::to}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&BalloonRenamed::balloon, &BalloonRenamed::to};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static BalloonRenamed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const BalloonRenamed& body);
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What somebody states ahead: how something will be flown, a flight, a visit. Nothing of it was done: no clock, no
/// standing and no answer about a kit changes by it; forecasts and the agenda rest on it. It is withdrawn by a void.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/kind.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace crownring {

/// Most that may be stated: times the usual pace, flights a week.
inline constexpr double mostOfPace = 1000;

/// How a balloon or an item will be flown on days ahead, instead of what its log says: a festival, a winter pause, a
/// sale. Of two plans for one day the one that was stated later holds.
struct UsePlanned {
    std::variant<Registration, ItemId> subject;
    CivilDate from;
    std::optional<CivilDate> to;        ///< inclusive; absent: until further notice
    std::optional<double> times;        ///< the usual pace; 0: not at all
    std::optional<double> flightsAWeek; ///< instead of it
    bool operator==(const UsePlanned&) const = default;
};
/// One of the two.
[[nodiscard]] inline const ItemId* itemAhead(const UsePlanned& plan) { return std::get_if<ItemId>(&plan.subject); }
[[nodiscard]] inline const Registration* balloonAhead(const UsePlanned& plan) {
    return std::get_if<Registration>(&plan.subject);
}

template <>
struct Kind<UsePlanned> {
    static constexpr std::string_view name = "use.planned";
    static constexpr std::string_view keys = "one of balloon, item; from [to] and one of times, flights_a_week";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", &itemAhead}, Key{"balloon", &balloonAhead}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&itemAhead, &balloonAhead};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static UsePlanned read(ObjectReader& reader);
    static void write(nlohmann::json& into, const UsePlanned& body);
};

/// A flight that is to be made on the day of the entry, or the flights of that day together.
struct FlightPlanned {
    Registration balloon;
    Usage use{Minutes{0}, Landings{1}, Inflations{1}};
    std::optional<std::vector<ItemId>> kit; ///< absent: what is fitted
    bool operator==(const FlightPlanned&) const = default;
};

template <>
struct Kind<FlightPlanned> {
    static constexpr std::string_view name = "flight.planned";
    static constexpr std::string_view keys = "balloon minutes [landings inflations kit]";
    static constexpr TimeOfDay time{12, 0};
    static constexpr std::tuple mentions{Key{"balloon", &FlightPlanned::balloon}, Key{"kit", &FlightPlanned::kit}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&FlightPlanned::balloon};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static FlightPlanned read(ObjectReader& reader);
    static void write(nlohmann::json& into, const FlightPlanned& body);
};

/// Something that a visit is to cover.
struct PlannedWork {
    ItemId item;
    RequirementId requirement;
    auto operator<=>(const PlannedWork&) const = default;
};

/// A stay at a station that is planned, with what it should cover.
struct VisitPlanned {
    Registration balloon;
    std::string station; ///< in words
    CivilDate from;
    CivilDate to; ///< inclusive
    std::vector<PlannedWork> covers;
    bool operator==(const VisitPlanned&) const = default;
};
/// The items of what it covers, each once.
[[nodiscard]] std::vector<ItemId> itemsToVisit(const VisitPlanned& visit);

template <>
struct Kind<VisitPlanned> {
    static constexpr std::string_view name = "visit.planned";
    static constexpr std::string_view keys = "balloon station from to [covers{item requirement}]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloon", &VisitPlanned::balloon}, Key{"covers", itemsToVisit}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&VisitPlanned::balloon};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static VisitPlanned read(ObjectReader& reader);
    static void write(nlohmann::json& into, const VisitPlanned& body);
};

}

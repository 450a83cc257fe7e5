// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What was flown, and what happened.

#include "measure/amount.h"
#include "measure/usage.h"
#include "record/kinds/kind.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace crownring {

/// The track of a recorder that a flight was read from.
struct TrackSource {
    std::string file;        ///< without folders
    int fixesSkipped = 0;    ///< that could not be used
    bool beganAloft = false; ///< recorded from in the air, so the flight was longer
    bool endedAloft = false;
    bool operator==(const TrackSource&) const = default;
};

struct FlightLogged {
    Registration balloon;
    Usage use{Minutes{0}, Landings{1}, Inflations{1}};
    std::optional<std::vector<ItemId>> kit; ///< absent: what is fitted at that moment
    std::optional<Celsius> hottest;
    bool tethered = false;
    std::optional<TimeOfDay> takeOff{}; ///< as a log has it where it does not state the zone: no time of the record
    std::optional<TrackSource> track{};
    bool operator==(const FlightLogged&) const = default;
};

template <>
struct Kind<FlightLogged> {
    static constexpr std::string_view name = "flight.logged";
    static constexpr std::string_view keys =
        "balloon minutes [landings inflations kit max_temp_c tethered take_off track{file skipped began_aloft "
        "ended_aloft}]";
    static constexpr TimeOfDay time{12, 0};
    static constexpr std::tuple mentions{Key{"balloon", &FlightLogged::balloon}, Key{"kit", &FlightLogged::kit}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static FlightLogged read(ObjectReader& reader);
    static void write(nlohmann::json& into, const FlightLogged& body);
};

/// Keys "minutes", "landings", "inflations", of one flight or of some together: each one where it is left out.
[[nodiscard]] Usage readUse(ObjectReader& reader);
void writeUse(nlohmann::json& into, const Usage& use);

/// Something happened to an item, or to a balloon: then to all that was fitted to it, and to each item of the kits that
/// flew as it on that day. Which of them it was nobody said, so none is passed over; who knows reports it on the item.
struct EventReported {
    std::variant<Registration, ItemId> subject;
    std::string event;
    std::optional<Celsius> hottest; ///< how hot the fabric became; where a tell-tale gives a band, its upper edge
    std::optional<Minutes> lasted;  ///< how long
    bool operator==(const EventReported&) const = default;
};

/// One of the two.
[[nodiscard]] inline const ItemId* itemOf(const EventReported& event) { return std::get_if<ItemId>(&event.subject); }
[[nodiscard]] inline const Registration* balloonOf(const EventReported& event) {
    return std::get_if<Registration>(&event.subject);
}

template <>
struct Kind<EventReported> {
    static constexpr std::string_view name = "event.reported";
    static constexpr std::string_view keys = "event and one of balloon, item [temp_c minutes]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", itemOf}, Key{"balloon", balloonOf}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static EventReported read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EventReported& body);
};

}

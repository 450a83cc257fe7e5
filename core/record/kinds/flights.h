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

/// The lowest and the highest that the record takes of an altitude.
inline constexpr Metres lowestTaken{-500};
inline constexpr Metres highestTaken{22'000};

/// What the record takes of a flight's fuel and load.
inline constexpr Kilograms leastFuelTaken{0.1};
inline constexpr Kilograms mostFuelTaken{3000};
inline constexpr Litres leastLitresTaken{0.1};
inline constexpr Litres mostLitresTaken{6000};
inline constexpr Kilograms leastLoadTaken{1};
inline constexpr Kilograms mostLoadTaken{5000};

/// The track of a recorder that a flight was read from.
struct TrackSource {
    std::string file;        ///< without folders
    int fixesSkipped = 0;    ///< that could not be used
    bool beganAloft = false; ///< recorded from in the air, so the flight was longer
    bool endedAloft = false;
    std::optional<Metres> highest{}; ///< as the track's altitudes
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
    std::optional<Kilograms> fuelWeighed{}; ///< burnt on it, all cylinders together
    std::optional<Litres> fuelRead{};       ///< the same, where it was read off in litres
    std::optional<Celsius> outside{};       ///< the air's temperature
    std::optional<Kilograms> load{};        ///< people and what they took along
    bool operator==(const FlightLogged&) const = default;
};

template <>
struct Kind<FlightLogged> {
    static constexpr std::string_view name = "flight.logged";
    static constexpr std::string_view keys =
        "balloon minutes [landings inflations kit max_temp_c tethered take_off track{file skipped began_aloft "
        "ended_aloft highest_m} fuel_kg fuel_l oat_c load_kg]";
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
    std::optional<Celsius> hottest;   ///< how hot the fabric became; where a tell-tale gives a band, its upper edge
    std::optional<Minutes> lasted;    ///< how long
    std::optional<Metres> altitude{}; ///< at which it happened, as a track has it
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
    static constexpr std::string_view keys = "event and one of balloon, item [temp_c minutes altitude_m]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", itemOf}, Key{"balloon", balloonOf}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing;
    static EventReported read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EventReported& body);
};

/// Who is told of an event: the authority of the state, or whoever holds the type certificate.
enum class Informed { Authority, Holder };
inline constexpr int informedCount = 2;
/// "authority", "holder".
[[nodiscard]] std::string_view informedName(Informed informed);
[[nodiscard]] std::optional<Informed> informedFrom(std::string_view name);

/// That an event of the record was reported to somebody outside. It says no more than that: whether a report was owed
/// nobody computes.
struct EventNotified {
    std::variant<Registration, ItemId> subject; ///< that of the event
    EntryId event;                              ///< the entry that tells of it
    Informed to = Informed::Authority;
    std::string ref; ///< the number of the report; may be empty
    bool operator==(const EventNotified&) const = default;
};

[[nodiscard]] inline const ItemId* notifiedItem(const EventNotified& said) {
    return std::get_if<ItemId>(&said.subject);
}
[[nodiscard]] inline const Registration* notifiedBalloon(const EventNotified& said) {
    return std::get_if<Registration>(&said.subject);
}

template <>
struct Kind<EventNotified> {
    static constexpr std::string_view name = "event.notified";
    static constexpr std::string_view keys = "event{its entry} to and one of balloon, item [ref]";
    static constexpr TimeOfDay time{23, 59};
    static constexpr std::tuple mentions{Key{"item", &notifiedItem}, Key{"balloon", &notifiedBalloon}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&notifiedItem, &notifiedBalloon};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static EventNotified read(ObjectReader& reader);
    static void write(nlohmann::json& into, const EventNotified& body);
};

}

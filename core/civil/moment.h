// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A moment of the record: a day and a minute of that day (UTC where a time was stated). Where no time was stated the
/// kind of the entry decides, so that paper without times still has one order.

#include "civil/civil_date.h"
#include "measure/name.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace crownring {

/// Minutes after 00:00, 0 to 1439.
class TimeOfDay {
public:
    constexpr TimeOfDay() = default;
    constexpr TimeOfDay(int hour, int minute) : m_minutes(hour * 60 + minute) {}
    /// Strictly "HH:MMZ".
    static Result<TimeOfDay> parse(std::string_view text);

    [[nodiscard]] constexpr int minutes() const { return m_minutes; }
    /// "HH:MMZ".
    [[nodiscard]] std::string iso() const;
    friend constexpr auto operator<=>(TimeOfDay, TimeOfDay) = default;

private:
    int m_minutes = 0;
};

/// Minutes since 1970-01-01 00:00.
class Moment {
public:
    constexpr Moment() = default;
    constexpr explicit Moment(std::int64_t minutes) : m_minutes(minutes) {}
    constexpr Moment(CivilDate on, TimeOfDay time) : m_minutes(std::int64_t{on.dayNumber()} * 1440 + time.minutes()) {}

    static constexpr Moment startOf(CivilDate on) { return {on, TimeOfDay(0, 0)}; }
    /// The first moment that is no longer on that day: everything of the day is before it.
    static constexpr Moment endOf(CivilDate on) { return Moment(startOf(on).m_minutes + 1440); }

    [[nodiscard]] constexpr std::int64_t minutes() const { return m_minutes; }
    [[nodiscard]] CivilDate on() const;
    friend constexpr auto operator<=>(Moment, Moment) = default;

private:
    std::int64_t m_minutes = 0;
};

/// The place of an entry in the order of the record: by moment, ties by entry id.
struct Stamp {
    Moment at;
    EntryId id;

    /// Before every entry of that moment.
    static Stamp before(Moment at) { return {at, EntryId{}}; }
    friend auto operator<=>(const Stamp&, const Stamp&) = default;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Days for other programs' calendars, as iCalendar (RFC 5545, read), written through libical.
///
/// Every event is of whole days and has a UID that stays, so that a calendar that reads the file again changes what it
/// holds instead of adding to it (3.8.4.7). The end is written as the day after (3.6.1). What is known on which day
/// shows in DTSTAMP, which is 00:00 UTC of that day, and in SEQUENCE, which grows from day to day (3.8.7.2, 3.8.7.4):
/// the same record asked on the same day gives the same bytes.

#include "civil/civil_date.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

struct CalendarEvent {
    std::string uid; ///< `calendarUid`
    CivilDate first;
    CivilDate last; ///< inclusive
    std::string summary;
    std::string description{};
    std::vector<std::string> categories{};
    bool isBusy = false; ///< it takes the days up; else they stay free
};

/// Of what an event is about: the same parts give the same text for ever, other parts another one.
///
///     {"due", "ENV-1007", "us.annual"}     due.ENV-1007.us%2Eannual@crownring
///
/// What is no letter, digit or hyphen is written as %XX, and dots stand between parts alone.
[[nodiscard]] std::string calendarUid(std::span<const std::string_view> parts);

/// The last year that libical writes.
inline constexpr int lastCalendarYear = 2999;

/// One VCALENDAR, lines folded and ended as the RFC asks (3.1).
/// @param on the day of which the record speaks
/// @pre all days are of years up to `lastCalendarYear`
[[nodiscard]] std::string calendarText(std::span<const CalendarEvent> events, std::string_view name, CivilDate on);

}

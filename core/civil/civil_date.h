// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Civil dates: a day of the Gregorian calendar, without time of day and without time zone.
///
/// The hard question of this room is "what is 31 January plus one month?". Rules differ, so there is no `+`: the caller
/// says which rule is meant (`DayRule`).
///
///     addMonths(31 Jan 2024, 1, DayRule::Same)      == 29 Feb 2024   the last day of a shorter month
///     addMonths(28 Feb 2023, 12, DayRule::Same)     == 28 Feb 2024   never snaps to a later month end
///     addMonths(15 Jan 2024, 12, DayRule::MonthEnd) == 31 Jan 2025   US calendar months (FAA-H-8083-11 ch. 2)

#include "measure/count.h"
#include "problem/problem.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace crownring {

/// How a period in months ends.
enum class DayRule {
    Same, ///< on the same day of the month, or the last day of a shorter month (Reg. 1182/71 Art. 3(2)(c), from memory)
    MonthEnd, ///< on the last day of that month
};

/// A day from 1583-01-01 to 9999-12-31. Arithmetic stops at these ends rather than leaving them.
class CivilDate {
public:
    /// 1970-01-01.
    constexpr CivilDate() = default;

    /// 9999-12-31: "whatever the day".
    static CivilDate last();
    /// @param number days since 1970-01-01; outside the range of years it is brought to the nearer end.
    static CivilDate fromDayNumber(std::int64_t number);
    static std::optional<CivilDate> fromYearMonthDay(int year, int month, int day);

    /// Strictly "YYYY-MM-DD"; BadDate for anything else, also for 2023-02-30.
    static Result<CivilDate> parse(std::string_view text);

    [[nodiscard]] constexpr std::int32_t dayNumber() const { return m_days; }
    [[nodiscard]] int year() const;
    [[nodiscard]] int month() const;
    [[nodiscard]] int day() const;
    /// "YYYY-MM-DD".
    [[nodiscard]] std::string iso() const;

    friend constexpr auto operator<=>(CivilDate, CivilDate) = default;

private:
    constexpr explicit CivilDate(std::int32_t days) : m_days(days) {}
    std::int32_t m_days = 0;
};

[[nodiscard]] CivilDate addMonths(CivilDate date, std::int64_t months, DayRule rule);
[[nodiscard]] CivilDate addDays(CivilDate date, std::int64_t days);
[[nodiscard]] CivilDate endOfMonth(CivilDate date);
/// Days from `from` to `to`; negative when `to` is earlier.
[[nodiscard]] constexpr Days daysBetween(CivilDate from, CivilDate to) {
    return Days(std::int64_t{to.dayNumber()} - from.dayNumber());
}

/// A day, or only a month as stamped on a cylinder ("2016-05"). A month keeps its precision: it never becomes a day
/// when written again; where a day is needed it counts as its last one.
class DayOrMonth {
public:
    DayOrMonth() = default;
    explicit DayOrMonth(CivilDate day) : m_date(day) {}
    /// "YYYY-MM-DD" or "YYYY-MM"; BadDate for anything else.
    static Result<DayOrMonth> parse(std::string_view text);

    [[nodiscard]] bool isMonth() const { return m_month; }
    /// The day, or the last day of the month.
    [[nodiscard]] CivilDate lastDay() const { return m_date; }
    [[nodiscard]] std::string iso() const;

    bool operator==(const DayOrMonth&) const = default;

private:
    CivilDate m_date;
    bool m_month = false;
};
/// The day is before that one, or before any of that month.
[[nodiscard]] bool isBefore(CivilDate day, const DayOrMonth& other);

}

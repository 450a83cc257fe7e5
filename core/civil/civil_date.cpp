// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/civil_date.h"

#include "civil/padded.h"
#include "civil/stamped_month.h"
#include "problem/faults/components/part_fault.h"
#include "problem/faults/written_fault.h"

#include <boost/date_time/gregorian/gregorian_types.hpp>

#include <algorithm>

namespace crownring {

namespace {

using boost::gregorian::gregorian_calendar;
using YearMonthDay = gregorian_calendar::ymd_type;

// Boost counts Julian days. Constants, so that dates are right in the initialisers of other sources too; a test holds
// them against Boost.
constexpr std::int64_t epoch = 2'440'588;   // 1970-01-01
constexpr std::int64_t firstDay = -141'349; // 1583-01-01
constexpr std::int64_t lastDay = 2'932'896; // 9999-12-31

YearMonthDay parts(CivilDate date) {
    return gregorian_calendar::from_day_number(static_cast<unsigned>(date.dayNumber() + epoch));
}

int lastDayOf(int year, int month) {
    return gregorian_calendar::end_of_month_day(static_cast<unsigned short>(year), static_cast<unsigned short>(month));
}

/// Digits only, exactly as many as the text has.
std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

}

CivilDate CivilDate::last() { return CivilDate(static_cast<std::int32_t>(lastDay)); }

CivilDate CivilDate::fromDayNumber(std::int64_t number) {
    return CivilDate(static_cast<std::int32_t>(std::clamp(number, firstDay, lastDay)));
}

std::optional<CivilDate> CivilDate::fromYearMonthDay(int year, int month, int day) {
    if (year < 1583 || year > 9999 || month < 1 || month > 12 || day < 1 || day > lastDayOf(year, month))
        return std::nullopt;
    const YearMonthDay date(static_cast<unsigned short>(year), static_cast<unsigned short>(month),
                            static_cast<unsigned short>(day));
    return fromDayNumber(gregorian_calendar::day_number(date) - epoch);
}

Result<CivilDate> CivilDate::parse(std::string_view text) {
    if (text.size() == 10 && text[4] == '-' && text[7] == '-') {
        const auto year = digits(text.substr(0, 4));
        const auto month = digits(text.substr(5, 2));
        const auto day = digits(text.substr(8, 2));
        if (year && month && day)
            if (const auto date = fromYearMonthDay(*year, *month, *day))
                return *date;
    }
    return problem(WrittenFault::NotADate, {text});
}

int CivilDate::year() const { return parts(*this).year; }
int CivilDate::month() const { return parts(*this).month; }
int CivilDate::day() const { return parts(*this).day; }

std::string CivilDate::iso() const {
    const auto date = parts(*this);
    return padded(date.year, 4) + "-" + padded(date.month, 2) + "-" + padded(date.day, 2);
}

CivilDate addMonths(CivilDate date, std::int64_t months, DayRule rule) {
    constexpr std::int64_t longest = 12 * 10'000;
    const auto from = parts(date);
    const auto index = std::int64_t{from.year} * 12 + (from.month - 1) + std::clamp(months, -longest, longest);
    if (index < 1583 * 12)
        return CivilDate::fromDayNumber(firstDay);
    if (index >= 10'000 * 12)
        return CivilDate::fromDayNumber(lastDay);
    const int year = static_cast<int>(index / 12);
    const int month = static_cast<int>(index % 12) + 1;
    const int last = lastDayOf(year, month);
    const int day = rule == DayRule::MonthEnd ? last : std::min<int>(from.day, last);
    return *CivilDate::fromYearMonthDay(year, month, day);
}

CivilDate addDays(CivilDate date, std::int64_t days) {
    constexpr std::int64_t longest = 4'000'000;
    return CivilDate::fromDayNumber(date.dayNumber() + std::clamp(days, -longest, longest));
}

CivilDate endOfMonth(CivilDate date) { return addMonths(date, 0, DayRule::MonthEnd); }

Result<DayOrMonth> DayOrMonth::parse(std::string_view text) {
    const auto months = monthsStamped(text);
    if (text.size() == 7) {
        const auto first = CivilDate::parse(std::string(text) + "-01");
        if (!first && months.size() == 1)
            return problem(PartFault::StampOfOneMonth, {text, months.front()});
        if (!first)
            return problem(WrittenFault::NotADateOrMonth, {text});
        DayOrMonth month(endOfMonth(*first));
        month.m_month = true;
        return month;
    }
    if (months.size() == 2)
        return problem(PartFault::StampAmbiguous, {text, months.front(), months.back()});
    if (months.size() == 1)
        return problem(PartFault::StampOfOneMonth, {text, months.front()});
    return CivilDate::parse(text).map([](CivilDate day) { return DayOrMonth(day); });
}

bool isBefore(CivilDate day, const DayOrMonth& other) {
    const auto written = other.iso();
    return day.iso().substr(0, written.size()) < written;
}

std::string DayOrMonth::iso() const { return m_month ? m_date.iso().substr(0, 7) : m_date.iso(); }

}

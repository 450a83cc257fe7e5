// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/months.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr int daysOfWeek = 7;

int daysOfMonth(int year, int month) {
    constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool isLeap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return days.at(static_cast<std::size_t>(month) - 1) + (month == 2 && isLeap ? 1 : 0);
}

class Folding {
public:
    explicit Folding(const UseLog& log) : m_log(log) {}

    MonthlyUse fold() {
        for (const auto& span : spansBetween(m_log.first, m_log.last))
            add(span);
        return std::move(m_use);
    }

private:
    void add(const SpanAhead& span) {
        FlownMonth month{span.month, static_cast<double>(span.days), 0, span.days / daysOfWeek, 0, 0};
        std::array<double, 5> ofWeek{};
        const auto first = span.first.dayNumber();
        for (; m_next < m_log.days.size() && m_log.days[m_next].on.dayNumber() < first + span.days; ++m_next) {
            const auto& day = m_log.days[m_next];
            month.flights += day.flights;
            if (const int nth = (day.on.dayNumber() - first) / daysOfWeek; nth < month.weeks)
                ofWeek.at(static_cast<std::size_t>(nth)) += day.flights;
            count(day);
        }
        for (const double flights : ofWeek) {
            month.weekFlights += flights;
            month.weekSquares += flights * flights;
        }
        m_use.months.push_back(month);
    }

    void count(const DayUse& day) {
        const double flights = day.flights;
        if (flights <= 0)
            return;
        const ByClock<double> use{static_cast<double>(day.use.minutes.value()),
                                  static_cast<double>(day.use.landings.value()),
                                  static_cast<double>(day.use.inflations.value())};
        m_use.sums.flights += flights;
        for (std::size_t clock = 0; clock < useClocks; ++clock) {
            m_use.sums.sum[clock] += use[clock];
            m_use.sums.squares[clock] += use[clock] * use[clock] / flights;
        }
    }

    const UseLog& m_log;
    MonthlyUse m_use;
    std::size_t m_next = 0;
};

}

MonthlyUse inMonths(const UseLog& log) { return Folding(log).fold(); }

std::vector<SpanAhead> spansBetween(CivilDate from, CivilDate to) {
    std::vector<SpanAhead> spans;
    if (to < from)
        return spans;
    spans.reserve(static_cast<std::size_t>(daysBetween(from, to).value() / 28 + 2));
    // A fleet asks for two million months: dates are taken apart once.
    int year = from.year();
    int month = from.month();
    auto first = from.dayNumber();
    int left = daysOfMonth(year, month) - from.day() + 1;
    while (first <= to.dayNumber()) {
        const int days = std::min(left, to.dayNumber() - first + 1);
        spans.push_back({CivilDate::fromDayNumber(first), days, month - 1});
        first += days;
        month = month % monthsOfYear + 1;
        year += month == 1 ? 1 : 0;
        left = daysOfMonth(year, month);
    }
    return spans;
}

}

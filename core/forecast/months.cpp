// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/months.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr int daysOfWeek = 7;

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
    while (from <= to) {
        const auto last = std::min(endOfMonth(from), to);
        spans.push_back({from, static_cast<int>(daysBetween(from, last).value()) + 1, from.month() - 1});
        if (last == CivilDate::last())
            break;
        from = addDays(last, 1);
    }
    return spans;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/fleet_use.h"

#include "answers/due.h"

#include <algorithm>
#include <map>

namespace crownring {

CivilDate firstDayOfUse(CivilDate known) { return addDays(addMonths(known, -12 * yearsOfUse, DayRule::Same), 1); }

Result<UseLog> logOf(Books& books, const BalloonCard& card, CivilDate known) {
    std::vector<Registration> names{card.balloon};
    UseLog log{std::max(card.entered, firstDayOfUse(known)), known, {}};
    if (card.before) {
        const auto renamings = books.renamings(known);
        if (!renamings)
            return tl::unexpected(renamings.error());
        names = namesOf(card.balloon, *renamings);
        log.first = firstDayOfUse(known); // its former names have flown before
    }
    std::map<CivilDate, DayUse> days;
    for (const auto& name : names) {
        const auto flights = books.flights(name, log.first, known);
        if (!flights)
            return tl::unexpected(flights.error());
        for (const auto& flight : *flights) {
            auto& day = days[flight.stamp.at.on()];
            day.on = flight.stamp.at.on();
            ++day.flights;
            day.use += flight.use;
        }
    }
    if (card.before && !days.empty())
        log.first = days.begin()->first;
    for (const auto& [on, day] : days)
        log.days.push_back(day);
    return log;
}

Result<FleetPattern> patternOf(Books& books, CivilDate known) {
    auto cards = books.balloons(known);
    if (!cards)
        return tl::unexpected(cards.error());
    std::erase_if(*cards, [](const BalloonCard& card) { return card.out || card.renamed || card.flights == 0; });
    std::vector<MonthlyUse> logs;
    const auto count = std::min(cards->size(), mostOfPattern);
    for (std::size_t nth = 0; nth < count; ++nth) {
        const auto log = logOf(books, (*cards)[nth * cards->size() / count], known);
        if (!log)
            return tl::unexpected(log.error());
        logs.push_back(inMonths(*log));
    }
    return fleetPattern(logs);
}

bool isShort(const UseLog& log) { return daysBetween(log.first, log.last) < Days(365); }

std::optional<double> flownPaceOf(const UseLog& log, const FleetPattern& fleet) {
    if (log.days.empty())
        return std::nullopt;
    return utilisationOf(inMonths(log), fleet).level();
}

}

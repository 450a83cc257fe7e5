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

FleetPattern patternOf(const UseLogs& everything, CivilDate known) {
    const auto yearAgo = addDays(known, -365);
    // Of each log the first of its items by id.
    std::vector<const ItemId*> firsts(everything.logs.size());
    for (const auto& [item, log] : everything.ofItem)
        if (!firsts[log] || item < *firsts[log])
            firsts[log] = &item;
    const auto chosen = [&](bool lately) {
        std::vector<std::size_t> logs;
        for (std::size_t log = 0; log < firsts.size(); ++log)
            if (const auto& days = everything.logs[log].days; !days.empty() && (!lately || days.back().on > yearAgo))
                logs.push_back(log);
        return logs;
    };
    auto logs = chosen(true);
    if (logs.empty())
        logs = chosen(false);
    std::ranges::sort(logs, {}, [&](std::size_t log) -> const ItemId& { return *firsts[log]; });
    std::vector<MonthlyUse> flown;
    const auto count = std::min(logs.size(), mostOfPattern);
    for (std::size_t nth = 0; nth < count; ++nth)
        flown.push_back(inMonths(everything.logs[logs[nth * logs.size() / count]]));
    return fleetPattern(flown);
}

Result<UseLogs> everyLog(Books& books, CivilDate known) { return books.useLogs({}, firstDayOfUse(known), known); }

bool isShort(const UseLog& log) { return daysBetween(log.first, log.last) < Days(365); }

std::optional<double> flownPaceOf(const UseLog& log, const FleetPattern& fleet) {
    if (log.days.empty())
        return std::nullopt;
    return utilisationOf(inMonths(log), fleet).level();
}

}

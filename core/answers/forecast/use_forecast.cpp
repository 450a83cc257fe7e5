// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/use_forecast.h"

#include "answers/forecast/fleet_use.h"
#include "answers/forecast/planned.h"
#include "problem/faults/use_fault.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// Whose use is foretold.
struct Whose {
    UseLog log;
    std::optional<OutOfService> out{};
    std::optional<double> pace{}; ///< of the balloon that an item is on
    bool isFleet = false;
    std::optional<Registration> balloon{}; ///< that it is, or that it is on
};

Result<std::optional<BalloonCard>> cardOf(Books& books, const Registration& balloon, CivilDate known) {
    auto cards = books.balloons(known);
    if (!cards)
        return tl::unexpected(cards.error());
    const auto card = std::ranges::find(*cards, balloon, &BalloonCard::balloon);
    return card == cards->end() ? std::optional<BalloonCard>() : std::optional(std::move(*card));
}

Result<Whose> ofBalloon(Books& books, const Registration& balloon, CivilDate known) {
    const auto card = cardOf(books, balloon, known);
    if (!card)
        return tl::unexpected(card.error());
    if (!*card)
        return problem(UseFault::BalloonNotYetThere, {balloon, known});
    auto log = logOf(books, **card, known);
    if (!log)
        return tl::unexpected(log.error());
    return Whose{std::move(*log), (*card)->out, {}, false, balloon};
}

struct KnownOfFleet {
    CivilDate known;
    const FleetPattern& pattern;
};

Result<Whose> ofItem(Books& books, const ItemId& item, const UseLogs& logs, const KnownOfFleet& fleet) {
    const auto known = fleet.known;
    const auto facts = books.facts({std::nullopt, {item}, false}, known);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty())
        return problem(UseFault::NoItemOnThatDay, {item, known});
    Whose whose{logs.logs.at(logs.ofItem.at(item)), facts->front().out, {}, false, facts->front().balloon};
    const auto& balloon = whose.balloon;
    if (!balloon || !isShort(whose.log))
        return whose;
    const auto carrier = ofBalloon(books, *balloon, known);
    if (!carrier)
        return tl::unexpected(carrier.error());
    whose.pace = flownPaceOf(carrier->log, fleet.pattern);
    return whose;
}

/// All flights as one log: weather that all share shows in it.
Result<Whose> ofFleet(Books& books, CivilDate known) {
    const auto cards = books.balloons(known);
    if (!cards)
        return tl::unexpected(cards.error());
    Whose whose{{known, known, {}}, {}, {}, true, {}};
    std::map<CivilDate, DayUse> days;
    for (const auto& card : *cards) {
        if (card.flights == 0)
            continue;
        const auto log = logOf(books, card, known);
        if (!log)
            return tl::unexpected(log.error());
        whose.log.first = std::min(whose.log.first, log->first);
        for (const auto& day : log->days) {
            auto& sum = days[day.on];
            sum.on = day.on;
            sum.flights += day.flights;
            sum.use += day.use;
        }
    }
    for (const auto& [on, day] : days)
        whose.log.days.push_back(day);
    return whose;
}

/// What the record plans, and after it what was asked with: the later one holds. A plan of one balloon says nothing of
/// the log of all.
Result<std::vector<StatedPlan>> plansOf(Books& books, const Whose& whose, const UseAsked& asked) {
    std::vector<StatedPlan> plans;
    if (!whose.isFleet) {
        const auto planned = plannedFrom(books, addDays(asked.known, 1), asked.known);
        if (!planned)
            return tl::unexpected(planned.error());
        const PlansOfSubjects known(*planned);
        plans = known.of(known.keyOf(whose.balloon, asked.item));
    }
    plans.insert(plans.end(), asked.plans.begin(), asked.plans.end());
    return plans;
}

std::vector<UseOfDays> periodsOf(const UseAsked& asked, bool inMonths) {
    std::vector<UseOfDays> periods;
    if (inMonths) {
        for (const auto& span : spansBetween(asked.from, asked.to))
            periods.push_back({span.first, addDays(span.first, span.days - 1), {}});
        return periods;
    }
    for (auto day = asked.from; day <= asked.to; day = addDays(day, 1))
        periods.push_back({day, day, {}});
    return periods;
}

}

Result<UseForecast> useForecast(Books& books, const UseAsked& asked) {
    const auto end = addMonths(asked.known, 12 * UseAhead::horizonYears, DayRule::Same);
    if (asked.from <= asked.known || asked.to < asked.from || asked.to > end)
        return problem(UseFault::DaysNotAhead, {asked.from, asked.to, UseAhead::horizonYears});
    const auto logs = everyLog(books, asked.known);
    if (!logs)
        return tl::unexpected(logs.error());
    auto pattern = patternOf(*logs, asked.known);
    const auto whose = asked.item      ? ofItem(books, *asked.item, *logs, {asked.known, pattern})
                       : asked.balloon ? ofBalloon(books, *asked.balloon, asked.known)
                                       : ofFleet(books, asked.known);
    if (!whose)
        return tl::unexpected(whose.error());
    const auto log = inMonths(whose->log);
    UseForecast forecast;
    forecast.inMonths = daysBetween(asked.from, asked.to) >= Days(mostDaysTold);
    forecast.periods = periodsOf(asked, forecast.inMonths);
    forecast.out = whose->out;
    forecast.flights = log.sums.flights;
    if (forecast.out)
        return forecast;
    if (whose->isFleet)
        pattern = fleetPattern(std::span(&log, 1));
    auto plans = plansOf(books, *whose, asked);
    if (!plans)
        return tl::unexpected(plans.error());
    const UseAhead ahead(utilisationOf(log, pattern, whose->pace), addDays(asked.known, 1), *plans);
    for (auto& period : forecast.periods)
        for (std::size_t clock = 0; clock < useClocks; ++clock)
            period.use[clock] = useBandOf(ahead.between(period.on, period.last, static_cast<UseClock>(clock)));
    return forecast;
}

}

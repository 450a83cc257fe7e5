// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/forecast.h"

#include "answers/due.h"
#include "bench/checklist/checklist.h"
#include "bench/checklist/visit.h"
#include "fabric/numeric/convergence.h"
#include "fabric/sampler/warm_start.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace crownring {

namespace {

PointOfMonth pointOf(CivilDate day) { return {day.year(), day.month(), (day.day() - 1.0) / endOfMonth(day).day()}; }

/// A test of its own, or the inspection that goes over the whole envelope; a review of papers pulls no fabric.
bool isTest(const DueRow& row) {
    const auto& requirement = *row.requirement;
    if (isOfTheRecord(row))
        return false;
    return requirement.action == Action::Test || std::ranges::any_of(allVisits, [&](Visit visit) {
               return isPeriodic(visit) && accomplishes(visit, requirement.id);
           });
}

/// The quantity of which a place failed.
std::optional<std::string> failedIn(const DueRow& row) {
    return row.programme == &fabricProgramme() && row.state.standing <= Standing::Lapsed
               ? quantityOfFabric(row.requirement->id)
               : std::nullopt;
}

/// The first day and the fewest hours on which one of these rows is due.
void lookAt(const DueRow& row, Ahead& ahead, std::optional<Hours>& hours) {
    for (const auto& limit : row.state.limits) {
        const auto* onDay = limit.calendar();
        const auto* byUse = limit.usage();
        if (onDay && onDay->left >= Days(0)) {
            if (!ahead.day || onDay->due < *ahead.day)
                ahead.day = onDay->due;
        } else if (byUse && byUse->left >= ClockCount(0) && limit.clock == ClockName::Minutes) {
            const auto left = hoursOf(Minutes(byUse->left.value()));
            hours = hours ? std::min(*hours, left) : left;
        }
    }
}

SetOutlook outlookOfSet(const FabricFit& fit, std::size_t set, Hours ahead) {
    const auto& record = *fit.record;
    const auto& followed = record.sets[set];
    auto outlook =
        outlookOf(fit.columns, fit.prior, fit.posterior, set, record.lnLimit(followed.envelope), followed.use, ahead);
    outlook.strength = record.channel.turned(outlook.strength);
    return outlook;
}

SetForecast forecastOfSet(const FabricFit& fit, std::size_t set, const SetOutlook& outlook) {
    const auto& record = *fit.record;
    const auto& followed = record.sets[set];
    SetForecast forecast;
    forecast.set = set;
    forecast.outlook = toldOf(outlook, record.channel.rises);
    for (auto at = fit.columns.firstOfSet[set]; at < fit.columns.firstOfSet[set + 1]; ++at) {
        ++forecast.readings;
        forecast.held += fit.columns.observed[at].seen == Seen::AtLeast ? 1 : 0;
    }
    const auto lives = livesOf(fit.posterior, set, record.lnLimit(followed.envelope), followed.use);
    forecast.effectiveDraws = effectiveDrawsOfQuantile(lives, fit.posterior.chains, 0.05);
    return forecast;
}

/// Loads of whole multiples, as a shop would set them: the limit, half as much again, twice; and until it breaks.
std::vector<PullChoice> pullsFor(const FabricFit& fit, const SetForecast& weakest) {
    const auto& record = *fit.record;
    const auto envelope = record.sets[weakest.set].envelope;
    const double lnLimit = record.lnLimit(envelope);
    const double limit = std::exp(lnLimit);
    std::vector<PlannedPull> planned{{limit}, {1.5 * limit}, {2 * limit}, {std::nullopt}};
    if (record.channel.rises) // a leak is measured, never held
        planned = {{std::nullopt}};
    std::vector<PullChoice> pulls;
    for (const auto& pull : planned)
        if (const auto worth = worthOfPull(fit.posterior, weakest.set, lnLimit, record.sets[weakest.set].use, pull))
            pulls.push_back({pull, *worth});
    return pulls;
}

}

std::optional<CivilDate> Ahead::dayAfter(Hours more) const {
    const auto at = reachedAt(pointOf(on), more.value(), pace);
    const auto first = at ? CivilDate::fromYearMonthDay(at->year, at->month, 1) : std::nullopt;
    if (!first)
        return std::nullopt;
    return addDays(*first, static_cast<std::int64_t>(at->gone * endOfMonth(*first).day()));
}

Result<Ahead> aheadOf(Books& books, const ItemId& envelope, CivilDate on) {
    const auto pace = paceOfItem(books, envelope, on);
    const auto list = due(books, {std::nullopt, {envelope}}, on, Outside::AsInService);
    if (!pace || !list)
        return tl::unexpected(pace ? list.error() : pace.error());
    Ahead ahead;
    ahead.on = on;
    ahead.pace = *pace;
    std::optional<Hours> hours;
    for (const auto& row : list->rows)
        if (auto quantity = failedIn(row))
            ahead.failed.push_back({std::move(*quantity), row.requirement->note});
        else if (isTest(row) && isRequired(row.state))
            lookAt(row, ahead, hours);
    if (ahead.day)
        ahead.hours =
            std::min(hours.value_or(nextTestAfter), Hours(flownBetween(pointOf(on), pointOf(*ahead.day), *pace)));
    else if (hours)
        ahead.hours = *hours;
    if (hours && ahead.hours >= *hours)
        if (const auto day = ahead.dayAfter(*hours); day && (!ahead.day || *day < *ahead.day))
            ahead.day = day;
    return ahead;
}

EnvelopeForecast forecastOf(const FabricFit& fit, std::size_t envelope, const Ahead& ahead) {
    const auto& of = fit.record->envelopes[envelope];
    EnvelopeForecast forecast;
    std::vector<SetOutlook> outlooks;
    for (std::size_t at = 0; at < of.setCount; ++at)
        if (const auto set = of.firstSet + at; fit.record->isThere(set)) {
            outlooks.push_back(outlookOfSet(fit, set, ahead.hours));
            forecast.sets.push_back(forecastOfSet(fit, set, outlooks.back()));
        }
    forecast.weakest = weakestOf(outlooks);
    if (const auto& weakest = forecast.sets[forecast.weakest]; weakest.outlook.byReadings)
        forecast.pulls = pullsFor(fit, weakest);
    return forecast;
}

PanelForecast panelForecast(const FabricFit& fit, std::size_t set, std::optional<int> row, Hours more) {
    const auto& record = *fit.record;
    const auto envelope = record.sets[set].envelope;
    auto use = record.sets[set].use;
    if (const int rows = record.envelopes[envelope].rows; row && rows > 1)
        use.row = std::clamp((*row - 1.0) / (rows - 1.0), 0.0, 1.0);
    const double then = use.hours + more.value();
    return {record.channel.turned(strengthAt(fit.posterior, set, use, then)),
            chanceBelowAt(fit.posterior, set, record.lnLimit(envelope), use, then)};
}

}

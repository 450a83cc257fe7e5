// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/fabric_ahead.h"

#include "answers/forecast/items_ahead.h"
#include "answers/forecast/limit_met.h"
#include "fabric/outlook/told.h"

#include <algorithm>

namespace crownring {

namespace {

const ItemFacts* onBalloon(const DueList& due, const ItemId& envelope) {
    const auto row = std::ranges::find_if(due.rows, [&](const DueRow& each) {
        return each.item->id == envelope && each.item->balloon && !each.item->out;
    });
    return row == due.rows.end() ? nullptr : row->item;
}

/// The set that speaks for the envelope, where its life is in sight.
std::optional<std::size_t> weakestInSight(const FabricFit& fit, std::size_t envelope) {
    const auto& record = *fit.record;
    const auto& followed = record.envelopes[envelope];
    std::vector<std::size_t> sets;
    std::vector<SetOutlook> outlooks;
    for (auto set = followed.firstSet; set < followed.firstSet + followed.setCount; ++set) {
        if (!record.isThere(set))
            continue;
        sets.push_back(set);
        outlooks.push_back(
            outlookOf(fit.columns, fit.prior, fit.posterior, set, record.lnLimit(envelope), record.sets[set].use));
    }
    if (sets.empty())
        return std::nullopt;
    const auto weakest = weakestOf(outlooks);
    return toldOf(outlooks[weakest]).end == LifeEnd::InSight ? std::optional(sets[weakest]) : std::nullopt;
}

}

Result<std::vector<FabricAhead>> fabricAhead(Books& books, const DueList& due, std::span<const SharedFit> fits,
                                             CivilDate known) {
    std::vector<FabricAhead> ahead;
    ItemsAheadWhenAsked items(books, due, known);
    for (const auto& fit : fits) {
        const auto& record = *fit->record;
        for (std::size_t envelope = 0; envelope < record.envelopes.size(); ++envelope) {
            const auto* item = onBalloon(due, record.envelopes[envelope].id);
            const auto set = item ? weakestInSight(*fit, envelope) : std::nullopt;
            if (!set)
                continue;
            const auto use = items.of(*item);
            if (!use)
                return tl::unexpected(use.error());
            if (!*use)
                continue;
            const double now = record.sets[*set].use.hours;
            const auto lives = livesOf(fit->posterior, *set, record.lnLimit(envelope), record.sets[*set].use);
            const auto met = bandMet(**use, known, due.on,
                                     [&](Hours more) { return chanceReached(lives, now, now + more.value()); });
            if (met.p10)
                ahead.push_back({item, record.channel.quantity, record.envelopes[envelope].source,
                                 lifeForecast(lives, now).reachedAlready, met});
        }
    }
    return ahead;
}

}

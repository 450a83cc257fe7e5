// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/defects/deciding.h"

#include "answers/aircraft_rules.h"
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "gate/refusing.h"
#include "text/blank.h"

#include <algorithm>

namespace crownring {

Result<bool> takesBackOwnWord(const Batch& batch, const Entry& amendment, const JournalLine& root,
                              const std::optional<InspectionId>& inspection) {
    if (isBlank(amendment.by) || amendment.by != root.entry.by)
        return false;
    const auto line = batch.journal.line(amendment.id);
    if (!line)
        return tl::unexpected(line.error());
    constexpr int withItsReading = 2;
    if (*line && (*line)->number - root.number <= withItsReading)
        return true;
    if (!inspection)
        return false;
    const auto told = batch.books.told({Subject::Inspection,
                                        inspection->text(),
                                        {kindName<InspectionClosed>(), kindName<ReleaseIncomplete>()},
                                        CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return told->empty();
}

Result<std::optional<Barred>> mayDecide(Books& books, const Entry& amendment, const std::optional<ItemId>& on,
                                        const std::string& finder) {
    const auto entitlements = entitlementsOn(books, amendment.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    ItemFacts item;
    if (on) {
        auto facts = books.facts({std::nullopt, {*on}}, amendment.on);
        if (!facts)
            return tl::unexpected(facts.error());
        if (!facts->empty())
            item = std::move(facts->front());
    }
    const auto regime = on ? regimeOf(books, *on, amendment.on) : std::optional<Regime>();
    if (!regime)
        return tl::unexpected(regime.error());
    const PersonId person(amendment.by);
    std::optional<Barred> bar = Barred{{BarredPhrase::EntitledToNothing, {person, amendment.on}}, gradingRule};
    for (const auto& each : *entitlements) {
        if (each.person != person || isOfReviewers(each.capacity))
            continue;
        if (auto other = otherRules(*regime, each.capacity)) {
            bar = std::move(other);
            continue;
        }
        const Signatory signatory{person, each.capacity, item.balloon, item.operations, amendment.on};
        if (auto lacks = notEntitled(*entitlements, signatory)) {
            bar = std::move(lacks);
            continue;
        }
        if (each.capacity != Capacity::PilotOwner && each.capacity != Capacity::PrivatePilot)
            return std::optional<Barred>();
        if (amendment.by == finder && !isUnderSubpartAdd(item.operations))
            return std::optional<Barred>();
        bar = Barred{{BarredPhrase::OwnFindingsOnly, {person}}, gradingRule};
    }
    return bar;
}

Findings askWhoTakesBack(const Batch& batch, const Entry& amendment, const TakenBack& taken, int line) {
    const auto own = takesBackOwnWord(batch, amendment, taken.root, taken.inspection);
    if (!own)
        return tl::unexpected(own.error());
    if (*own)
        return std::vector<Problem>{};
    return askWhoDecides(batch, amendment, taken, line);
}

Findings askWhoDecides(const Batch& batch, const Entry& amendment, const TakenBack& taken, int line) {
    if (const auto key = unsaidIn(amendment); !key.empty())
        return std::vector{Problem{taken.unsaid, {taken.what}, {{}, line, std::string(key)}, gradingRule}};
    const auto bar = mayDecide(batch.books, amendment, taken.item, taken.root.entry.by);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{Problem{ReleaseFault::MayNotGradeDown, {(*bar)->why}, {{}, line, "by"}, gradingRule}};
    return std::vector<Problem>{};
}

}

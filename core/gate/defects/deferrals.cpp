// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/aircraft_rules.h"
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "rules/due/defects.h"

#include <algorithm>

namespace crownring {

namespace {

/// @param entry the deferral as it stands now
Findings judged(Books& books, const Entry& entry, const DefectDeferred& deferral, int line) {
    const auto entitlements = entitlementsOn(books, entry.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    const auto facts = books.facts({std::nullopt, {deferral.item}}, entry.on);
    if (!facts)
        return tl::unexpected(facts.error());
    const ItemFacts item = facts->empty() ? ItemFacts{} : facts->front();
    Deferral asked{Severity::Deferrable, deferral.notRequired, !deferral.placard.empty()};
    for (const auto& mark : item.defects)
        if (mark.defect == deferral.defect && mark.kind == DefectMark::Kind::Found) {
            if (isGrounding(mark))
                return std::vector{Problem{ReleaseFault::NobodyDefers,
                                           {mark.failed ? Phrase{BarredPhrase::FailedReading, {deferral.defect}}
                                                        : Phrase{BarredPhrase::DangerToFlight, {}}},
                                           {{}, line, {}},
                                           "ML.A.403(a), (b) (from memory); 14 CFR 91.405"}};
            asked.severity = mark.severity;
        }
    const auto regime = regimeOf(books, deferral.item, entry.on);
    if (!regime)
        return tl::unexpected(regime.error());
    Barred bar{{BarredPhrase::EntitledToNothing, {deferral.agreedBy, entry.on}}, "ML.A.403(b) (from memory)"};
    for (const auto& each : *entitlements) {
        if (each.person != deferral.agreedBy)
            continue;
        if (auto other = otherRules(*regime, each.capacity)) {
            bar = std::move(*other);
            continue;
        }
        auto next =
            mayDefer(*entitlements, {each.person, each.capacity, item.balloon, item.operations, entry.on}, asked);
        if (!next)
            return std::vector<Problem>{};
        bar = std::move(*next);
    }
    return std::vector{Problem{ReleaseFault::MayNotDefer, {bar.why}, {{}, line, {}}, bar.rule}};
}

/// The same defect is put off, by the same agreement, no longer and under no more.
bool isNoMore(const Entry& before, const Entry& now) {
    const auto& was = std::get<DefectDeferred>(before.body);
    const auto* is = std::get_if<DefectDeferred>(&now.body);
    const auto within = [](const auto& end, const auto& agreed) { return !agreed || (end && *end <= *agreed); };
    return is && momentOf(before) == momentOf(now) && is->defect == was.defect && is->item == was.item &&
           is->agreedBy == was.agreedBy && (was.notRequired || !is->notRequired) && within(is->until, was.until) &&
           within(is->untilMinutes, was.untilMinutes);
}

/// What puts the defect off once an amendment is in, and would put off more than what did before; nothing where the
/// amendment takes away alone.
Result<std::optional<Entry>> moreBy(const Batch& batch, const Entry& amendment) {
    const auto root = amendedRoot(batch.journal, amendment);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->unread || !std::holds_alternative<DefectDeferred>((*root)->entry.body))
        return std::nullopt;
    const auto before = batch.journal.before(amendment.id);
    if (!before)
        return tl::unexpected(before.error());
    const auto isMore = [&](const Entry& now) { return !*before || !isNoMore(**before, now); };
    if (!(*root)->voided)
        return isMore(nowOf(**root)) ? std::optional(nowOf(**root)) : std::nullopt;
    if (!*before)
        return std::nullopt;
    const auto& was = std::get<DefectDeferred>((*before)->body);
    const auto told =
        batch.books.told({Subject::Defect, was.defect.text(), {kindName<DefectDeferred>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& other : *told) // an earlier deferral may hold again
        if (const auto* is = std::get_if<DefectDeferred>(&nowOf(other).body);
            is && is->item == was.item &&
            ((was.until && is->until != was.until) || is->untilMinutes != was.untilMinutes))
            return nowOf(other);
    return std::nullopt;
}

/// Who agrees now is named by the amendment itself, and may.
Findings judgedMore(const Batch& batch, const Entry& amendment, const Entry& now, int line) {
    auto deferral = std::get<DefectDeferred>(now.body);
    const auto* correction = std::get_if<EntryCorrected>(&amendment.body);
    const bool named = correction && textUnder(*correction, "agreed_by");
    if (!named && correction && amendment.by != deferral.agreedBy.text())
        return std::vector{Problem{ReleaseFault::DeferralUnsaid,
                                   {deferral.defect},
                                   {{}, line, "with/agreed_by"},
                                   "ML.A.403(b), (c) (from memory)"}};
    if (const auto key = unsaidIn(amendment); !key.empty())
        return std::vector{Problem{ReleaseFault::DeferralUnsaid,
                                   {deferral.defect},
                                   {{}, line, std::string(key)},
                                   "ML.A.403(b), (c) (from memory)"}};
    if (!named)
        deferral.agreedBy = PersonId(amendment.by);
    return judged(batch.books, amendment, deferral, line);
}

}

Findings askDeferrals(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto deferral = standingAs<DefectDeferred>(batch.journal, entry);
        const auto more = deferral ? moreBy(batch, entry) : tl::unexpected(deferral.error());
        if (!more)
            return tl::unexpected(atLine(more.error(), line));
        auto found = *deferral ? judged(batch.books, **deferral, std::get<DefectDeferred>((*deferral)->body), line)
                               : Findings(std::vector<Problem>{});
        if (found && found->empty() && *more)
            found = judgedMore(batch, entry, **more, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        problems.insert(problems.end(), found->begin(), found->end());
    }
    return problems;
}

}

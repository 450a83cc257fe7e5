// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/defects/told.h"

#include "answers/bench_file.h"
#include "answers/due.h"
#include "bench/release/barred_phrase.h"
#include "rules/due/defects.h"

#include <algorithm>

namespace crownring {

Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found) {
    const auto told =
        books.told({Subject::Defect, found.defect.text(), {kindName<DefectFound>()}, found.stamp.at.on()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* body = std::get_if<DefectFound>(&nowOf(line).body); body && line.entry.id == found.stamp.id)
            return body->photographs;
    return std::vector<std::string>();
}

Result<std::optional<Graded>> gradingOf(Books& books, const EntryId& found) {
    const auto told = books.amendments(found);
    if (!told)
        return tl::unexpected(told.error());
    const auto* first = std::get_if<DefectFound>(&told->front().body);
    std::optional<Graded> graded;
    for (const auto& each : *told) {
        const auto* correction = std::get_if<EntryCorrected>(&each.body);
        const auto stated = correction ? textUnder(*correction, "severity") : std::nullopt;
        const auto severity = stated ? severityFrom(*stated) : std::nullopt;
        if (!first || !severity)
            continue;
        graded.reset();
        if (rankOf(*severity) < rankOf(first->severity))
            graded = Graded{PersonId(each.by), each.note};
    }
    return graded;
}

Result<std::vector<TakenOut>> takenOutOf(Books& books, const Inspection& inspection) {
    auto all = books.takenOut(kindName<DefectFound>());
    if (!all)
        return all;
    std::erase_if(*all, [&](const TakenOut& each) {
        const auto* found = std::get_if<DefectFound>(&each.entry.body);
        const bool atTheBench = voidReasonFrom(std::get<EntryVoided>(each.taken.body).reason) &&
                                each.taken.by == each.entry.by &&
                                (!inspection.closed || stampOf(each.taken) < inspection.closed->stamp);
        return !found || found->inspection != inspection.id || atTheBench;
    });
    return all;
}

Result<std::map<DefectId, Said<DefectDeferred>>> deferralsOf(Books& books, std::span<const ItemFacts> items) {
    std::map<DefectId, Said<DefectDeferred>> deferrals;
    for (const auto& item : items)
        for (const auto& open : openDefects(item)) {
            if (!open.deferred)
                continue;
            const auto& stamp = open.deferred->stamp;
            const auto told =
                books.told({Subject::Defect, open.found->defect.text(), {kindName<DefectDeferred>()}, stamp.at.on()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told)
                if (const auto* body = std::get_if<DefectDeferred>(&nowOf(line).body);
                    body && line.entry.id == stamp.id)
                    deferrals.insert_or_assign(
                        body->defect,
                        Said<DefectDeferred>{line.entry.id, stamp, nowOf(line).by, nowOf(line).note, *body, {}});
        }
    return deferrals;
}

namespace {

class DeferralsJudged {
public:
    DeferralsJudged(std::vector<Entitlement> entitlements, std::vector<Renaming> renamings)
        : m_entitlements(std::move(entitlements)), m_renamings(std::move(renamings)) {}

    /// Why it does not hold; nothing where it does.
    [[nodiscard]] std::optional<Phrase> bar(const Said<DefectDeferred>& deferral, Severity severity,
                                            const Registration& balloon,
                                            const std::vector<std::string>& operations) const {
        const auto& body = deferral.body;
        const Deferral asked{severity, body.notRequired, !body.placard.empty()};
        const auto on = deferral.stamp.at.on();
        Phrase why{BarredPhrase::EntitledToNothing, {body.agreedBy, on}};
        for (const auto& each : m_entitlements) {
            if (each.person != body.agreedBy)
                continue;
            for (const auto& name : namesOf(balloon, m_renamings)) {
                auto next = mayDefer(m_entitlements, {each.person, each.capacity, name, operations, on}, asked);
                if (!next)
                    return std::nullopt;
                why = std::move(next->why);
            }
        }
        return why;
    }

private:
    std::vector<Entitlement> m_entitlements;
    std::vector<Renaming> m_renamings;
};

bool isPutOff(const ItemFacts& item) {
    return std::ranges::any_of(item.defects,
                               [](const DefectMark& mark) { return mark.kind == DefectMark::Kind::Deferred; });
}

}

Result<void> barDeferrals(Books& books, std::vector<ItemFacts>& facts, CivilDate on, const FlyingAs& as) {
    if (std::ranges::none_of(facts, isPutOff))
        return {};
    auto entitlements = entitlementsOn(books, on);
    auto renamings = books.renamings(on);
    if (!entitlements || !renamings)
        return tl::unexpected(entitlements ? renamings.error() : entitlements.error());
    const DeferralsJudged judged(std::move(*entitlements), std::move(*renamings));
    for (auto& item : facts) {
        const auto& balloon = as.balloon ? as.balloon : item.balloon;
        if (!balloon || !isPutOff(item))
            continue;
        auto operations = item.operations;
        operations.insert(operations.end(), as.operations.begin(), as.operations.end());
        const auto told = deferralsOf(books, {&item, 1});
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& open : openDefects(item)) {
            const auto deferral = told->find(open.found->defect);
            if (!open.deferred || deferral == told->end())
                continue;
            const auto severity =
                open.found->severity == Severity::Barring ? Severity::Deferrable : open.found->severity;
            auto& mark = *std::ranges::find(item.defects, open.deferred->stamp, &DefectMark::stamp);
            mark.bar = judged.bar(deferral->second, severity, *balloon, operations);
        }
    }
    return {};
}

}

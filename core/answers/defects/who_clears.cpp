// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/defects/who_clears.h"

#include "answers/aircraft_rules.h"
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "bench/release/owner_rule.h"
#include "rules/due/defects.h"

#include <algorithm>

namespace crownring {

namespace {

// That whoever says so may release it is our reading of these.
constexpr const char* clearingRule = "ML.A.403(a), ML.A.801(a), (b); 14 CFR 43.3, 43.7, 91.405";

Takes takenBy(const DefectMark& found) {
    if (found.failed)
        return Takes::Failed;
    return isGrounding(found)                  ? Takes::Grounding
           : found.severity == Severity::Minor ? Takes::Nothing
                                               : Takes::Deferrable;
}

/// The visit that it is said in, where the record has it and the item is in it.
Result<std::optional<Visit>> visitOf(Books& books, const DefectCleared& cleared) {
    if (!cleared.inspection)
        return std::nullopt;
    const auto told = books.told(
        {Subject::Inspection, cleared.inspection->text(), {kindName<InspectionOpened>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto& opened = std::get<InspectionOpened>(nowOf(line).body);
            std::ranges::count(opened.items, cleared.item) > 0)
            return visitFrom(opened.visit);
    return std::nullopt;
}

bool isOwner(Capacity capacity) { return capacity == Capacity::PilotOwner || capacity == Capacity::PrivatePilot; }

/// Where he may release work that puts it right: an owner his tasks, and what grounds in a visit of them alone, since
/// that is signed.
std::optional<Barred> barIn(std::span<const Entitlement> entitlements, const Signatory& by, Takes taken,
                            const std::optional<Visit>& in) {
    const bool isPartMl = regimeOf(by.capacity) == Regime::PartMl;
    const bool isOfOwner = isOwner(by.capacity) && (in ? isOfOwnersTasks(*in) && regimeOf(*in) == regimeOf(by.capacity)
                                                       : taken < Takes::Failed);
    if (isOfOwner)
        return mayRelease(entitlements, by, isPartMl ? Visit::PartMlOwnerTasks : Visit::UsOwnerTasks);
    return mayRelease(entitlements, by, isPartMl ? Visit::PartMlRectification : Visit::UsRectification);
}

/// By its worst finding on the item.
std::optional<Takes> worstOf(const ItemFacts& item, const DefectId& defect) {
    std::optional<Takes> taken;
    for (const auto& mark : item.defects)
        if (mark.kind == DefectMark::Kind::Found && mark.defect == defect)
            taken = std::max(taken.value_or(Takes::Nothing), takenBy(mark));
    return taken;
}

bool isRaised(const ItemFacts& item, const DefectId& defect) {
    return std::ranges::any_of(item.defects, [&](const DefectMark& mark) {
        return mark.kind == DefectMark::Kind::Found && mark.defect == defect && mark.raised;
    });
}

}

Result<Takes> takenBy(Books& books, const DefectCleared& cleared) {
    const auto facts = books.facts({std::nullopt, {cleared.item}}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    const auto taken = facts->empty() ? std::nullopt : worstOf(facts->front(), cleared.defect);
    return taken.value_or(Takes::Grounding);
}

Result<std::optional<Barred>> barToClear(Books& books, const PersonId& person, CivilDate on,
                                         const DefectCleared& cleared, Takes taken) {
    const auto entitlements = entitlementsOn(books, on);
    const auto facts = books.facts({std::nullopt, {cleared.item}}, on);
    const auto regime = regimeOf(books, cleared.item, on);
    const auto in = visitOf(books, cleared);
    if (!entitlements || !facts || !regime || !in)
        return tl::unexpected(!entitlements ? entitlements.error()
                              : !facts      ? facts.error()
                              : !regime     ? regime.error()
                                            : in.error());
    if (*in && taken < Takes::Grounding)
        return std::optional<Barred>(); // the visit is signed, or its list
    const auto item = facts->empty() ? ItemFacts{} : facts->front();
    std::optional<Barred> bar = Barred{person.empty() ? Phrase{BarredPhrase::NobodyNamed, {}}
                                                      : Phrase{BarredPhrase::EntitledToNothing, {person, on}},
                                       clearingRule};
    for (const auto& each : *entitlements) {
        if (each.person != person)
            continue;
        auto lacks = otherRules(*regime, each.capacity);
        if (!lacks)
            lacks = barIn(*entitlements, {person, each.capacity, item.balloon, item.operations, on}, taken, *in);
        if (!lacks)
            return std::optional<Barred>();
        bar = std::move(lacks);
    }
    return bar;
}

Result<void> barClearings(Books& books, std::vector<ItemFacts>& facts) {
    for (auto& item : facts)
        for (auto& mark : item.defects) {
            if (mark.kind != DefectMark::Kind::Cleared || mark.unsignedIn || !isRaised(item, mark.defect))
                continue;
            const auto told =
                books.told({Subject::Defect, mark.defect.text(), {kindName<DefectCleared>()}, mark.stamp.at.on()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told) {
                const auto& now = nowOf(line);
                if (line.entry.id != mark.stamp.id)
                    continue;
                const auto bar = barToClear(books, PersonId(now.by), now.on, std::get<DefectCleared>(now.body),
                                            worstOf(item, mark.defect).value_or(Takes::Grounding));
                if (!bar)
                    return tl::unexpected(bar.error());
                if (*bar)
                    mark.bar = (*bar)->why;
            }
        }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "bench/release/owner_rule.h"
#include "gate/aircraft_rules.h"
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "rules/due/defects.h"

#include <algorithm>

namespace crownring {

namespace {

// That whoever says so may release it is our reading of these.
constexpr const char* clearingRule = "ML.A.403(a), ML.A.801(a), (b); 14 CFR 43.3, 43.7, 91.405";

/// What a clearing takes away.
enum class Takes {
    Nothing,
    Deferrable,
    Failed, ///< what a reading found, and a released one alone lifts (`answers/visit/retest`)
    Grounding,
};

Takes takenBy(const DefectMark& found) {
    if (found.failed)
        return Takes::Failed;
    return isGrounding(found)                  ? Takes::Grounding
           : found.severity == Severity::Minor ? Takes::Nothing
                                               : Takes::Deferrable;
}

/// By its worst finding on the item; a clearing that comes before its finding may take away anything.
Result<Takes> takenBy(Books& books, const DefectCleared& cleared) {
    const auto facts = books.facts({std::nullopt, {cleared.item}}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    std::optional<Takes> taken;
    if (!facts->empty())
        for (const auto& mark : facts->front().defects)
            if (mark.kind == DefectMark::Kind::Found && mark.defect == cleared.defect)
                taken = std::max(taken.value_or(Takes::Nothing), takenBy(mark));
    return taken.value_or(Takes::Grounding);
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

/// Nothing where that person may say on that day that it is put right.
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

/// An amendment that leaves of a clearing what it was: other words.
bool saysTheSame(const std::optional<Entry>& before, const Entry& now) {
    const auto* was = before ? std::get_if<DefectCleared>(&before->body) : nullptr;
    const auto& is = std::get<DefectCleared>(now.body);
    return was && was->defect == is.defect && was->item == is.item && was->inspection == is.inspection &&
           momentOf(*before) == momentOf(now) && before->by == now.by;
}

Findings judgedClearing(const Batch& batch, const Entry& entry, int line) {
    const auto now = standingAs<DefectCleared>(batch.journal, entry);
    if (!now)
        return tl::unexpected(now.error());
    if (!*now)
        return std::vector<Problem>{};
    const bool isAmended = (*now)->id != entry.id;
    const auto before = isAmended ? batch.journal.before(entry.id) : Result<std::optional<Entry>>(std::nullopt);
    if (!before)
        return tl::unexpected(before.error());
    if (isAmended && saysTheSame(*before, **now))
        return std::vector<Problem>{};
    const auto& cleared = std::get<DefectCleared>((*now)->body);
    const auto taken = takenBy(batch.books, cleared);
    if (!taken)
        return tl::unexpected(taken.error());
    if (*taken == Takes::Nothing)
        return std::vector<Problem>{};
    auto bar = barToClear(batch.books, PersonId((*now)->by), (*now)->on, cleared, *taken);
    if (bar && !*bar && isAmended)
        bar = barToClear(batch.books, PersonId(entry.by), entry.on, cleared, *taken);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{
            Problem{ReleaseFault::MayNotClear, {cleared.defect, (*bar)->why}, {{}, line, "by"}, (*bar)->rule}};
    return std::vector<Problem>{};
}

}

Findings askWhoClears(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedClearing(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/returns/discrepancies.h"

#include "bench/release/release_phrase.h"
#include "rules/due/defects.h"
#include "rules/due/incomplete.h"
#include "rules/due/lists.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* listRule = "14 CFR 43.11(a)(5), (b); 91.409(a)";
constexpr const char* europeanListRule = "ML.A.403 (from memory)";

const char* ruleOf(const ReturnFile& file) {
    return regimeOf(file.then.visit()) == Regime::PartMl ? europeanListRule : listRule;
}

Signatory signatoryOf(const ReturnFile& file, const Approving& approving) {
    return {approving.person, approving.capacity, file.list.balloon, file.operations, approving.on};
}

Refusal standing(const ReturnFile& file, const ListedItem& each) {
    const auto defect = defectOf(each.requirement);
    return {defect ? Refusal::Kind::Defect : Refusal::Kind::Excepted,
            defect      ? ReleaseFault::DefectStands
            : each.read ? ReleaseFault::TestStands
                        : ReleaseFault::ListedStands,
            {each.what, each.item},
            ruleOf(file),
            defect ? defect->text() : each.requirement.text(),
            each.item};
}

}

ListCount Discrepancies::count() const {
    return {static_cast<int>(std::ranges::count(listed, true, &ListedItem::stands)), static_cast<int>(listed.size())};
}

std::vector<ListedItem> listedIn(const InspectionClosed& closed, const std::vector<ItemFacts>& then) {
    std::vector<ListedItem> listed;
    for (const auto& item : then) {
        for (const auto& defect : openDefects(item))
            listed.push_back({item.id, requirementOf(defect.found->defect), whatOf(*defect.found)});
        for (const auto& each : closed.excepted)
            if (each.item == item.id)
                listed.push_back({each.item, each.requirement, titleOf(each)});
    }
    return listed;
}

Argument titleOf(const SignedException& excepted) {
    if (const auto list = listOf(excepted.requirement))
        return titleOfList(*list);
    if (const auto work = incompleteOf(excepted.requirement))
        return incompleteRequirement({*work, {}}).title;
    return excepted.title.empty() ? Argument(excepted.requirement) : Argument(excepted.title);
}

WordingAsked wordingAsked(const ReturnFile& file, const Approving& approving) {
    return {&file.wordings,
            file.entitlements,
            statementOf(file, approving),
            {},
            {file.then.visit(), approving.person, true}};
}

std::vector<Refusal> refusals(const ReturnFile& file, const Approving& approving) {
    std::vector<Refusal> refused;
    if (!file.pending) {
        refused.push_back({Refusal::Kind::Closed, ReleaseFault::ListAnswered, {file.list.inspection}, ruleOf(file)});
        return refused;
    }
    const auto closed = file.list.closed.at.on();
    if (approving.on < closed)
        refused.push_back({Refusal::Kind::Order, ReleaseFault::ApprovedBefore, {closed}, ruleOf(file)});
    for (const auto& each : file.list.listed)
        if (each.stands)
            refused.push_back(standing(file, each));
    for (const auto& each : file.unsupported)
        if (each.kind != Refusal::Kind::NoDefect && each.kind != Refusal::Kind::Content) // what was listed was listed
            refused.push_back({each.kind,
                               ReleaseFault::Unsupported,
                               {file.list.inspection, messageOf(problemOf(each))},
                               ruleOf(file),
                               each.line,
                               each.item});
    if (const auto bar = mayApproveReturn(file.entitlements, signatoryOf(file, approving), file.then.visit()))
        refused.push_back({Refusal::Kind::Signatory, ReleaseFault::MayNotSign, {bar->why}, bar->rule});
    return refused;
}

PrescribedStatement statementOf(const ReturnFile& file, const Approving& approving) {
    auto facts =
        releaseFacts(file.then, {Outcome::Released, approving.person, approving.capacity, {}, {}, approving.on});
    // Who approves may have been entitled after the list.
    if (const auto* held = heldBy(file.entitlements, approving.person, approving.capacity, approving.on))
        setSigner(facts, *held);
    facts.licence = licenceOf(file.entitlements, approving.person, approving.capacity, approving.on);
    facts.texts = file.wordings.adopted;
    return returnStatementOf(facts);
}

ReturnApproved composedApproval(const ReturnFile& file, const Approving& approving) {
    ReturnApproved composed;
    composed.inspection = file.list.inspection;
    composed.statement = statementOf(file, approving).text;
    composed.signatory = approving.person;
    composed.capacity = std::string(capacityName(approving.capacity));
    composed.licence = licenceOf(file.entitlements, approving.person, approving.capacity, approving.on);
    composed.confirmed = confirmedFor(wordingAsked(file, approving));
    return composed;
}

}

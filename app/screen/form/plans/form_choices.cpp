// SPDX-License-Identifier: GPL-3.0-or-later

/// What can be chosen in the fields of forms.

#include "rules/due/defects.h"
#include "rules/programme/programme.h"
#include "screen/desk/item_choices.h"
#include "screen/form/form_plan.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

/// Whatever was adopted for anything and is for such an item.
std::map<RequirementId, const Requirement*> bindingOn(const ItemFacts& item, const std::vector<Adoption>& adoptions) {
    std::map<RequirementId, const Requirement*> binding;
    for (const auto& adoption : adoptions)
        for (const auto& requirement : adoption.programme->requirements)
            if (binds(requirement, item))
                binding.emplace(requirement.id, &requirement);
    return binding;
}

}

std::vector<Choice> FormPlan::balloons(const FleetSheet& sheet) {
    std::vector<Choice> choices;
    std::vector<Choice> out;
    for (const auto& card : sheet.balloons()) {
        const auto why = card.out       ? words::said(reasonOf(*card.out))
                         : card.renamed ? words::said(reasonOf(*card.renamed))
                                        : QString();
        (card.inService() ? choices : out)
            .push_back({inward(card.balloon.text()), inward(card.balloon.text()),
                        joined({inward(card.title), why}, QStringLiteral(" · ")), -1, -1, false});
    }
    choices.insert(choices.end(), out.begin(), out.end());
    return choices;
}

std::vector<Choice> FormPlan::items(const FleetSheet& sheet, const std::string& balloon) {
    std::vector<Choice> choices;
    if (balloon.empty()) {
        std::vector<Choice> out;
        for (const auto& item : sheet.items())
            (item.out ? out : choices).push_back(ItemChoices::of(sheet, item));
        choices.insert(choices.end(), out.begin(), out.end());
        return choices;
    }
    // In the order in which a balloon is told: the envelope first.
    for (const auto* item : sheet.itemsOf(Registration(balloon)))
        choices.push_back(ItemChoices::of(sheet, *item));
    return choices;
}

std::vector<Choice> FormPlan::itemsNotOn(const FleetSheet& sheet, const std::string& balloon) {
    // The pool first: an item that is elsewhere can be fitted too, and is moved then.
    std::vector<Choice> pool;
    std::vector<Choice> elsewhere;
    for (const auto& item : sheet.items()) {
        if (item.out)
            continue; // back in service first
        if (!item.balloon) {
            pool.push_back(ItemChoices::of(sheet, item));
        } else if (balloon != "*" && item.balloon->text() != balloon) {
            elsewhere.push_back(ItemChoices::of(sheet, item));
        }
    }
    pool.insert(pool.end(), elsewhere.begin(), elsewhere.end());
    return pool;
}

std::vector<Choice> FormPlan::requirements(const FleetSheet& sheet, const std::string& item) {
    std::vector<Choice> choices;
    for (const auto* row : sheet.rowsOf(ItemId(item)))
        if (!isOfTheRecord(*row))
            choices.push_back(plainChoice(inward(row->requirement->id.text()), words::said(row->requirement->title)));
    // Nothing is due out of service, and yet it may be done.
    if (const auto* facts = sheet.item(ItemId(item)); facts && facts->out)
        for (const auto& [id, requirement] : bindingOn(*facts, sheet.adoptions()))
            choices.push_back(plainChoice(inward(id.text()), words::said(requirement->title)));
    return choices;
}

std::vector<Choice> FormPlan::alsoBound(const FleetSheet& sheet, const std::string& item,
                                        const std::string& requirement) {
    const auto* chosen = sheet.item(ItemId(item));
    std::vector<Choice> beside;
    std::vector<Choice> elsewhere;
    if (!chosen || requirement.empty())
        return {};
    for (const auto& row : sheet.rows())
        if (row.requirement->id.text() == requirement && row.item->id != chosen->id)
            (row.item->balloon == chosen->balloon ? beside : elsewhere).push_back(ItemChoices::of(sheet, *row.item));
    beside.insert(beside.end(), elsewhere.begin(), elsewhere.end());
    return beside;
}

std::vector<Choice> FormPlan::poolLike(const FleetSheet& sheet, const std::string& item) {
    const auto* chosen = sheet.item(ItemId(item));
    std::vector<Choice> pool;
    if (chosen && chosen->kind != ItemKind::Envelope)
        for (const auto& each : sheet.items())
            if (!each.balloon && !each.out && each.kind == chosen->kind && each.id != chosen->id)
                pool.push_back(ItemChoices::of(sheet, each));
    return pool;
}

std::vector<Choice> FormPlan::methods(const FleetSheet& sheet, const std::string& requirement) {
    const Requirement* found = nullptr; // of the latest adoption, be it of what is away now
    for (const auto& adoption : sheet.adoptions())
        for (const auto& each : adoption.programme->requirements)
            if (each.id.text() == requirement)
                found = &each;
    std::vector<Choice> choices;
    if (found)
        for (const auto& [method, months] : found->byMethod)
            choices.push_back(
                plainChoice(inward(method), tr("%1 (next in %2)").arg(inward(method), Words::months(months))));
    return choices;
}

}

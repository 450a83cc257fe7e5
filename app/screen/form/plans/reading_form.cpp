// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/plans/reading_form.h"

#include "bench/reading/quantity.h"
#include "screen/form/form_fields.h"
#include "words/border.h"
#include "words/sentence.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// Those that are read of an item of its kind; all of what nobody knows.
std::vector<Choice> quantitiesOf(const ItemFacts* item) {
    std::vector<Choice> choices;
    for (const auto& quantity : allQuantities())
        if (!item || quantity.isReadOf(item->kind))
            choices.push_back(plainChoice(inward(quantity.slug), words::said(termOf(quantity))));
    return choices;
}

std::vector<Choice> unitsFor(const Quantity* quantity) {
    std::vector<Choice> choices;
    if (quantity)
        for (const auto& unit : unitsOf(quantity->dimension))
            choices.push_back(plainChoice(inward(unit.symbol), inward(unit.shown)));
    return choices;
}

}

std::vector<FormField> ReadingForm::fields(const FormSubject& subject, const FleetSheet& sheet) {
    using How = FormField::Kind;
    auto item = plannedField("item", tr("Item"), How::Choice, true);
    item.choices = FormPlan::items(sheet, subject.balloon);
    item.value = inward(subject.item);
    auto quantity = plannedField("quantity", tr("What was read"), How::Choice, true);
    quantity.choices = quantitiesOf(subject.item.empty() ? nullptr : sheet.item(ItemId(subject.item)));
    return {std::move(item),
            std::move(quantity),
            plannedField("value", tr("Value"), How::Decimal),
            plannedField("held_at", tr("Load that was held"), How::Decimal, false, tr("Instead of a value")),
            plannedField("unit", tr("Unit"), How::OneOf, true),
            plannedField("gore", tr("Gore"), How::Count),
            plannedField("row", tr("Panel row"), How::Count),
            plannedField("method", tr("Method"), How::Text)};
}

void ReadingForm::follow(std::string_view key, FormFields& fields, const FleetSheet& sheet) {
    if (key == "item")
        fields.setChoices("quantity", quantitiesOf(sheet.item(ItemId(outward(fields.value("item"))))));
    const auto* quantity = quantityNamed(outward(fields.value("quantity")));
    if (key == "quantity") {
        fields.setChoices("unit", unitsFor(quantity));
        if (quantity && fields.value("unit").isEmpty())
            fields.propose("unit", inward(quantity->unit));
    }
    fields.setShown("held_at", !quantity || quantity->traits.held);
}

bool ReadingForm::wantsFigure(const std::vector<FormField>& fields) {
    const auto isEmpty = [&](const char* key) {
        const auto at = std::ranges::find(fields, std::string_view(key), &FormField::key);
        return at == fields.end() || at->value.isEmpty();
    };
    return !isEmpty("item") && !isEmpty("quantity") && isEmpty("value");
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/fitting_plan.h"

#include "screen/desk/item_choices.h"
#include "screen/form/form_field.h"
#include "words/border.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

namespace {

bool isSingle(ItemKind kind) {
    return kind == ItemKind::Envelope || kind == ItemKind::Basket || kind == ItemKind::Burner;
}

}

std::optional<TimeOfDay> FittingPlan::timeOf(const QString& when, const QString& time) {
    if (when == u"before")
        return TimeOfDay(0, 0);
    if (when == u"after")
        return TimeOfDay(23, 59);
    FormField field;
    field.kind = FormField::Kind::Time;
    field.value = time;
    const auto read = field.json();
    if (!read || !*read)
        return std::nullopt;
    const auto parsed = TimeOfDay::parse((*read)->get<std::string>());
    return parsed ? std::optional(*parsed) : std::nullopt;
}

std::vector<FlightKit::Move> FittingPlan::movesOf(const FleetSheet& sheet, const Entry& entry) {
    const auto* fitted = std::get_if<ItemFitted>(&entry.body);
    const auto* item = fitted ? sheet.item(fitted->item) : nullptr;
    if (!item || !item->balloon || *item->balloon == fitted->balloon || item->carrier || fitted->to)
        return {};
    return {{false, *item->balloon, fitted->item, {}}};
}

QString FittingPlan::follows(const FleetSheet& sheet, const Registration& balloon, const ItemId& item, bool fitted,
                             const FittingDay& day) {
    const auto* facts = sheet.item(item);
    if (!facts || balloon.text().empty())
        return {};
    const auto name = ItemChoices::name(*facts);
    const auto on = inward(balloon.text());
    QStringList lines;
    if (fitted && facts->balloon && *facts->balloon != balloon)
        lines += tr("%1 leaves %2, which is written with it.").arg(name, inward(facts->balloon->text()));
    lines += fitted ? tr("Flights of %1 from then on count on %2.").arg(on, name)
                    : tr("Flights of %1 from then on do not count on %2.").arg(on, name);
    if (day.later > 0)
        lines += tr("%n flights that are logged from that day on may be concerned.", nullptr, day.later);
    return lines.join(u' ');
}

QString FittingPlan::question(const FleetSheet& sheet, const Registration& balloon, const ItemId& item) {
    const auto* facts = sheet.item(item);
    if (!facts || !isSingle(facts->kind))
        return {};
    for (const auto* each : sheet.itemsOf(balloon))
        if (each->kind == facts->kind && each->id != item)
            return tr("%1 is fitted to %2 already, and stays on it until it is removed. Are there two?")
                .arg(ItemChoices::name(*each), inward(balloon.text()));
    return {};
}

}

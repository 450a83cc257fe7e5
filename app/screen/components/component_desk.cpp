// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/component_desk.h"

#include "screen/components/component_words.h"
#include "screen/desk/house.h"
#include "screen/desk/item_choices.h"
#include "words/border.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

namespace {

Choice partLine(const FleetSheet& sheet, const ItemFacts& part, const Component& told) {
    auto choice = ItemChoices::of(sheet, part);
    if (part.kind == ItemKind::Other && part.type)
        choice.label = ComponentDesk::tr("%1 %2").arg(inward(*part.type), inward(part.id.text()));
    choice.detail =
        joined({ComponentWords::about(part, told), inward(part.place),
                told.release ? ComponentWords::release(*told.release) : QString(), ComponentWords::times(part),
                choice.standing >= 0 ? Words::standing(static_cast<Reckoned>(choice.standing)) : QString()},
               QStringLiteral(" · "));
    return choice;
}

}

void ComponentDesk::movedIn() { connect(&house().fleet, &Fleet::changed, this, &ComponentDesk::look); }

void ComponentDesk::setItem(const QString& item) {
    if (item == m_item)
        return;
    m_item = item;
    emit itemChanged();
    look();
}

void ComponentDesk::look() {
    const auto turn = ++m_turn;
    const auto sheet = house().fleet.sheet();
    const auto* item = sheet && !m_item.isEmpty() ? sheet->item(ItemId(outward(m_item))) : nullptr;
    if (!item) {
        m_parts.show({});
        m_partOf.clear();
        return emit changed();
    }
    std::vector<const ItemFacts*> parts;
    for (const auto& each : sheet->items())
        if (each.carrier == item->id)
            parts.push_back(&each);
    std::vector<ItemId> wanted{item->id};
    for (const auto* part : parts)
        wanted.push_back(part->id);
    using Answer = Result<Told>;
    hear(house().desk.ask([wanted, facts = *item, on = sheet->on()](Record& record) -> Answer {
        Told told;
        for (const auto& id : wanted) {
            auto components = componentsTold(record, id, on);
            if (!components)
                return tl::unexpected(components.error());
            told.components.merge(*components);
        }
        const auto known = PartsKnown::read(record, on);
        if (!known)
            return tl::unexpected(known.error());
        told.listed = known->thingOf(facts);
        return told;
    }),
         this, [this, turn, sheet, item, parts](const Answer& told) {
             if (turn == m_turn && told)
                 take(sheet, *item, parts, *told);
         });
}

void ComponentDesk::take(const Sheet& sheet, const ItemFacts& item, const std::vector<const ItemFacts*>& parts,
                         const Told& told) {
    const auto of = [&](const ItemId& id) {
        const auto at = told.components.find(id);
        return at == told.components.end() ? Component() : at->second;
    };
    const auto component = of(item.id);
    m_partOf = item.carrier ? inward(item.carrier->text()) : QString();
    m_fitted = item.carrier || item.balloon;
    m_vessel = item.kind == ItemKind::Cylinder && !item.out;
    m_stamped = component.vessel ? ComponentWords::vessel(*component.vessel) : QString();
    m_filled = ComponentWords::filled(component);
    m_lot = inward(component.lot);
    m_times = ComponentWords::times(item);
    m_release = component.release ? ComponentWords::release(*component.release) : QString();
    auto lines = ComponentWords::listed(told.listed);
    if (!lines.isEmpty() && !told.listed.isWhole)
        lines += tr("and what is not listed");
    m_listed = lines.join(u'\n');
    std::vector<Choice> choices;
    for (const auto* part : parts)
        choices.push_back(partLine(*sheet, *part, of(part->id)));
    m_parts.show(std::move(choices));
    emit changed();
}

}

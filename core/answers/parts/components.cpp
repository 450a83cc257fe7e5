// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/components.h"

namespace crownring {

Result<std::map<ItemId, Component>> componentsTold(Books& books, const std::optional<ItemId>& item, CivilDate on) {
    const auto told = books.told({Subject::Item,
                                  item ? std::optional(item->text()) : std::nullopt,
                                  {kindName<ItemEntered>(), kindName<ItemFitted>(), kindName<CylinderFilled>()},
                                  on});
    if (!told)
        return tl::unexpected(told.error());
    std::map<ItemId, Component> components;
    for (const auto& line : *told) { // in the order of their stamps
        const auto& entry = nowOf(line);
        if (const auto* entered = std::get_if<ItemEntered>(&entry.body)) {
            auto& component = components[entered->item];
            if (!entered->lot.empty())
                component.lot = entered->lot;
            if (entered->release && !component.release)
                component.release = entered->release;
            if (!component.vessel)
                component.vessel = entered->vessel;
        } else if (const auto* fitted = std::get_if<ItemFitted>(&entry.body)) {
            auto& component = components[fitted->item];
            if (component.lot.empty())
                component.lot = fitted->lot;
            if (fitted->release)
                component.release = fitted->release;
        } else if (const auto* filled = std::get_if<CylinderFilled>(&entry.body)) {
            auto& component = components[filled->item];
            component.filled = entry.on;
            component.percent = filled->percent;
        }
    }
    return components;
}

Result<std::map<ItemId, Registration>> lastBalloons(Books& books, const std::vector<ItemId>& items, CivilDate on) {
    constexpr int latest = 100;
    std::map<ItemId, Registration> balloons;
    for (const auto& item : items) {
        const auto lines = books.history(std::nullopt, item, on, latest);
        if (!lines)
            return tl::unexpected(lines.error());
        for (const auto& line : *lines) {
            if (line.voided || line.unread || balloons.contains(item))
                continue;
            const auto& body = nowOf(line).body;
            const Registration* balloon = nullptr;
            if (const auto* removed = std::get_if<ItemRemoved>(&body))
                balloon = balloonUnder(*removed);
            else if (const auto* fitted = std::get_if<ItemFitted>(&body))
                balloon = balloonUnder(*fitted);
            else if (const auto* flight = std::get_if<FlightLogged>(&body))
                balloon = &flight->balloon;
            if (balloon)
                balloons.emplace(item, *balloon);
        }
    }
    return balloons;
}

}

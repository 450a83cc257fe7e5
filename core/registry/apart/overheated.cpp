// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/apart/overheated.h"

#include <algorithm>

namespace crownring {

Celsius overheatedFrom(std::optional<VesselMaterial> material) {
    constexpr Celsius aluminium(176);
    constexpr Celsius steel(343);
    return material == VesselMaterial::Steel || material == VesselMaterial::Stainless ? steel : aluminium;
}

std::optional<VesselMaterial> materialSaid(std::span<const ItemEntered> said) {
    std::optional<VesselMaterial> material;
    for (const auto& entered : said) {
        if (!entered.vessel || !entered.vessel->material)
            continue;
        if (material && *material != *entered.vessel->material)
            return std::nullopt;
        material = entered.vessel->material;
    }
    return material;
}

const Occurrence* overheatedBy(const ItemFacts& item, std::optional<VesselMaterial> material) {
    if (item.kind != ItemKind::Cylinder)
        return nullptr;
    const auto from = overheatedFrom(material);
    const auto hot = std::ranges::find_if(
        item.events, [&](const Occurrence& event) { return event.hottest && *event.hottest >= from; });
    return hot == item.events.end() ? nullptr : &*hot;
}

void condemnOverheated(ItemFacts& item, std::optional<VesselMaterial> material) {
    const auto* hot = overheatedBy(item, material);
    const bool isSaid = item.out && item.out->state == ServiceState::Condemned && !item.out->with && !item.out->part;
    if (hot && !isSaid)
        item.out = OutOfService{ServiceState::Condemned, hot->stamp.at.on(), {}, {}, {}, false, hot->hottest};
}

}

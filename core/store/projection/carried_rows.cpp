// SPDX-License-Identifier: GPL-3.0-or-later

/// The rows of a part that are those of what carried it.

#include "store/projection/item_projection.h"

#include <algorithm>

namespace crownring {

std::vector<Stay> ItemProjection::settleCarriage(std::int64_t item, std::vector<Stay> own) {
    m_dropParts.run(item);
    m_dropKits.run(item);
    m_dropEvents.run(item);
    const auto isPart = [](const std::vector<Stay>& stays) {
        return std::ranges::any_of(stays, [](const Stay& stay) { return stay.carrier.has_value(); });
    };
    if (!isPart(own))
        return own;
    const ItemId id(m_names.text(item));
    StaysOf all{{id, std::move(own)}};
    std::vector<ItemId> open{id};
    while (!open.empty()) {
        const auto stays = all.at(open.back());
        open.pop_back();
        for (const auto& stay : stays)
            if (stay.carrier && !all.contains(*stay.carrier)) {
                const auto marks = marksOf(*m_names.find(*stay.carrier));
                all.emplace(*stay.carrier, whereabouts(*stay.carrier, marks, renamings()).stays);
                open.push_back(*stay.carrier);
            }
    }
    const auto put = [&](const Carried& carried, bool direct) {
        std::optional<std::int64_t> untilAt;
        std::optional<EntryId> untilId;
        if (carried.until) {
            untilAt = carried.until->at.minutes();
            untilId = carried.until->id;
        }
        m_putPart.run(item, *m_names.find(carried.carrier), direct, carried.from.at.minutes(), carried.from.id, untilAt,
                      untilId);
    };
    for (const auto& stay : all.at(id))
        if (stay.carrier)
            put({*stay.carrier, stay.from, stay.until}, true);
    auto carriage = carriageOf(id, all);
    for (const auto& carried : carriage.carriers) {
        put(carried, false);
        share(item, carried);
    }
    return std::move(carriage.stays);
}

void ItemProjection::share(std::int64_t item, const Carried& carried) {
    const auto until = carried.until.value_or(Stamp::before(Moment::endOf(CivilDate::last())));
    const auto carrier = *m_names.find(carried.carrier);
    for (auto* shared : {&m_shareKits, &m_shareEvents})
        shared->run(item, carrier, carried.from.at.minutes(), carried.from.id, until.at.minutes(), until.id);
}

}

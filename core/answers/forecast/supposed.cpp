// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/supposed.h"

namespace crownring {

Result<void> SupposingBooks::suppose(const SupposedFlight& flight) {
    const auto aboard =
        m_books.facts(flight.kit ? Scope{std::nullopt, *flight.kit, true} : Scope{flight.balloon, {}}, flight.on);
    if (!aboard)
        return tl::unexpected(aboard.error());
    for (const auto& item : *aboard)
        m_flown[item.id].emplace_back(flight.on, flight.use);
    return {};
}

std::optional<Usage> SupposingBooks::supposedOf(const ItemId& item, CivilDate on) const {
    const auto flown = m_flown.find(item);
    std::optional<Usage> sum;
    if (flown == m_flown.end())
        return sum;
    for (const auto& [day, use] : flown->second)
        if (day <= on)
            sum = sum ? *sum + use : use;
    return sum;
}

Result<std::vector<ItemFacts>> SupposingBooks::facts(const Scope& scope, CivilDate on) {
    auto facts = m_books.facts(scope, on);
    if (!facts)
        return facts;
    for (auto& item : *facts)
        if (const auto use = supposedOf(item.id, on))
            item.clock = item.clock + *use;
    return facts;
}

Result<std::vector<std::optional<Figures>>> SupposingBooks::clocks(const std::vector<ItemDay>& asked) {
    auto clocks = m_books.clocks(asked);
    if (!clocks)
        return clocks;
    for (std::size_t i = 0; i < asked.size(); ++i)
        if (const auto use = supposedOf(asked[i].item, asked[i].day); use && (*clocks)[i])
            (*clocks)[i] = *(*clocks)[i] + *use;
    return clocks;
}

}

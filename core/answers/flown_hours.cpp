// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/flown_hours.h"

#include "problem/faults/fabric_fault.h"

namespace crownring {

Result<void> FlownHours::read(Books& books) {
    std::vector<ItemDay> asked;
    asked.reserve(m_clocks.size());
    for (const auto& [itemDay, clock] : m_clocks)
        asked.push_back({itemDay.first, itemDay.second});
    const auto clocks = books.clocks(asked);
    if (!clocks)
        return tl::unexpected(clocks.error());
    auto next = clocks->begin();
    for (auto& [itemDay, clock] : m_clocks)
        clock = *next++;
    return {};
}

Result<std::optional<Hours>> FlownHours::at(const ItemId& item, CivilDate day) const {
    const auto& clock = m_clocks.at({item, day});
    if (!clock)
        return std::nullopt;
    if (!clock->minutes)
        return problem(FabricFault::HoursUnknownOn, {item, day});
    return hoursOf(*clock->minutes);
}

}

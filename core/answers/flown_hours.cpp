// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/flown_hours.h"

#include "problem/faults/fabric_fault.h"

namespace crownring {

Result<std::optional<Hours>> FlownHours::at(CivilDate day) {
    if (const auto known = m_known.find(day); known != m_known.end())
        return known->second;
    const auto facts = m_books.facts({std::nullopt, {m_item}}, day);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty())
        return m_known[day] = std::nullopt;
    const auto& minutes = facts->front().clock.minutes;
    if (!minutes)
        return problem(FabricFault::HoursUnknownOn, {m_item, day});
    return m_known[day] = hoursOf(*minutes);
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The order of the due list, worst first, as numbers: a large list is sorted without following pointers to names.

#include "rules/due/due_list.h"

#include <cstdint>
#include <unordered_map>

namespace crownring {

/// What a row is sorted by.
struct DueKey {
    int place = 0;         ///< 0 for spent to 6 for closed; 7 where the operation does not call for it
    std::uint32_t row = 0; ///< whose key it is
    double share = 0;
    std::uint64_t names = 0; ///< the item's place in the order of names, then the requirement's

    friend bool operator<(const DueKey& a, const DueKey& b) {
        if (a.place != b.place)
            return a.place < b.place;
        if (a.share != b.share)
            return a.share < b.share;
        return a.names < b.names;
    }
};

/// The places of items and requirements in the order of their names.
class DueOrder {
public:
    /// @param sets what is in force for each item; may name one set many times
    DueOrder(const std::vector<ItemFacts>& items, const std::vector<const RequirementSet*>& sets,
             const std::deque<Requirement>& defects);
    /// @pre the row is of those items, and of those sets or defects
    [[nodiscard]] DueKey keyOf(const DueRow& row, std::uint32_t number) const;

private:
    const ItemFacts* m_first;
    std::vector<std::uint32_t> m_items;
    std::unordered_map<const Requirement*, std::uint32_t> m_requirements;
};

}

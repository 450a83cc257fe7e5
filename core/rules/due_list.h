// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The due list: every requirement of every item, worst first.

#include "rules/obligations.h"

#include <memory>
#include <vector>

namespace crownring {

struct DueRow {
    const ItemFacts* item = nullptr;
    const Requirement* requirement = nullptr;
    const Programme* programme = nullptr;
    Assessment state;
};

/// Keeps the facts and obligations that its rows point into. Movable, not copyable.
struct DueList {
    CivilDate on;
    std::vector<ItemFacts> items;
    std::unique_ptr<Obligations> obligations;
    std::vector<DueRow> rows;
};

/// Worst first: spent, lapsed, unproven, tolerance, nearing, clear, closed, and after all of them the rows that the
/// operation does not call for. Equal standings by the smaller share left (where there is none, first; among clear ones
/// last), then item, requirement.
/// @param flyingAs a balloon whose programmes bind all the items too, besides those of where each is fitted
[[nodiscard]] DueList dueList(std::vector<ItemFacts> items, Obligations obligations, CivilDate on,
                              const std::optional<Registration>& flyingAs = {});

/// The order of the list.
[[nodiscard]] bool comesBefore(const DueRow& a, const DueRow& b);

}

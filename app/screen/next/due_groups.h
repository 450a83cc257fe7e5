// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rows of the due list by what one acts on: a balloon, a visit (what of one balloon one requirement asks of
/// several items, done together), a requirement. What is fitted to nothing is a group of its own. Plain values in and
/// out; runs off the GUI thread.

#include "screen/desk/fleet_sheet.h"

#include <optional>
#include <vector>

namespace crownring::screen {

enum class Grouping { None, Balloon, Visit, Requirement };
inline constexpr int groupingCount = 4;

/// What the rows of a group have in common. Open defects and readings of fabric are each one thing, whatever they are
/// of.
struct GroupKey {
    std::optional<Registration> balloon;      ///< none: of the pool
    std::optional<RequirementId> requirement; ///< none: of a balloon, whatever is asked
    bool anyBalloon = false;                  ///< by requirement: on whatever balloon
    auto operator<=>(const GroupKey&) const = default;
};

[[nodiscard]] GroupKey groupOf(const DueRow& row, Grouping grouping);

struct DueGroup {
    GroupKey key;
    DueRows rows;                    ///< in the order given
    const DueRow* governs = nullptr; ///< what is said of the group first: one of its rows
    std::size_t items = 0;           ///< how many items the rows are of
};

/// In the order in which what governs them stands in the list.
/// @param rows in the order of the list
[[nodiscard]] std::vector<DueGroup> grouped(const FleetSheet& sheet, const DueRows& rows, Grouping grouping);

}

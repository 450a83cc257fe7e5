// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The due list: every requirement, every directive, every open defect, every pending list of discrepancies and all
/// bounded readings of fabric of every item, worst first.

#include "rules/due/directive_rows.h"
#include "rules/due/fabric_rows.h"
#include "rules/due/obligations.h"

#include <deque>
#include <memory>
#include <memory_resource>
#include <vector>

namespace crownring {

struct DueRow {
    const ItemFacts* item = nullptr;
    const Requirement* requirement = nullptr;
    const Programme* programme = nullptr;
    Assessment state;
};

/// One piece of memory for the limits of all rows: a quarter of a million small ones cost more than what is computed.
/// Assigning leaves the old piece with the other until that goes, since rows may still lie in it.
class RowMemory {
public:
    RowMemory() = default;
    RowMemory(RowMemory&&) noexcept = default;
    RowMemory& operator=(RowMemory&& other) noexcept {
        m_pieces.swap(other.m_pieces);
        return *this;
    }
    ~RowMemory() = default;
    [[nodiscard]] std::pmr::memory_resource* get() {
        if (!m_pieces)
            m_pieces = std::make_unique<std::pmr::monotonic_buffer_resource>();
        return m_pieces.get();
    }

private:
    std::unique_ptr<std::pmr::monotonic_buffer_resource> m_pieces;
};

/// Keeps the facts and obligations that its rows point into. Movable, not copyable.
struct DueList {
    CivilDate on;
    std::vector<ItemFacts> items;
    std::unique_ptr<Obligations> obligations;
    std::deque<Requirement> own; ///< what the record itself asks, not a programme: what its rows point at
    RowMemory memory;
    std::vector<DueRow> rows;
};

/// A balloon that the items would fly as: its programmes and its operations bind them too, besides those of where each
/// is fitted.
struct FlyingAs {
    std::optional<Registration> balloon;
    std::vector<std::string> operations;
};

/// What is due on what is out of service.
enum class Outside {
    LeftOut,     ///< nothing, as long as it is
    AsInService, ///< what would be due if it were in service
};

/// Worst first: spent, lapsed, unproven, tolerance, nearing, clear, closed, and after all of them the rows that the
/// operation does not call for. Equal standings by the smaller share left (where there is none, first; among clear ones
/// last), then item, requirement.
[[nodiscard]] DueList dueList(std::vector<ItemFacts> items, const FabricMarks& fabric, Obligations obligations,
                              CivilDate on, const FlyingAs& flyingAs = {}, Outside outside = Outside::AsInService,
                              const DirectiveMarks& directives = {});

/// An open defect, a pending list, a directive, or readings of fabric: nothing that could be written down as a
/// requirement done.
[[nodiscard]] bool isOfTheRecord(const DueRow& row);

/// A vessel is not filled either: its life is reached, a defect grounds it, or an event or a directive that nobody has
/// answered (common practice, no source). An inspection that ran out bars flight alone: airworthiness and transport
/// have dates of their own (02).
[[nodiscard]] bool barsFilling(const DueRow& row);

/// The order of the list.
[[nodiscard]] bool comesBefore(const DueRow& a, const DueRow& b);

}

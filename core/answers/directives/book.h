// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The directives of the record as a book: a line a revision, with the items that it is held against, and how each of
/// these stands to it. And of one that is not written yet: whom it would bind.

#include "answers/directives/told.h"

#include <memory>
#include <vector>

namespace crownring {

/// How an item stands to a revision of a directive.
enum class DirectiveShare {
    Overdue,  ///< bound, and past its deadline
    AtOnce,   ///< bound, before the next flight, and not flown since it took effect
    Open,     ///< bound, and not complied with yet
    Answered, ///< bound, complied with, and due again later or never
    Unknown,  ///< nobody knows whether it binds
    NotBound,
};
inline constexpr int directiveShareCount = 6;
[[nodiscard]] DirectiveShare shareOf(const DirectiveRow& row);

struct DirectiveLine {
    Said<DirectiveIssued> issued;
    DirectiveRow::Life life = DirectiveRow::Life::InForce;
    std::vector<const DirectiveRow*> rows; ///< by share, then in the order of the items

    [[nodiscard]] int count(DirectiveShare share) const;
    /// Overdue, before the next flight, open or answered.
    [[nodiscard]] int bound() const;
};

/// Nothing in it moves once it is made: lines point to rows, rows to items.
struct DirectiveBook {
    std::vector<ItemFacts> items; ///< in service
    std::vector<DirectiveRow> rows;
    std::vector<DirectiveLine> lines; ///< what is in force first, then what is coming, then history; the latest first
};
[[nodiscard]] Result<std::shared_ptr<const DirectiveBook>> directiveBook(Books& books, CivilDate on);

struct BoundItem {
    ItemFacts item;
    Applicability applicability;
};
/// Of all items in service that are of its kinds: bound first, then unknown, then those that are not.
[[nodiscard]] Result<std::vector<BoundItem>> wouldBind(Books& books, const AppliesTo& applies, CivilDate on);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a reading found, and whether it was read again since.

#include "answers/type_book.h"
#include "bench/reading/verdict.h"
#include "gate/check.h"

namespace crownring {

/// What the manual of an item's type states on a day. Nothing for an item of no type.
[[nodiscard]] Result<std::vector<StatedLimit>> limitsOn(Books& books, const ItemId& item, CivilDate on);

/// All that it ever stated, to judge what was read whenever (`judgedAsTaken`).
[[nodiscard]] Result<std::vector<LimitSpan>> limitsEver(Books& books, const ItemId& item);

/// The reading that a defect on an item was found by, as it stands now; nothing where none found it, or where that was
/// taken back.
[[nodiscard]] Result<std::optional<Entry>> failedReading(const Batch& batch, const DefectId& defect,
                                                         const ItemId& item);

/// A re-test (`isRetest`) in the place of the one that failed passes, up to the day of the clearing; or nothing flies
/// on the item any more, or what failed is no failure by what it says now.
[[nodiscard]] Result<bool> isReadAgain(const Batch& batch, const Entry& clearing, const Entry& failed);

}

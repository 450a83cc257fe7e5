// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What entries say an item is, for the checks that ask what a batch changes of it.

#include "gate/check.h"

#include <optional>
#include <vector>

namespace crownring {

struct OfItem {
    ItemId item;
    std::optional<JournalLine> root; ///< of an amendment
};

/// The item whose entry this is, or amends; nothing for what says nothing of how an item came into the record.
[[nodiscard]] Result<std::optional<OfItem>> enteredBy(const Batch& batch, const Entry& entry);

/// What is said of an item without the entry: by others of it, and by what it amends as that was before.
[[nodiscard]] Result<std::vector<ItemEntered>> saidOtherwise(const Batch& batch, const Entry& entry, const OfItem& of);

}

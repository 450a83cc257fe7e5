// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A release after incomplete maintenance lies on what was worked on, as it certifies that alone: who patches an
/// envelope leaves nothing unfinished on the basket that came along.

#include "registry/books.h"

#include <vector>

namespace crownring {

/// Takes the releases after incomplete maintenance off the items that their visits did not work on.
[[nodiscard]] Result<void> leaveOutUntouched(Books& books, std::vector<ItemFacts>& facts);

}

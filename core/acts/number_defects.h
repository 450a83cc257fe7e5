// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The numbers of defects: short and of one form wherever one is written down, "D26-015", the fifteenth of its year.

#include "record/journal.h"
#include "registry/books.h"

#include <string_view>
#include <vector>

namespace crownring {

/// As a defect is called until it is numbered.
inline constexpr std::string_view unnumbered = "D?";

/// Gives each defect that is not numbered yet the next free number of its year. What two devices write at one time may
/// come to the same number: the gate then refuses the later one, which is numbered again when it is written again.
[[nodiscard]] Result<void> numberDefects(Books& books, std::vector<NumberedEntry>& entries);

}

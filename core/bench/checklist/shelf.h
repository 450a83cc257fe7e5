// SPDX-License-Identifier: GPL-3.0-or-later
// The checklists that ship with the program, read: once, since every signature asks them.
#pragma once

#include "bench/checklist/checklist.h"

namespace crownring {

/// Those in use, in the order of `checklistShelf`.
[[nodiscard]] const std::vector<Checklist>& shelfRead();

/// The one of that name and revision that ships, or did; null where none does.
[[nodiscard]] const Checklist* shelved(std::string_view id, std::string_view revision);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether deferrals hold for what an item is flown for: a pilot's for his own balloon does not go along to one that
/// carries passengers for hire (ML.A.403(b), paragraph from memory, its AMC and GM read).

#include "registry/books.h"
#include "rules/due/due_list.h"

#include <vector>

namespace crownring {

/// Sets `DefectMark::bar` on deferrals of open defects that whoever agreed to them could not have agreed to on the
/// balloon that their item is on now, or flies as.
[[nodiscard]] Result<void> barDeferrals(Books& books, std::vector<ItemFacts>& facts, CivilDate on,
                                        const FlyingAs& as = {});

}

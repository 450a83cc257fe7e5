// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the entries of defects say beyond what is projected: photographs, and deferrals whichever visit deferred;
/// whether these hold for what an item is flown for.

#include "bench/checklist/inspection.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <map>
#include <span>

namespace crownring {

/// Digests, as the entry that found it says now; none where it says none.
[[nodiscard]] Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found);

/// Of the defects that are open and deferred on the items, as their entries say now.
[[nodiscard]] Result<std::map<DefectId, Said<DefectDeferred>>> deferralsOf(Books& books,
                                                                           std::span<const ItemFacts> items);

/// Sets `DefectMark::bar` on deferrals of open defects that whoever agreed to them could not have agreed to on the
/// balloon that their item is on now, or flies as: a pilot's for his own balloon does not go along to one that carries
/// passengers for hire (ML.A.403(b), paragraph from memory, its AMC and GM read).
[[nodiscard]] Result<void> barDeferrals(Books& books, std::vector<ItemFacts>& facts, CivilDate on,
                                        const FlyingAs& as = {});

}

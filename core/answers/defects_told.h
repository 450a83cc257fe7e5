// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the entries of defects say beyond what is projected: photographs, and deferrals whichever visit deferred.

#include "bench/checklist/inspection.h"
#include "registry/books.h"

#include <map>
#include <span>

namespace crownring {

/// Digests, as the entry that found it says now; none where it says none.
[[nodiscard]] Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found);

/// Of the defects that are open and deferred on the items, as their entries say now.
[[nodiscard]] Result<std::map<DefectId, Said<DefectDeferred>>> deferralsOf(Books& books,
                                                                           std::span<const ItemFacts> items);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the entries of defects say beyond what is projected: photographs, and deferrals whichever visit deferred.

#include "bench/release/bench_file.h"
#include "registry/books.h"

#include <map>
#include <span>

namespace crownring {

/// Digests, as the entry that found it says now; none where it says none.
[[nodiscard]] Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found);

/// Who called it less than it was found to be, and why; nothing where nobody did.
[[nodiscard]] Result<std::optional<Graded>> gradingOf(Books& books, const EntryId& found);

/// What was found in an inspection and taken out of the record, but for what who found it took back at the bench before
/// anything was signed.
[[nodiscard]] Result<std::vector<TakenOut>> takenOutOf(Books& books, const Inspection& inspection);

/// Of the defects that are open and deferred on the items, as their entries say now.
[[nodiscard]] Result<std::map<DefectId, Said<DefectDeferred>>> deferralsOf(Books& books,
                                                                           std::span<const ItemFacts> items);

}

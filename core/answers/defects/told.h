// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the entries of defects say beyond what is projected: photographs, and deferrals whichever visit deferred;
/// whether these hold for what an item is flown for.

#include "bench/release/bench_file.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

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

/// Sets `DefectMark::bar` on deferrals of open defects that whoever agreed to them could not have agreed to on the
/// balloon that their item is on now, or flies as: a pilot's for his own balloon does not go along to one that carries
/// passengers for hire (ML.A.403(b), paragraph from memory, its AMC and GM read).
[[nodiscard]] Result<void> barDeferrals(Books& books, std::vector<ItemFacts>& facts, CivilDate on,
                                        const FlyingAs& as = {});

}

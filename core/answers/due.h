// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is due: the record's facts on a day, held against the rules in force on that day.

#include "registry/books.h"
#include "rules/due/due_list.h"

namespace crownring {

/// What was adopted for a registration binds the balloon under each that it took later.
[[nodiscard]] Bound boundAsRenamed(Bound bound, const Stamp& adopted, const std::vector<Renaming>& renamings);

/// What it is called, and what it was called before: who was entitled on it then, and what was signed of it, is of it.
[[nodiscard]] std::vector<Registration> namesOf(const Registration& balloon, const std::vector<Renaming>& renamings);

/// The requirements in force on a day, read from the adopted texts in the record.
[[nodiscard]] Result<Obligations> obligationsOn(Books& books, CivilDate on);

/// What is due of these items.
/// @param facts of the items of `scope`
[[nodiscard]] Result<DueList> dueOf(Books& books, const Scope& scope, std::vector<ItemFacts> facts, CivilDate on,
                                    const FlyingAs& as, Outside outside);

/// @param outside whether what is out of service has rows; it is among the items either way
[[nodiscard]] Result<DueList> due(Books& books, const Scope& scope, CivilDate on, Outside outside = Outside::LeftOut);

}

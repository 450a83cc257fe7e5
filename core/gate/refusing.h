// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What several checks of the gate say and look up.

#include "record/journal.h"
#include "registry/books.h"

#include <optional>
#include <string>

namespace crownring {

/// The same problem at the line of an entry.
[[nodiscard]] Problem atLine(Problem problem, int line);

/// The line of the entry that an amendment is about in the end (`Journal::root`); a problem where there is none.
[[nodiscard]] Result<JournalLine> rootOf(Journal& journal, const EntryId& id);

/// What an entry of a batch comes to: itself; of an amendment, what the entry that it is about says by now. Nothing
/// where that is voided or cannot be read.
[[nodiscard]] Result<std::optional<Entry>> standingOf(Journal& journal, const Entry& entry);

/// The inspection of the record that what was accomplished refers to; nothing where it refers to a paper, or to none.
[[nodiscard]] Result<std::optional<InspectionId>> accomplishedBy(Books& books, const RequirementDone& done);

}

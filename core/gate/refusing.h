// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What several checks of the gate say and look up.

#include "record/journal.h"

#include <optional>
#include <string>

namespace crownring {

/// The same problem at the line of an entry.
[[nodiscard]] Problem atLine(Problem problem, int line);

/// The line of the entry that an amendment is about in the end (`Journal::root`); a problem where there is none.
[[nodiscard]] Result<JournalLine> rootOf(Journal& journal, const EntryId& id);

}

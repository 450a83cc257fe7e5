// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Does every answer rest on what the journal says? The journal is replayed into a database in memory, and every
/// projection of the record is held against it.

#include "store/journal/journal_table.h"

#include <functional>
#include <optional>
#include <string>

namespace crownring {

/// The first projection that is not what the journal gives.
struct ProjectionFlaw {
    std::string table;
    EntryId entry;        ///< behind the row; may be empty
    bool lacking = false; ///< the record lacks the row; else it holds one that the journal does not give
    std::string row;      ///< its columns
};

/// @pre the journal's chain holds
/// @param progress is told the share done (0 to 1) and may answer false to stop: then nothing is found
[[nodiscard]] std::optional<ProjectionFlaw> projectionFlaw(const Connection& connection, JournalTable& journal,
                                                           const std::function<bool(double)>& progress);

}

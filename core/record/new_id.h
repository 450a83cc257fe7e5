// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/name.h"

#include <chrono>

namespace crownring {

/// A fresh id for an entry that came without one: a UUID of version 7 (RFC 9562). Such ids sort by when they were made,
/// so that of two entries of one minute the later one has the last word.
[[nodiscard]] EntryId newEntryId();

/// Ids that this program makes from now on sort after that moment, though the machine's clock was set back since.
void newIdsAfter(std::chrono::milliseconds since1970);

}

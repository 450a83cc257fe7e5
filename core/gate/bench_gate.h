// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record does not take from anybody, screen or shop's own system: a word on an inspection that is closed, a
/// release while something that is required is missing, a deferral by who is not entitled to it.

#include "record/journal.h"
#include "registry/books.h"

#include <span>
#include <vector>

namespace crownring {

/// Before anything is written: NotReleasable for an entry about an inspection that the record holds as closed, and for
/// the void of one, unless it voids the closing itself.
[[nodiscard]] std::vector<Problem> lockedEntries(Journal& journal, Books& books,
                                                 std::span<const NumberedEntry> entries);

/// After the batch is written and before it is made durable: NotReleasable for each closing and each deferral, as
/// written or as corrected, that may not be, judged by the record with the batch in it; CannotAmend where a correction
/// changes what a signature covers.
[[nodiscard]] std::vector<Problem> barredEntries(Journal& journal, Books& books,
                                                 std::span<const NumberedEntry> entries);

}

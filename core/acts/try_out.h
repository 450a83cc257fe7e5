// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What would follow from entries, before anybody has written them.

#include "record/journal.h"
#include "registry/books.h"

#include <functional>
#include <vector>

namespace crownring {

/// Writes the entries as `post` does, lets `look` ask the record what it says then, and takes all of it back: nothing
/// becomes durable. @return what the record would refuse; then `look` was not called
[[nodiscard]] Results<void> tryOut(Journal& journal, Books& books, std::vector<NumberedEntry> entries,
                                   const std::function<void()>& look);

}

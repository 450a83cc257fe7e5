// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which events something waits for.

#include "registry/books.h"

#include <set>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// Those that are known to all, and those that a requirement of a programme which was ever adopted is triggered by.
[[nodiscard]] Result<std::set<std::string>> awaitedEvents(Books& books);

/// Events that are reported and that nothing waits for, each at its line: they are kept, and nothing follows.
struct UnawaitedEvent {
    std::string event;
    int line = 0;
};
[[nodiscard]] Result<std::vector<UnawaitedEvent>> unawaitedEvents(Books& books, std::span<const NumberedEntry> entries);

}

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

/// Events that are reported and that nothing waits for, or nothing that is adopted for what they happened to, each at
/// its line: they are kept, and nothing follows.
struct UnawaitedEvent {
    std::string event;
    int line = 0;
    std::string of{}; ///< the item or balloon that nothing waits for it on; empty: on none
};
/// Of more than `mostAsked` events no more than their names are asked for.
inline constexpr std::size_t mostAsked = 100;
[[nodiscard]] Result<std::vector<UnawaitedEvent>> unawaitedEvents(Books& books, std::span<const NumberedEntry> entries);

}

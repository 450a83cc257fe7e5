// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an inspection does not ask for because it cannot know: an item without a type has no manual in the record, so
/// no limit is stated for it, and no test.

#include "bench/release/bench_file.h"

#include <string>
#include <vector>

namespace crownring {

struct NotAsked {
    ItemId item;
    std::vector<std::string> quantities; ///< that the lines of its kind would ask for, where a manual states a limit
    bool operator==(const NotAsked&) const = default;
};

/// Of the items without a type, in the order of the opening. What is required of any type is asked all the same.
[[nodiscard]] std::vector<NotAsked> notAsked(const BenchFile& file);

}

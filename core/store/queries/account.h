// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an answer rests on, as its reader found it: to be held against what was kept of it when it was written.

#include "store/connection/row_digest.h"
#include "store/connection/statement.h"

namespace crownring {

enum class Part {
    Facts = 1, ///< of an item
    Fabric,    ///< of an item: readings, repairs, lots
    Balloon,   ///< what it brings to the items on it
    Adoptions, ///< all of them
    Types,     ///< what is stated of types, all of it
    Service,   ///< what is out of service and what was renamed, all of it
    Fitted,    ///< to a balloon, and from when until when
    Pictures,  ///< all photographs; not kept in a record that earlier versions wrote, until the next one
};
template <>
struct Kept<Part> {
    static constexpr int first = static_cast<int>(Part::Facts), last = static_cast<int>(Part::Pictures);
};

struct Account {
    static constexpr std::int64_t all = 0;

    Part part = Part::Facts;
    std::int64_t subject = all; ///< number of the item or balloon
    Tally tally;
};

}

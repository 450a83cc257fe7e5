// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The accomplishments that count for a requirement: its own and those of the requirements named in `satisfied_by`,
/// directly. Several at one moment are one act. One that is too many in a row (`at_most`) does not count.

#include "rules/standing/standing.h"

#include <boost/container/small_vector.hpp>

#include <string_view>

namespace crownring {

/// One act of maintenance. It points into the item's facts and the requirements that it was made from.
struct Act {
    const Stamp* stamp = nullptr; ///< the latest of those signed together
    CivilDate on;
    Figures clock;                        ///< the clock to count from; for history on paper only what the paper states
    std::string_view method;              ///< empty where none is recorded
    Evidence evidence = Evidence::Stated; ///< the best of those signed together
    const PerClock* window = nullptr;     ///< that of the requirement carried out, else the row's own
    std::optional<CivilDate> expires{};   ///< as printed: then the calendar's due date, whatever the interval gives
};

struct CountingActs {
    boost::container::small_vector<Act, 8> acts; ///< in the order of their stamps
    bool rowFull = false;                        ///< the latest act was one too many in a row

    [[nodiscard]] std::span<const Act> inOrder() const { return {acts.data(), acts.size()}; }
};

[[nodiscard]] CountingActs countingActs(const Requirement& requirement, const ItemFacts& item, const InForce& inForce);

}

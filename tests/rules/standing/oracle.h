// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rules once more, read from the design in the plainest possible way and without the arithmetic of the rooms:
/// dates by std::chrono, every act looked at again for every limit, no shortcut. It only serves to compare.

#include "rules/standing/standing.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring::oracle {

struct LimitAnswer {
    std::optional<std::int64_t> last, due, left, toleranceLeft;
    std::string standing = "unproven";
    std::optional<double> share;
};
struct Answer {
    std::string standing;
    std::optional<ClockName> governs;
    std::vector<LimitAnswer> limits;
    bool required = true;
};

/// @param inForce all requirements in force for the item, `requirement` among them.
Answer ask(const Requirement& requirement, const ItemFacts& item, const std::vector<Requirement>& inForce,
           CivilDate today);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The balloons that somebody calls their own, as a list looks at them.

#include "measure/name.h"

#include <optional>
#include <set>

namespace crownring::screen {

struct Mine {
    std::optional<std::set<Registration>> balloons; ///< nothing: all are looked at
    /// @param balloon what a thing is fitted to; what is in the pool is nobody's
    [[nodiscard]] bool holds(const std::optional<Registration>& balloon) const {
        return !balloons || (balloon && balloons->contains(*balloon));
    }
    bool operator==(const Mine&) const = default;
};

}

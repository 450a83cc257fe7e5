// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where on an envelope fabric is read or repaired, and under which conditions it is tested.

#include "measure/amount.h"

#include <optional>
#include <string>

namespace crownring {

/// A panel of an envelope: gores count from 1 around, rows from 1 at the mouth upward. Either may be unknown.
struct PanelPlace {
    std::optional<int> gore;
    std::optional<int> row;
    bool operator==(const PanelPlace&) const = default;
};

/// What is part of a reading's quantity besides its unit: readings that differ here are other series. Nothing of it is
/// ever converted.
struct TestConditions {
    std::optional<std::string> direction; ///< "warp" or "weft"
    std::optional<Millimetres> jaw;       ///< width of the jaws of a grab or strip test
    std::optional<Pascals> pressure;      ///< across the fabric
    std::optional<SquareCentimetres> area;
    bool operator==(const TestConditions&) const = default;
};

}

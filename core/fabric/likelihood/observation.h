// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What one test says of the quantity that it tests, on the scale of natural logarithms.
///
/// A pull that broke is a value; one that held at the proof load is a bound from below; fabric that tore below the
/// least mark of the gauge is a bound from above; held at one step and broken at the next lies between the two.

#include <cstdint>

namespace crownring {

enum class Seen : std::uint8_t {
    Exactly, ///< the logarithm is `low`
    AtLeast, ///< it is `low` or more (held)
    AtMost,  ///< it is `high` or less
    Between, ///< it is between `low` and `high`
};

struct Observation {
    Seen seen = Seen::Exactly;
    double low = 0;  ///< ln of the load, or of whatever is measured; unused for `AtMost`
    double high = 0; ///< used for `AtMost` and `Between` only

    bool operator==(const Observation&) const = default;
};

}

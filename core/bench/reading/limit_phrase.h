// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a manual states.

#include "problem/argument.h"

namespace crownring {

enum class LimitPhrase : std::uint8_t {
    Least,
    Most,
    Proof,
    LeastAndMost,
    MostAndProof,
};

}

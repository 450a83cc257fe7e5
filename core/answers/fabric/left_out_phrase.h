// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why a reading does not count, besides what is wrong with it by itself.

#include "problem/argument.h"

namespace crownring {

enum class LeftOutPhrase : std::uint8_t {
    BeforeEnvelope,
    NothingOnAScaleOfRatios,
};

}

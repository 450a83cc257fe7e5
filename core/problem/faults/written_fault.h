// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Dates, times and durations that cannot be read. %1 is the text as it was written.

#include "problem/fault.h"

namespace crownring {

enum class WrittenFault : std::uint8_t {
    NotADate,
    NotADateOrMonth,
    NotATimeOfDay,
    NotADuration,
    LaterThanNow,
};
[[nodiscard]] FaultRow rowOf(WrittenFault fault);

}

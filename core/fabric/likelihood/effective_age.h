// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/fleet.h"

namespace crownring {

/// t of `AgeingShape`, in hundreds of hours; 0 for fabric that has neither flown nor been overheated.
[[nodiscard]] double effectiveAge(const AgeingShape& shape, double hours, double row, double dose);

/// The other way round: the hours (flown, and `doseWeight` times the dose) at which fabric at `row` reaches t.
[[nodiscard]] double effectiveHours(const AgeingShape& shape, double age, double row);

}

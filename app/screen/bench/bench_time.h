// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bench/checklist/inspection.h"

namespace crownring::screen {

/// The minute in which something is written on the bench: now, in UTC, and never before what was said there that day.
[[nodiscard]] TimeOfDay benchTime(const Inspection* inspection, CivilDate on);

}

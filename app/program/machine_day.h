// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "civil/civil_date.h"

namespace crownring {

/// The day that the machine's calendar shows.
[[nodiscard]] CivilDate machineDay();

}

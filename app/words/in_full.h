// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What was understood, in whole words: "1 hour 30 minutes", "Wednesday, 25 November 2026".

#include "civil/civil_date.h"
#include "measure/count.h"

#include <QString>

namespace crownring::words {

/// @param minutes 0 or more
[[nodiscard]] QString inFull(Minutes minutes);
[[nodiscard]] QString inFull(CivilDate day);
/// A month alone: "May 2016".
[[nodiscard]] QString inFull(const DayOrMonth& made);

}

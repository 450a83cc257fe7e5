// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Words of the trade that core knows by stable names.

#include "problem/argument.h"

#include <QString>

namespace crownring::words {

/// In the middle of a sentence; the name itself where there is no word for it.
[[nodiscard]] QString term(const Term& term);

}

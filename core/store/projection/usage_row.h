// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Minutes, landings and inflations, as rows have them side by side.

#include "measure/usage.h"
#include "store/connection/statement.h"

namespace crownring {

/// Its next three columns.
inline Usage usageFrom(Statement& row) {
    Usage use;
    use.minutes = row.read<Minutes>();
    use.landings = row.read<Landings>();
    use.inflations = row.read<Inflations>();
    return use;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "civil/moment.h"

#include <QString>

namespace crownring::words {

/// "2026-12-01 06:40 UTC"
[[nodiscard]] QString momentSaid(Moment at);

}

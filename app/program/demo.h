// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

namespace crownring {

/// The invented fleet that travels inside the program: entries, one JSON object a line.
[[nodiscard]] QByteArray demoFleet();

}

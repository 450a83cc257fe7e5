// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "registry/question.h"

#include <QString>

namespace crownring::words {

/// One sentence that says what is contradictory and how it is mended.
[[nodiscard]] QString questionText(const Question& question);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the program puts into a checklist by itself.

#include "problem/argument.h"

namespace crownring {

enum class ChecklistPhrase : std::uint8_t {
    FurtherWork, ///< a section
};

}

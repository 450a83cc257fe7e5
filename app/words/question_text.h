// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "words/sentences.h"

namespace crownring::words {

/// One sentence that says what is contradictory and how it is mended.
/// @param titles what a requirement is called that it is about
[[nodiscard]] QString questionText(const Question& question, const Titles& titles = {});

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Sentences with arguments, in the language of the program. English needs its translation too: that is where "1
/// question" and "2 questions" come from. It is there as soon as there is an application.

#include "problem/argument.h"

#include <QString>

namespace crownring::words {

/// @param context what lupdate files it under; `source` stands there as QT_TRANSLATE_NOOP, with %n as
/// QT_TRANSLATE_N_NOOP
[[nodiscard]] QString sentence(const char* context, const char* source, const Arguments& arguments);

/// An argument by itself: "2024-05-01", "133.4 N", "envelope", "a, b or c".
[[nodiscard]] QString said(const Argument& argument);

}

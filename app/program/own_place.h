// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where the program keeps what is the user's own.

#include <QString>

namespace crownring {

/// Before anything of the user's is looked for: settings live under these names.
void nameProgram(const QString& version);

/// The record that is opened when none is named; its folder is made.
[[nodiscard]] QString ownRecord();

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Bytes as a file for others: a paper, a table, a picture.

#include "writing/target.h"

#include <string_view>

namespace crownring {

/// All of them under that name, on disk; or what was there before.
/// @return FileExists or FileUnwritable, as `whyNotWritten`, or since it cannot be written
[[nodiscard]] Result<void> writeOut(const std::string& file, std::string_view bytes, Replace replace);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// All of a file that somebody names.

#include "exchange/text/plain_text.h"

#include <istream>

namespace crownring {

/// A file, or what another program writes into a pipe. A device is none: some never end.
/// @param most bytes
/// @return FileUnreadable for what is none, cannot be read, or has more
[[nodiscard]] Result<std::string> wholeFile(const std::string& file, std::size_t most = largestImport);

/// What comes in until it ends. @param file how it is named
[[nodiscard]] Result<std::string> wholeStream(std::istream& stream, const std::string& file, std::size_t most);

}

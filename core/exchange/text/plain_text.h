// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Bytes of a file that somebody made elsewhere, as UTF-8.

#include "problem/problem.h"
#include "text/digit.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace crownring {

struct PlainText {
    std::string utf8;       ///< without byte order mark
    bool converted = false; ///< it was not UTF-8 and has been read as Windows-1252 (of which Latin-1 is a part)
};

/// The largest file that is read: a log of a million flights fits.
inline constexpr std::size_t largestImport = std::size_t{64} * 1024 * 1024;

/// @return FileUnreadable for more than `largestImport` bytes, and for what is no text of one byte a letter: UTF-16,
/// a spreadsheet, a picture.
[[nodiscard]] Result<PlainText> plainText(std::string_view bytes, const std::string& file);

/// Lower case without accents, everything that is no letter or digit as one space: "Durée (h:mm)" is "duree h mm".
/// Letters beyond Latin-1 stay as they are.
[[nodiscard]] std::string folded(std::string_view utf8);

/// Without blanks and no-break spaces at both ends.
[[nodiscard]] std::string_view trimmed(std::string_view utf8);

/// Nothing but digits 0 to 9, at least one.
[[nodiscard]] bool allDigits(std::string_view text);

}

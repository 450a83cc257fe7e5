// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Texts of other people as they may be shown: a name is text everywhere. What a terminal would obey, and what turns
/// the direction of reading so that one text looks like another, is shown as its code point.
///
///     "QE-OAK\x1b[2J"           "QE-OAK<U+001B>[2J"
///     "QE-\u202EKAO"            "QE-<U+202E>KAO"

#include <string>
#include <string_view>

namespace crownring {

/// Whether a code point is one of those that `shown` is about.
[[nodiscard]] bool isHidden(char32_t point);

/// Control characters (general category Cc), line and paragraph separators, marks of direction (UAX #9: U+061C, U+200E,
/// U+200F, U+202A to U+202E, U+2066 to U+2069), characters that take no room (U+200B to U+200D, U+2060, U+FEFF) and
/// bytes that are no UTF-8 ("<byte 9F>") become visible. Line ends and tabs stay.
[[nodiscard]] std::string shown(std::string_view text);

/// The same for what stands on one line: line ends and tabs become visible too.
[[nodiscard]] std::string shownOnOneLine(std::string_view text);

/// JSON, as it was serialised, with those characters as \u escapes: another spelling of the same document.
[[nodiscard]] std::string escapedJson(std::string_view serialised);

}

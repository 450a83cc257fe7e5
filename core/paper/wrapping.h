// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Text in a place of so many letters. Letters are code points of UTF-8; each takes one place.

#include <string>
#include <string_view>
#include <vector>

namespace crownring::paper {

[[nodiscard]] std::size_t letters(std::string_view text);

/// Breaks at blanks and at "\n"; a word longer than `width` is cut. At least one line. `width` counts as at least 1.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How near one word is to another, for what somebody meant to write.

#include <cstddef>
#include <string_view>

namespace crownring {

/// How many letters are wrong, missing, too many, or changed with the next (optimal string alignment).
[[nodiscard]] std::size_t slipsBetween(std::string_view one, std::string_view other);

/// The same in letters and digits whatever stands between them, or one slip of the pen away, two in a long word.
/// Common practice, no source.
[[nodiscard]] bool isNearly(std::string_view written, std::string_view known);

}

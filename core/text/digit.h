// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace crownring {

/// 0 to 9 of ASCII, whatever the machine's language.
[[nodiscard]] constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One name in several spellings: "d-oabc", "D OABC" and D-OABC are one registration.

#include <string>
#include <string_view>

namespace crownring {

/// What spellings of one name have in common: its letters and digits, small. Letters beyond ASCII stay as they are. A
/// name without any is itself.
[[nodiscard]] std::string bareName(std::string_view name);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace crownring {

/// Natural order of serial numbers: runs of digits compare as numbers, the rest as bytes.
[[nodiscard]] int compareSerials(std::string_view a, std::string_view b);

}

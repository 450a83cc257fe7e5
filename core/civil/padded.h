// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace crownring {

/// A non-negative number with leading zeros: padded(7, 2) == "07".
[[nodiscard]] inline std::string padded(int number, std::size_t width) {
    auto digits = std::to_string(number);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

}

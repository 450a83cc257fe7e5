// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace crownring {

/// Whether a text says nothing: it is empty, or of ASCII white space alone.
[[nodiscard]] constexpr bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\n\v\f\r") == std::string_view::npos;
}

}

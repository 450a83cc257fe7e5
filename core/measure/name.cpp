// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/name.h"

#include "text/utf8.h"

#include <algorithm>

namespace crownring {

bool isUsableName(std::string_view text) {
    const auto control = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; };
    return !text.empty() && characters(text) <= longestName && std::ranges::none_of(text, control);
}

}

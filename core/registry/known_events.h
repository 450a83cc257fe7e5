// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What may happen to a balloon, by the names that the checklists and programmes that ship know.

#include <array>
#include <string_view>

namespace crownring {

inline constexpr std::array<std::string_view, 8> knownEvents{
    "hard-landing", "wire-contact", "over-temperature", "immersion", "dragged", "fire", "mildew", "increased-fuel-use"};

}

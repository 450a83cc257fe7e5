// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The words that stand in JSON for the values of an enumeration, in their order. Inside the record room only.

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace crownring {

template <std::size_t Count>
using Words = std::array<std::string_view, Count>;

template <class Value, std::size_t Count>
std::optional<Value> among(const Words<Count>& words, std::string_view name) {
    for (std::size_t i = 0; i < Count; ++i)
        if (words[i] == name)
            return static_cast<Value>(i);
    return std::nullopt;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an item is.

#include "problem/argument.h"

#include <optional>
#include <string_view>

namespace crownring {

enum class ItemKind { Envelope, Basket, Burner, Cylinder, Hose, Instrument, Other };
inline constexpr int itemKindCount = 7;
[[nodiscard]] std::string_view itemKindName(ItemKind kind);
[[nodiscard]] Term termOf(ItemKind kind);
[[nodiscard]] std::optional<ItemKind> itemKindFrom(std::string_view name);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Names that people can tell apart by eye, which is how they are told apart on a basket or a paper.

#include <optional>
#include <string_view>

namespace crownring {

/// No space at its ends, none but the plain one within, and nothing that is not seen: what `shown` makes visible, and
/// what else takes no room (Unicode's Default_Ignorable_Code_Point, from memory). Of a text that is empty: false.
[[nodiscard]] bool isLegible(std::string_view name);

/// A character in a text that nobody sees.
struct HiddenCharacter {
    char32_t point = 0;
    int line = 1;  ///< from 1
    int place = 1; ///< in characters, from 1
};
/// The first of those in a text of several lines, where spaces of all widths, line ends and tabs are none.
[[nodiscard]] std::optional<HiddenCharacter> firstHidden(std::string_view text);

}

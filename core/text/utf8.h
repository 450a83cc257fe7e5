// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// UTF-8 as the Unicode standard defines it (table 3-7: no surrogates, no overlong forms).

#include <cstddef>
#include <optional>
#include <string_view>

namespace crownring {

/// Bytes of the well-formed sequence at the start of `text`; 0 where there is none. Of a text that is empty: 1.
[[nodiscard]] std::size_t sequenceLength(std::string_view text);

/// The code point of a well-formed sequence.
[[nodiscard]] char32_t pointOf(std::string_view sequence);

[[nodiscard]] bool isUtf8(std::string_view text);

/// Code points, which is what people count and what a JSON Schema's maxLength means; of what is no UTF-8 about as many.
[[nodiscard]] std::size_t characters(std::string_view text);

/// The place of the first byte, from 0, that is not UTF-8; nothing where all is.
[[nodiscard]] std::optional<std::size_t> firstBadByte(std::string_view text);

}

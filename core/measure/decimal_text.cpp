// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/decimal_text.h"

#include "text/digit.h"

#include <algorithm>
#include <charconv>
#include <string>

namespace crownring {

std::optional<double> parseDecimal(std::string_view text) {
    constexpr auto blanks = " \t";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return std::nullopt;
    std::string plain(text.substr(first, text.find_last_not_of(blanks) - first + 1));
    std::ranges::replace(plain, ',', '.');
    const std::size_t begin = plain.starts_with('-') ? 1 : 0;
    if (plain.size() == begin || !isDigit(plain[begin]) || !isDigit(plain.back()))
        return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    return error == std::errc{} && end == plain.data() + plain.size() ? std::optional(value) : std::nullopt;
}

}

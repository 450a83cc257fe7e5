// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/serial_shape.h"

#include "rules/programme/serial_order.h"
#include "text/digit.h"

namespace crownring {

namespace {

bool isDivider(char c) { return c == ' ' || c == '-' || c == '/' || c == '.' || c == '_'; }

/// With each number as one digit: "A-0100" and "a7" are of one shape.
std::string shapeOf(const std::string& plain) {
    std::string shape;
    for (const char c : plain)
        if (!isDigit(c))
            shape += c;
        else if (shape.empty() || shape.back() != '0')
            shape += '0';
    return shape;
}

Truth isIn(const std::string& serial, const SerialRange& range) {
    const auto from = range.from ? std::optional(plainSerial(*range.from)) : std::nullopt;
    const auto to = range.to ? std::optional(plainSerial(*range.to)) : std::nullopt;
    const auto shape = shapeOf(serial);
    const bool isAlike = (!from || shapeOf(*from) == shape) && (!to || shapeOf(*to) == shape);
    if ((!from || compareSerials(*from, serial) <= 0) && (!to || compareSerials(serial, *to) <= 0))
        return isAlike || (from && to) ? Truth::Yes : Truth::Unknown;
    return isAlike ? Truth::No : Truth::Unknown;
}

}

std::string plainSerial(std::string_view written) {
    std::string plain;
    bool divided = false;
    for (const char c : written) {
        if (isDivider(c)) {
            divided = true;
            continue;
        }
        if (divided && !plain.empty() && isDigit(plain.back()) && isDigit(c))
            plain += '-';
        divided = false;
        plain += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return plain;
}

bool isOneShape(std::string_view a, std::string_view b) { return shapeOf(plainSerial(a)) == shapeOf(plainSerial(b)); }

Truth isAmong(std::string_view serial, std::span<const SerialRange> ranges) {
    const auto plain = plainSerial(serial);
    if (plain.empty())
        return Truth::Unknown;
    auto answer = Truth::No;
    for (const auto& range : ranges)
        answer = either(answer, isIn(plain, range));
    return answer;
}

}

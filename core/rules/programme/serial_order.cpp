// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/serial_order.h"

#include "text/digit.h"

#include <algorithm>

namespace crownring {

namespace {

/// Takes a run of digits, without its leading zeros, from the front of `text`.
std::string_view takeNumber(std::string_view& text) {
    const auto end = std::min(std::ranges::find_if_not(text, isDigit) - text.begin(), std::ssize(text));
    auto number = text.substr(0, static_cast<std::size_t>(end));
    text.remove_prefix(number.size());
    number.remove_prefix(std::min(number.find_first_not_of('0'), number.size()));
    return number;
}

int compareNumbers(std::string_view a, std::string_view b) {
    if (a.size() != b.size())
        return a.size() < b.size() ? -1 : 1;
    return a.compare(b);
}

}

int compareSerials(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        int order = 0;
        if (isDigit(a.front()) && isDigit(b.front())) {
            order = compareNumbers(takeNumber(a), takeNumber(b));
        } else {
            order = a.substr(0, 1).compare(b.substr(0, 1));
            a.remove_prefix(1);
            b.remove_prefix(1);
        }
        if (order != 0)
            return order;
    }
    return static_cast<int>(b.empty()) - static_cast<int>(a.empty());
}

}

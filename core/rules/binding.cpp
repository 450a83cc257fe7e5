// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/binding.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }

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

bool holds(const SerialRange& range, std::string_view serial) {
    return (!range.from || compareSerials(*range.from, serial) <= 0) &&
           (!range.to || compareSerials(serial, *range.to) <= 0);
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

bool binds(const Requirement& requirement, const ItemFacts& item) {
    if (std::ranges::find(requirement.kinds, item.kind) == requirement.kinds.end())
        return false;
    if (!requirement.types.empty() && item.type &&
        std::ranges::find(requirement.types, *item.type) == requirement.types.end())
        return false;
    return requirement.serials.empty() || !item.serial ||
           std::ranges::any_of(requirement.serials, [&](const auto& range) { return holds(range, *item.serial); });
}

std::optional<Because> missingFact(const Requirement& requirement, const ItemFacts& item) {
    if (!requirement.types.empty() && !item.type)
        return Because::TypeMissing;
    if (!requirement.serials.empty() && !item.serial)
        return Because::SerialMissing;
    return std::nullopt;
}

bool calledForBy(const Requirement& requirement, const std::vector<std::string>& operations) {
    return requirement.operations.empty() ||
           std::ranges::any_of(requirement.operations, [&](const std::string& operation) {
               return std::ranges::find(operations, operation) != operations.end();
           });
}

}

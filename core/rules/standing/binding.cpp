// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/binding.h"

#include "rules/programme/serial_order.h"

#include <algorithm>

namespace crownring {

namespace {

bool holds(const SerialRange& range, std::string_view serial) {
    return (!range.from || compareSerials(*range.from, serial) <= 0) &&
           (!range.to || compareSerials(serial, *range.to) <= 0);
}

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

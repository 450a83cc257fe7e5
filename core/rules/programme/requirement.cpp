// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/requirement.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, 6> clockNames = {"minutes", "landings", "inflations",
                                                        "months",  "days",     "inspections"};
constexpr std::array<std::string_view, 6> actionNames = {"inspect", "test", "service", "replace", "retire", "comply"};

}

std::string_view clockNameText(ClockName clock) { return clockNames[static_cast<std::size_t>(clock)]; }

std::optional<ClockName> clockNameFrom(std::string_view text) {
    const auto found = std::ranges::find(clockNames, text);
    if (found == clockNames.end())
        return std::nullopt;
    return static_cast<ClockName>(found - clockNames.begin());
}

std::int64_t defaultLookAhead(ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return 600;
    case ClockName::Landings:
    case ClockName::Inflations:
        return 10;
    case ClockName::Months:
    case ClockName::Inspections:
        return 1;
    case ClockName::Days:
        return 30;
    }
    return 0;
}

std::string_view actionText(Action action) { return actionNames[static_cast<std::size_t>(action)]; }

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/item_facts.h"

#include <array>

namespace crownring {

std::string_view evidenceName(Evidence evidence) {
    constexpr std::array<std::string_view, evidenceCount> names = {"signed", "paper", "stated"};
    return names[static_cast<std::size_t>(evidence)];
}

}

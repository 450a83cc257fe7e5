// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/overhaul.h"

namespace crownring {

namespace {

bool isOverhaul(const RequirementId& requirement) {
    const std::string_view id = requirement.text();
    return id.substr(id.rfind('.') + 1) == "overhaul";
}

template <class Count>
std::optional<Count> sinceThen(const std::optional<Count>& now, const std::optional<Count>& then) {
    return now && then ? std::optional(*now - *then) : std::nullopt;
}

}

std::optional<SinceOverhaul> sinceOverhaul(const ItemFacts& item) {
    const Accomplishment* last = nullptr;
    for (const auto& done : item.done)
        if (isOverhaul(done.requirement))
            last = &done;
    if (!last)
        return std::nullopt;
    return SinceOverhaul{last->stamp.at.on(),
                         {sinceThen(item.clock.minutes, last->clock.minutes),
                          sinceThen(item.clock.landings, last->clock.landings),
                          sinceThen(item.clock.inflations, last->clock.inflations)}};
}

}

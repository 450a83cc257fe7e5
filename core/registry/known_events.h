// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What may happen to a balloon, by the names that the checklists and programmes that ship know.

#include "problem/argument.h"
#include "record/kinds/item_kind.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace crownring {

struct KnownEvent {
    std::string_view name;
    /// What it happens to, where that is one kind of item and is known to whoever reports it: then it is reported of
    /// that item, and makes nothing due on the rest of the balloon.
    std::optional<ItemKind> of{};
    /// Whether a report to the authority may be owed: it may be one of the occurrences with lighter-than-air aircraft
    /// that Annex V of Regulation (EU) 2015/1018 lists (from memory), or else a significant risk (Regulation (EU)
    /// 376/2014 Art. 4(1), from memory). Which one is, is for whoever was there to say.
    bool mayBeReported = false;
};

inline constexpr std::array<KnownEvent, 11> knownEvents{{
    {"hard-landing", {}, true},
    {"wire-contact", {}, true},
    {"over-temperature", {}, true},
    {"immersion", {}, true},
    {"packed-wet", ItemKind::Envelope},
    {"dragged", {}, true},
    {"flame-contact", ItemKind::Envelope, true},
    {"coil-run-dry", ItemKind::Burner, true},
    {"fire", {}, true},
    {"mildew"},
    {"increased-fuel-use"},
}};

/// Its name in the middle of a sentence.
[[nodiscard]] inline Term eventTerm(std::string_view name) { return {Term::Of::Event, std::string(name)}; }

/// Null for another name.
[[nodiscard]] constexpr const KnownEvent* knownEvent(std::string_view name) {
    const auto* found =
        std::find_if(knownEvents.begin(), knownEvents.end(), [&](const KnownEvent& each) { return each.name == name; });
    return found == knownEvents.end() ? nullptr : found;
}

}

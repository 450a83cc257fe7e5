// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When an entry was written down, as the chain keeps it: a moment of the machine's clock, UTC. Where that clock stood
/// before what its writer had written last, it was set back meanwhile: the moment is then that of the entry before, and
/// what the clock said stands behind it.
///
///     2026-11-25T07:00:00Z
///     2026-11-25T07:00:00Z/2026-11-24T22:10:05Z      set back to the evening before

#include <string>
#include <string_view>

namespace crownring {

struct Recorded {
    std::string at;
    std::string clockSaid; ///< empty where the clock had gone on
    bool operator==(const Recorded&) const = default;
};

[[nodiscard]] Recorded recordedFrom(std::string_view text);

/// What the chain keeps of an entry that is written now.
/// @param before what it keeps of the writer's entry before; empty for the first
[[nodiscard]] std::string recordedAfter(std::string_view before, std::string_view now);

}

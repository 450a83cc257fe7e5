// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Times of day as people write them. Only a time that says so is UTC: a clock on the wall is not converted, because a
/// log does not say in which country and under which summer-time rule it was read.

#include <optional>
#include <string_view>
#include <utility>

namespace crownring {

struct WrittenTime {
    int seconds = 0;                  ///< after 00:00, 0 to 86,399
    std::optional<int> offsetMinutes; ///< east of UTC, 0 for UTC itself; absent: not stated
    bool operator==(const WrittenTime&) const = default;
};

/// Reads 7:30, 07:30:15, 0730, 7h30, 7.30, 7:30 pm, each with an optional Z, UTC, GMT, +02:00 behind it (ISO 8601).
/// @return nothing for anything else.
[[nodiscard]] std::optional<WrittenTime> readTime(std::string_view text);

/// "2025-12-31 07:30" or "2025-12-31T07:30:00Z" as date and time; the time is empty when there is none.
[[nodiscard]] std::pair<std::string_view, std::string_view> dateAndTime(std::string_view text);

}

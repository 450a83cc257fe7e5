// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads what items went through, day by day. The flights of a balloon are read once, however many items are on it, and
/// items that were on it alike share a log.

#include "registry/use_log.h"
#include "store/projection/names.h"

#include <map>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace crownring {

class UseReader {
public:
    UseReader(const Connection& connection, Names& names, CivilDate first, CivilDate last);

    [[nodiscard]] UseLogs readAll();
    [[nodiscard]] UseLogs read(std::span<const std::int64_t> items);

private:
    struct OnBalloon {
        std::int64_t balloon = 0;
        std::int64_t from = 0; ///< moments: flights at `from` or later and before `until`
        std::int64_t until = 0;
        auto operator<=>(const OnBalloon&) const = default;
    };
    struct Flight {
        std::int64_t at = 0;
        Usage use;
    };
    /// What decides a log.
    struct Way {
        CivilDate entered;
        std::vector<OnBalloon> stays; ///< in order
        std::vector<Flight> kits;
    };

    void take(std::int64_t item);
    [[nodiscard]] const std::vector<Flight>& flightsOf(std::int64_t balloon);
    [[nodiscard]] UseLog logOf(const Way& way);
    [[nodiscard]] std::optional<CivilDate> enteredOn(std::int64_t item);

    Names& m_names;
    CivilDate m_first, m_last;
    std::int64_t m_from, m_until; ///< the moments that the days begin and end with
    Statement m_all, m_entered, m_stays, m_kits, m_flights;
    std::map<std::int64_t, std::vector<Flight>> m_flown;
    std::map<std::pair<CivilDate, std::vector<OnBalloon>>, std::size_t> m_shared;
    UseLogs m_logs;
};

}

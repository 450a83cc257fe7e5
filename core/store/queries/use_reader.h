// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads what items went through, day by day. The flights of a balloon are read once, however many items are on it, and
/// items that flew the same ones share a log. For all items, stays and kits are read in one go.

#include "registry/use_log.h"
#include "store/projection/names.h"

#include <map>
#include <span>
#include <tuple>
#include <unordered_map>
#include <vector>

namespace crownring {

class UseReader {
public:
    UseReader(const Connection& connection, Names& names, CivilDate first, CivilDate last);

    [[nodiscard]] UseLogs readAll();
    [[nodiscard]] UseLogs read(std::span<const std::int64_t> items);

private:
    struct Flight {
        std::int64_t at = 0;
        Usage use;
    };
    using Flights = std::vector<Flight>;
    /// Flights of a balloon, from one place among them to before another.
    struct Run {
        std::int64_t balloon = 0;
        std::size_t from = 0;
        std::size_t until = 0;
        auto operator<=>(const Run&) const = default;
    };
    struct Stay {
        std::int64_t balloon = 0;
        Stamp from;
        Stamp until;
    };
    /// Where an item was and what named it.
    struct Way {
        std::vector<Stay> stays;
        Flights kits;
    };

    void readStays(Statement& rows);
    void readKits(Statement& rows);
    void take(std::int64_t item, CivilDate entered);
    [[nodiscard]] const Flights& flightsOf(std::int64_t balloon);
    /// The place of the balloon's first flight that is not before the stamp.
    [[nodiscard]] std::size_t placeOf(std::int64_t balloon, const Stamp& stamp);
    [[nodiscard]] UseLog logOf(CivilDate first, const std::vector<Run>& runs, const Flights& kits);

    Names& m_names;
    CivilDate m_first, m_last;
    Moment m_from, m_until; ///< that the days begin and end with
    Statement m_allEntered, m_entered, m_allStays, m_stays, m_allKits, m_kits, m_flights, m_before;
    std::unordered_map<std::int64_t, Way> m_ways;
    std::unordered_map<std::int64_t, Flights> m_flown;
    std::map<std::tuple<CivilDate, std::vector<Run>>, std::size_t> m_shared;
    UseLogs m_logs;
};

}

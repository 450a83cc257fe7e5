// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads the clocks of items at the ends of many days: an item's history is read once, and what balloons had flown by
/// then is asked for together.

#include "registry/clock.h"
#include "store/projection/counted_use.h"
#include "store/queries/release_reader.h"

#include <map>
#include <span>
#include <vector>

namespace crownring {

class ClockReader {
public:
    ClockReader(const Connection& connection, FlightTotals& totals);

    struct Asked {
        std::int64_t item = 0;
        CivilDate day;
    };
    /// In the order asked; nothing before the item was entered.
    [[nodiscard]] std::vector<std::optional<Figures>> read(std::span<const Asked> asked);

private:
    /// Waits for what a balloon flew.
    struct Waiting {
        std::size_t place = 0;
        Usage counted;
    };
    using Places = std::vector<std::size_t>;
    void readItem(std::int64_t item, const Places& places, std::span<const Asked> asked);
    [[nodiscard]] std::optional<ClockOrigin> originOf(std::int64_t item);
    /// What counts by then: what a release states that was withdrawn is no clock.
    [[nodiscard]] std::vector<Accomplishment> doneOn(std::int64_t item, Moment end);

    FlightTotals& m_totals;
    CountedUse m_use;
    Statement m_entered, m_done;
    ReleaseReader m_releases;
    std::vector<std::optional<Figures>> m_clocks;
    std::vector<Waiting> m_waiting;
    std::vector<FlightTotals::Asked> m_flown; ///< of those that wait
};

}

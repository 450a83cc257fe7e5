// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How much use was counted on one item before any stamp: from its stays and its balloons' running totals, and from the
/// flights that name it in their kit.

#include "store/projection/flight_totals.h"

#include <vector>

namespace crownring {

class CountedUse {
public:
    CountedUse(const Connection& connection, FlightTotals& totals);

    /// @param entered the day from whose 00:00 use counts
    void load(std::int64_t item, CivilDate entered);
    /// Of the item loaded last. @pre flight totals and stays are settled
    [[nodiscard]] Usage before(const Stamp& stamp);
    /// The same but for what the balloon that it was on flew before the stamp (`FlightTotals`), where it was on one.
    struct Counted {
        Usage use;
        std::optional<std::int64_t> balloon;
    };
    [[nodiscard]] Counted countedBefore(const Stamp& stamp) const;

private:
    struct CountedStay {
        std::int64_t balloon = 0;
        Stamp from;
        std::optional<Stamp> until;
        Usage in;
        Usage out;
    };
    struct KitFlight {
        Stamp stamp;
        Usage use;
    };

    FlightTotals& m_totals;
    Statement m_readStays;
    Statement m_readKits;
    CivilDate m_entered;
    std::vector<CountedStay> m_stays;
    std::vector<KitFlight> m_kits;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What balloons bring to the items on them: what flew, what happened, what they are flown for. Read for one balloon or
/// for all, whatever the day, so that the rows can be held against their tally.

#include "registry/item_facts.h"
#include "store/connection/row_digest.h"
#include "store/projection/flight_totals.h"
#include "store/projection/names.h"

#include <unordered_map>
#include <vector>

namespace crownring {

class BalloonFacts {
public:
    /// @param one read single balloons, else all at once
    BalloonFacts(const Connection& connection, Names& names, FlightTotals& totals, bool one);

    /// Forgets what was read.
    void begin();
    /// @return what its rows come to
    Tally read(std::int64_t balloon);
    Tally readAll();

    /// By flights that count on what is fitted, in the order asked. @pre the balloons were read
    [[nodiscard]] std::vector<Usage> flownBefore(const std::vector<FlightTotals::Asked>& asked);
    /// In their order.
    [[nodiscard]] const std::vector<Occurrence>& events(std::int64_t balloon) const;
    /// What is fitted flew on it on a day, within a stay: what was removed before an event was reported, or fitted
    /// after the hour that it is said to be of, suffered it if it flew then. Also of a flight from the day before.
    [[nodiscard]] bool flewIn(std::int64_t balloon, CivilDate on, const Stamp& from, const std::optional<Moment>& until,
                              const std::optional<EntryId>& untilId);
    /// As it is known on a day; null where nobody had entered the balloon.
    [[nodiscard]] const std::vector<std::string>* operations(std::int64_t balloon, CivilDate on) const;

private:
    struct Known {
        std::optional<CivilDate> entered;
        std::vector<std::string> operations;
        std::vector<Occurrence> events;
        std::optional<Moment> lastFlight;
        Usage flown;
    };
    template <class... Of>
    Tally readRows(const Of&... balloon);

    Names& m_names;
    FlightTotals& m_totals;
    Statement m_entered, m_events, m_flown, m_aloft;
    std::unordered_map<std::int64_t, Known> m_known;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The flights of each balloon with its running totals, so that what was flown before any stamp is one look-up, however
/// long the history. A flight at the end of a balloon's history costs one row; one that arrives late moves the totals
/// of that balloon's later flights.

#include "record/entry.h"
#include "store/connection/statement.h"

#include <map>
#include <span>
#include <unordered_map>
#include <vector>

namespace crownring {

class FlightTotals {
public:
    explicit FlightTotals(const Connection& connection);

    void add(std::int64_t balloon, const Entry& entry, const FlightLogged& flight);
    void remove(std::int64_t balloon, const Entry& entry);

    /// Where a balloon's flights changed: at this stamp and after it.
    struct Change {
        std::int64_t balloon = 0;
        Stamp from;
    };
    /// Puts the running totals right, and what each balloon flew in all; tells what changed since the last call.
    std::vector<Change> settle();

    /// By flights that count on what is fitted. Only valid when settled.
    [[nodiscard]] Usage before(std::int64_t balloon, const Stamp& stamp);
    struct Asked {
        std::int64_t balloon = 0;
        Moment before;
    };
    /// The same for many, in the order asked, hundreds to a statement.
    [[nodiscard]] std::vector<Usage> before(std::span<const Asked> asked);
    /// After a transaction that was rolled back or left to others.
    void forget();

private:
    struct Tail {
        Stamp last;
        Usage totals;
        bool settled = true;
    };
    Tail& tailOf(std::int64_t balloon);
    void changed(std::int64_t balloon, const Stamp& stamp);

    const Connection& m_connection;
    Statement m_insert;
    Statement m_remove;
    Statement m_before;
    Statement m_last;
    Statement m_accumulate;
    Statement m_dropFlown, m_putFlown;
    std::unordered_map<std::int64_t, Tail> m_tails;
    std::map<std::int64_t, Stamp> m_changes;
};

}

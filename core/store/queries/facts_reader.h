// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads the facts of one item or of all items on a day. Both ways run the same statements; for all items they are read
/// in the order of the items and laid side by side.

#include "registry/item_facts.h"
#include "store/projection/counted_use.h"
#include "store/projection/names.h"
#include "store/queries/service_reader.h"

#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

class FactsReader {
public:
    /// @param one read single items, else everything
    FactsReader(const Connection& connection, Names& names, FlightTotals& totals, bool one);

    [[nodiscard]] std::vector<ItemFacts> read(CivilDate on, std::optional<std::int64_t> item);

private:
    struct Working {
        std::int64_t item = 0;
        ItemFacts facts;
        Usage use;
        std::int64_t balloon = 0;
    };
    /// The item that rows are for, when read in order.
    class Walk;

    void readItems(CivilDate on, std::optional<std::int64_t> item);
    void readStays(Moment end, std::optional<std::int64_t> item);
    void readKits(Moment end, std::optional<std::int64_t> item);
    /// What became of each closing: it is read before what counts by it.
    enum class Release { None, Holds, Revoked };
    template <class... Of>
    void readReleases(const Of&... inspection);
    [[nodiscard]] Release releaseOf(const std::optional<std::string>& ref);
    void readDone(Moment end, std::optional<std::int64_t> item);
    void readEvents(Statement& statement, Moment end, std::optional<std::int64_t> item);
    void readDefects(Moment end, std::optional<std::int64_t> item);
    void readOperations(CivilDate on);
    void readService(Moment end);
    void finishClock(Working& working, Moment end);
    template <class... Values>
    void run(Statement& statement, std::optional<std::int64_t> item, const Values&... values);

    Names& m_names;
    FlightTotals& m_totals;
    CountedUse m_use;
    bool m_one;
    Statement m_items, m_stays, m_kits, m_done, m_closings, m_revocations, m_itemEvents, m_balloonEvents, m_defects,
        m_operations, m_operationsOf;
    ServiceReader m_service;
    std::vector<Working> m_working;
    std::unordered_map<std::string, Release> m_releases; ///< by inspection
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads the facts of one item or of all items on a day. Both ways run the same statements; for all items they are read
/// in the order of the items and laid side by side. All rows are read whatever the day, and counted.

#include "registry/apart/kept_apart.h"
#include "registry/item_facts.h"
#include "store/accounts/account.h"
#include "store/projection/counted_use.h"
#include "store/queries/balloon_facts.h"
#include "store/queries/release_reader.h"
#include "store/queries/service_reader.h"

#include <map>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace crownring {

class FactsReader {
public:
    /// @param one read single items, else everything
    FactsReader(const Connection& connection, Names& names, FlightTotals& totals, bool one);

    /// What is read of a balloon for one item is known for the next.
    [[nodiscard]] std::vector<ItemFacts> read(CivilDate on, std::optional<std::int64_t> item);
    /// Forgets what is known, after anything was written.
    void startOver();
    /// What the last reading rests on, but for balloons that were known already.
    [[nodiscard]] const std::vector<Account>& accounts() const { return m_accounts; }
    [[nodiscard]] bool readsAll() const { return !m_one; }
    /// What carried each of the items that were read last, of any depth, until then and before; those alone that
    /// anything did.
    [[nodiscard]] const std::map<ItemId, std::vector<Carried>>& carried() const { return m_carried; }
    /// What is said of the state of an item before that moment.
    [[nodiscard]] StateWords wordsOf(const ItemId& item, Moment end);
    /// What its rows of items come to.
    [[nodiscard]] const Tally& tally() const { return m_tally; }

private:
    struct Working {
        std::int64_t item = 0;
        ItemFacts facts;
        Usage use;
        std::int64_t balloon = 0;
        std::vector<std::int64_t> carriers; ///< of any depth
        std::vector<Carried> carried;       ///< of any depth, until then and before
    };
    /// The item that rows are for, when read in order.
    class Walk;
    static constexpr int everyColumn = std::numeric_limits<int>::max();

    /// The item that a row is for, when read in order; counts the row.
    [[nodiscard]] Working* rowOf(Walk& walk, Statement& row, int columns = everyColumn);
    void readItems(CivilDate on, std::optional<std::int64_t> item);
    void readBalloon(std::int64_t balloon);
    void readStays(Moment end, std::optional<std::int64_t> item);
    void readCarriers(Moment end, std::optional<std::int64_t> item);
    void readKits(Moment end, std::optional<std::int64_t> item);
    void readDone(Moment end, std::optional<std::int64_t> item);
    void readLists(Moment end, std::optional<std::int64_t> item);
    void readEvents(Moment end, std::optional<std::int64_t> item);
    void readDefects(Moment end, std::optional<std::int64_t> item);
    void readOperations(CivilDate on);
    void readService(Moment end);
    [[nodiscard]] std::optional<OutOfService> takenOut(const Working& working, Moment end);
    void finishClock(Working& working, Moment end);
    template <class... Values>
    void run(Statement& statement, std::optional<std::int64_t> item, const Values&... values);

    Names& m_names;
    CountedUse m_use;
    BalloonFacts m_balloons;
    bool m_one;
    Statement m_items, m_stays, m_carriers, m_kits, m_done, m_lists, m_events, m_defects;
    ServiceReader m_service;
    ReleaseReader m_releases;
    std::vector<Working> m_working;
    std::map<ItemId, std::vector<Carried>> m_carried;
    Tally m_tally;
    std::vector<Account> m_accounts;
    std::unordered_set<std::int64_t> m_balloonsRead;
    bool m_serviceRead = false;
};

}

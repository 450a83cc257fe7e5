// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether what stands beside the journal is still what was written there, told at once: for each item and balloon, and
/// for all, the record keeps what their rows come to, and each transaction keeps that up. What an answer has read is
/// held against it. This finds rows that were changed, deleted or added round the program; which row, and whether the
/// journal itself is sound, `verify` tells. Flights stand in no tally but for their totals of today: what was flown by
/// an earlier day, which the clock of an item that came with an unknown figure needs too, `verify` alone proves.

#include "store/accounts/account_book.h"
#include "store/projection/projector.h"
#include "store/queries/adoption_reader.h"
#include "store/queries/fabric_reader.h"
#include "store/queries/facts_reader.h"
#include "store/queries/fitted_rows.h"
#include "store/queries/service_reader.h"

#include <map>

namespace crownring {

class Tallies {
public:
    Tallies(const Connection& connection, Names& names, FlightTotals& totals);

    /// @throws StoreError with StoreFault::NotIntact where what was read is not what was written
    void check(const Account& account);
    /// The same of what is about to be changed, lest a change be taken for ours.
    void check(const Touch& touch);
    /// After a transaction has changed them. @pre all is settled
    void settle(const std::set<Touch>& touched, const Moved& told = {});
    /// Of everything, from what the tables hold.
    void makeAnew();
    /// Checks everything that answers rest on, and that nothing is kept of what is not there. @throws StoreError
    void checkAll();
    /// @throws StoreError where a name is not what was written
    void proveNames() { m_names.proveAll(); }
    /// After a photograph was kept.
    void settlePictures();
    /// No photograph that was kept is gone, and none is there that nobody kept.
    [[nodiscard]] bool picturesAreWhole();

private:
    /// What the rows of a subject come to now.
    [[nodiscard]] std::vector<Account> read(const Touch& touch);
    [[nodiscard]] std::vector<Touch> everything();
    /// What is kept of what the journal gives alone, as the tables have it.
    [[nodiscard]] std::map<std::pair<Part, std::int64_t>, Tally> readTold();
    [[nodiscard]] Account pictures();
    [[nodiscard]] StoreError notIntact(const Account& account);
    void checkLastFlight(std::int64_t balloon);

    Names& m_names;
    FactsReader m_facts;
    FabricReader m_fabric;
    BalloonFacts m_balloons;
    FittedRows m_fitted;
    AdoptionReader m_adoptions;
    ServiceReader m_service;
    AccountBook m_book;
    Statement m_toldRows, m_amendmentRows, m_subjects, m_lastFlight, m_pictures;
};

}

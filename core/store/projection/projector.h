// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Keeps the projections equal to what a rebuild from the journal would make. Each live entry, as corrected, has its
/// rows in one place keyed by subject and stamp; `project` puts them there, `withdraw` takes the same rows away again.

#include "record/amendment.h"
#include "store/accounts/account.h"
#include "store/projection/item_projection.h"

#include <functional>
#include <set>

namespace crownring {

/// What a transaction changes of what answers rest on.
struct Touch {
    enum class Of { Item, Balloon, Adoptions, Service };
    Of of = Of::Item;
    std::int64_t subject = 0; ///< number of the item or balloon

    auto operator<=>(const Touch&) const = default;
};

class Projector {
public:
    Projector(const Connection& connection, Names& names);

    /// Also makes the name of what the entry brings into the record. @pre `entry` is no amendment
    /// @param written what it said before any amendment
    void project(const Entry& entry, const Entry& written);
    void project(const Entry& entry) { project(entry, entry); }
    void withdraw(const Entry& entry);
    /// The corrections of an entry that were left out, after its amendments changed.
    void noteIdle(const AmendmentTree& amended);
    /// Asks about an entry that cannot be read, until it is voided. Nothing else is projected of it.
    /// @param entry its id and day
    void noteUnread(const Entry& entry, bool voided);
    /// Is told of each before anything of it changes for the first time in a transaction; not while all is made anew.
    using BeforeTouch = std::function<void(const Touch& touch)>;
    void beforeTouch(BeforeTouch told) { m_beforeTouch = std::move(told); }
    /// Carries what changed through to clocks, stays and questions; to be called once before the transaction ends.
    /// @return all that changed since the last call
    std::set<Touch> settle();
    /// By what the journal moved what is told, by name and by sort, since the last call.
    [[nodiscard]] Moved takeTold() { return std::exchange(m_toldMoved, {}); }
    /// Empties every projection, and the names.
    void clear();
    /// The tables that are made from the journal, and can be made anew.
    [[nodiscard]] static std::span<const std::string_view> tables();
    /// After a transaction that was rolled back or left to others.
    void forget();

    [[nodiscard]] FlightTotals& totals() { return m_totals; }

private:
    struct Put;
    struct TakeAway;
    std::int64_t item(const ItemId& id);
    std::int64_t balloon(const Registration& registration);
    /// What an event happened to, as the table of occurrences has it.
    std::pair<int, std::int64_t> subject(const EventReported& event);
    /// An event on a balloon falls on each item of a kit that flew as it on that day, too, in whatever order they come:
    /// of one that took off before and was still aloft in it as well.
    void fallOnKits(const Entry& event, const EventReported& body, std::int64_t balloon, bool reported);
    void fallOnKit(std::int64_t item, std::int64_t balloon, const Entry& flight, Minutes aloft, bool flown);
    /// Puts it into the list of each thing that the entry is about, or takes it out.
    void note(const Entry& entry, bool told);
    void touchItemsUnder(const FlightTotals::Change& change);
    /// All that may have been on a balloon, under this registration or one before it.
    void touchItemsOf(std::int64_t balloon);

    /// What was ever a part of what is touched, of any depth: it shared its flights and what happened to it.
    void touchParts();
    void touch(Touch::Of of, std::int64_t subject = 0);
    /// On which it was by now, and those on which its fittings may put it.
    void touchBalloonsOf(std::int64_t item);
    /// Whose accomplishments stand under it, and what was inspected in it: what becomes of it is told of them.
    void touchItemsOf(const InspectionId& inspection);

    const Connection& m_connection;
    Names& m_names;
    FlightTotals m_totals;
    ItemProjection m_items;
    BeforeTouch m_beforeTouch;
    bool m_remaking = false; ///< nothing is there yet that could be told of
    std::set<Touch> m_touched;
    Moved m_toldMoved;
    std::set<std::int64_t> m_enteredBalloons;

    Statement m_putItem, m_dropItem;
    Statement m_putBalloon, m_dropBalloon;
    Statement m_putFitting, m_dropFitting;
    Statement m_putKitFlight, m_dropKitFlight;
    Statement m_putDone, m_dropDone;
    Statement m_putOccurrence, m_dropOccurrence, m_flownAs, m_putFallen, m_fallen, m_aboard;
    Statement m_putReading, m_dropReading;
    Statement m_putRepair, m_dropRepair;
    Statement m_putFabric, m_dropFabric, m_putClosing, m_dropClosing, m_putRevocation, m_dropRevocation;
    Statement m_putOpening, m_dropOpening, m_putApproval, m_dropApproval;
    Statement m_putTold, m_dropTold;
    Statement m_putMark, m_dropMark;
    Statement m_putAdoption, m_dropAdoption;
    Statement m_dropIdle, m_putIdle;
    Statement m_dropUnread, m_putUnread;
    Statement m_putService, m_dropService, m_putRenaming, m_dropRenaming, m_formerly, m_everOn, m_everPartOf;
    Statement m_under, m_concernedBy, m_mayBeOn;
};

}

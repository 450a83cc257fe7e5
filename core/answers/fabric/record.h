// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The tests of fabric that the record holds, in the form that the fabric room computes with: all envelopes whose
/// types' manuals bound the same quantity in the same test, since what ages alike is learnt of together.
///
/// A fabric set is the panels of one envelope that are of one lot and were put in at the same hours. Panels that an
/// envelope came with are of the lot that is stated for them (`FabricStated`), or of one that nobody knows; a panel
/// that was repaired begins a set of its own, at zero hours, of the repair's lot. Lots are of a cloth; where no cloth
/// is named, that of a type is taken to be its own.
///
/// Left out are tests of another series than the limit's, those from before the envelope was entered (their hours are
/// not known), and those that look impossible and that nobody stands by. A test without a row counts at the top of its
/// set. Over-temperatures count as dose where both the heat and its length were reported.

#include "answers/fabric_channel.h"
#include "fabric/likelihood/fleet.h"
#include "fabric/outlook/pace.h"
#include "registry/books.h"

#include <string>
#include <vector>

namespace crownring {

struct FollowedEnvelope {
    ItemId id;
    std::string type;
    Figure limit;              ///< the least that passes, or the proof load; the most
    std::string source;        ///< of the limit
    TestConditions conditions; ///< that the limit is stated for
    int gores = 0;             ///< 0 where its type does not say
    int rows = 0;
    Hours hours; ///< flown on the day asked
    std::size_t firstSet = 0;
    std::size_t setCount = 0;
};

struct FollowedSet {
    std::size_t envelope = 0;
    std::size_t lot = 0;
    std::optional<PanelPlace> patch;  ///< of a panel that was repaired; nothing for what the envelope came with
    std::optional<FabricStated> came; ///< as it was stated; nothing where its lot is not known
    Hours fittedAt;                   ///< of the envelope when it was put in
    PlaceUse use;                     ///< of its highest place, on the day asked
};

struct FollowedReading {
    EntryId entry;
    CivilDate on;
    PanelPlace place;
    Figure value;
    bool held = false; ///< at least this
    Judgement judgement = Judgement::NoLimit;
};

struct LeftOut {
    std::size_t envelope = 0;
    EntryId entry;
    Phrase why;
};

struct FabricRecord {
    FabricChannel channel;
    CivilDate on;
    std::vector<FollowedEnvelope> envelopes;
    std::vector<FollowedSet> sets;
    std::vector<std::string> lots;    ///< empty where not known
    std::vector<std::string> fabrics; ///< the cloth, or the type where it is not named
    FabricFleet fleet;
    std::vector<FollowedReading> readings; ///< in the order of `fleet.readings`
    std::vector<LeftOut> leftOut;

    /// Past the last one for an envelope that is not followed.
    [[nodiscard]] std::size_t numberOf(const ItemId& envelope) const;
    /// Of the figure that falls.
    [[nodiscard]] double lnLimit(std::size_t envelope) const;
    /// The set that a panel of an envelope is of now; the set of all else where no such panel is told apart.
    [[nodiscard]] std::size_t setAt(std::size_t envelope, const PanelPlace& place) const;
    /// A panel that was replaced twice is there once.
    [[nodiscard]] bool isThere(std::size_t set) const;
};

/// UnknownReference where no envelope has such a limit, MissingKey where an envelope's hours are not known.
[[nodiscard]] Result<FabricRecord> fabricRecord(Books& books, const FabricChannel& channel, CivilDate on);

/// The same record without the readings of that day and later.
[[nodiscard]] FabricRecord before(const FabricRecord& record, CivilDate day);

/// What an item flew in the last two years, by month of the year.
[[nodiscard]] Result<YearlyPace> paceOfItem(Books& books, const ItemId& item, CivilDate on);

}

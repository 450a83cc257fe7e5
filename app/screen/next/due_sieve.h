// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which rows of a sheet a place shows, in which order, and how they spread over the horizon. Plain values in and out;
/// runs off the GUI thread.

#include "screen/desk/fleet.h"
#include "screen/desk/mine.h"
#include "screen/next/group_model.h"
#include "screen/next/horizon.h"

#include <QString>

#include <array>
#include <optional>
#include <span>

namespace crownring::screen {

enum class DueOrder { Worst, Soonest };

struct DueSieve {
    std::optional<Registration> balloon;
    std::optional<ItemKind> kind;
    std::optional<Reckoned> reckoned;
    std::optional<Place> bin;
    int lastBin = -1;               ///< with a bin of the calendar: up to this one; before it: that one alone
    std::optional<GroupKey> within; ///< only what is of this group
    Grouping grouping = Grouping::None;
    QString words; ///< each must occur in registration, item, serial, title or source
    DueOrder order = DueOrder::Worst;
    Mine mine{};

    /// A range of the calendar that holds today: its last day, where it ends with a week.
    [[nodiscard]] std::optional<CivilDate> upTo(CivilDate on) const;
};

/// How the rows spread over sorts and over the horizon.
struct Spread {
    /// Of all rows that pass everything but the sort and the bin.
    Tally bySort{};
    /// Of all rows that pass everything but the bin.
    std::array<Tally, calendarBins> calendar{};
    std::array<Tally, useBins> use{};
    Tally offCalendar{}; ///< as the two above, of what stands in no bin of the lane
    Tally offUse{};
    Tally leftOut{}; ///< of the rows that pass everything but the bin and do not pass that
    bool operator==(const Spread&) const = default;
};

struct Sifted {
    DueRows rows;
    Spread spread;
    std::vector<GroupLine> groups; ///< of the rows; none where they are not grouped, or of one group alone
};

[[nodiscard]] Sifted sift(const FleetSheet& sheet, const DueSieve& sieve);
/// Of the rows of some items; added to the spread, or taken from it with `times` -1. In no order.
[[nodiscard]] DueRows siftItems(const FleetSheet& sheet, std::span<const ItemId> items, const DueSieve& sieve,
                                Spread& spread, int times);
/// The order in which `sift` leaves rows.
[[nodiscard]] bool comesFirst(const DueRow& a, const DueRow& b, DueOrder order);

}

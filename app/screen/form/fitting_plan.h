// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A fitting or a removal among the flights of its day: when it takes effect, and what is written with it.

#include "record/entry.h"
#include "screen/desk/fleet.h"
#include "screen/form/flight_kit.h"

#include <QCoreApplication>

namespace crownring::screen {

/// What the record knows of a day that something is fitted or removed on.
struct FittingDay {
    int flights = 0; ///< of the balloon, on that day
    int later = 0;   ///< of the balloon, from that day to today, that day's among them
    bool operator==(const FittingDay&) const = default;
};

class FittingPlan {
    Q_DECLARE_TR_FUNCTIONS(FittingPlan)

public:
    /// "00:00Z" before the day's flights, "23:59Z" after them; else the time that is written.
    [[nodiscard]] static std::optional<TimeOfDay> timeOf(const QString& when, const QString& time);
    /// What is written: what is fitted elsewhere is removed there first.
    [[nodiscard]] static std::vector<FlightKit::Move> movesOf(const FleetSheet& sheet, const Entry& entry);
    /// In words.
    [[nodiscard]] static QString follows(const FleetSheet& sheet, const Registration& balloon, const ItemId& item,
                                         bool fitted, const FittingDay& day);
    /// Asked back: a second basket beside one that is fitted; empty when there is nothing to ask.
    [[nodiscard]] static QString question(const FleetSheet& sheet, const Registration& balloon, const ItemId& item);
};

}

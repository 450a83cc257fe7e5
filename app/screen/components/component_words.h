// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is known of a component, in words.

#include "answers/directives/fitted.h"
#include "answers/parts/pool.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace crownring::screen {

class ComponentWords {
    Q_DECLARE_TR_FUNCTIONS(ComponentWords)

public:
    /// The balloon, what it is a part of, where it was sent; else it lies in the pool.
    [[nodiscard]] static QString where(const ItemFacts& facts);
    /// Serial number, type, lot, when it was filled.
    [[nodiscard]] static QString about(const ItemFacts& facts, const Component& component);
    [[nodiscard]] static QString dates(const PoolItem& item);
    [[nodiscard]] static QString state(const PoolItem& item);
    /// "EASA Form 1 QE-145-2211"
    /// Time since new, and since the last overhaul where there was one.
    [[nodiscard]] static QString times(const ItemFacts& facts);
    [[nodiscard]] static QString release(const PartRelease& release);
    /// Material, specification, water capacity, tare; what is not stamped is said.
    [[nodiscard]] static QString vessel(const VesselStamped& vessel);
    /// "filled 2026-11-02 to 80 %"
    [[nodiscard]] static QString filled(const Component& component);
    /// A list of parts, a part a line, those inside others set in.
    [[nodiscard]] static QStringList listed(const FittedThing& thing);
};

}

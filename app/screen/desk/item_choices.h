// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Items to choose from, told so that any part of a name, serial number, type or place finds them.

#include "screen/desk/fleet.h"
#include "screen/lists/choice_model.h"

#include <QCoreApplication>

namespace crownring::screen {

class ItemChoices {
    Q_DECLARE_TR_FUNCTIONS(ItemChoices)

public:
    /// "Basket BSK-235", with its serial number, type and place, and its standing.
    [[nodiscard]] static Choice of(const FleetSheet& sheet, const ItemFacts& item);
    /// "Basket BSK-235"
    [[nodiscard]] static QString name(const ItemFacts& item);
};

}

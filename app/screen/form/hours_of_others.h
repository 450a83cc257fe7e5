// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A requirement that counts hours, done on several items at once: of whom the record does not know what the clock
/// showed on that day, its hours are asked for; without them its limit stays unproven.

#include "screen/desk/fleet.h"
#include "screen/form/form_fields.h"

#include <QCoreApplication>

namespace crownring::screen {

class HoursOfOthers {
    Q_DECLARE_TR_FUNCTIONS(HoursOfOthers)

public:
    /// Of the items that are chosen besides the one; none where hours do not matter.
    [[nodiscard]] static std::vector<ItemId> unknown(const FormFields& form, const FleetSheet& sheet);
    /// Asks for the hours of these and of no other, and asks back about those that are left empty.
    static void ask(FormFields& form, const std::vector<ItemId>& items);
    /// What was written of one; null where nothing was.
    [[nodiscard]] static const FormField* of(const FormFields& form, const std::string& item);
};

}

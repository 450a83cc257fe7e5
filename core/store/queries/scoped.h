// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Statements that are run for one subject or for all, and what several of them read.

#include "registry/item_facts.h"
#include "store/connection/statement.h"

#include <string>

namespace crownring {

/// @param one for one subject, whose number is the last value
/// @param text as far as its conditions
/// @param subject the column of its number
inline std::string scoped(bool one, std::string text, const char* subject, const char* after) {
    if (one)
        text += std::string(" AND ") + subject + " = ?";
    return text + after;
}

/// Reads the columns at, entry_id, event, celsius, lasted.
inline Occurrence occurrenceFrom(Statement& row) {
    Occurrence event;
    event.stamp.at = row.read<Moment>();
    event.stamp.id = row.read<EntryId>();
    event.event = row.read<std::string>();
    event.hottest = row.read<std::optional<Celsius>>();
    event.lasted = row.read<std::optional<Minutes>>();
    return event;
}

}

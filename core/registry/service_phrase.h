// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why something is out of service.

#include "problem/argument.h"

namespace crownring {

/// %1: since which day
enum class ServicePhrase : std::uint8_t {
    LaidUp,
    Sold,
    SoldTo, ///< %2: to whom
    Scrapped,
    Lost,
    Renamed, ///< %2: the registration since
    Away,
    AwayTo, ///< %2: to whom
    Unserviceable,
    Quarantined,
    Condemned,
    Overheated,    ///< %2: how hot it was
    With,          ///< %1: the balloon, or the item that it is a part of, %2: why that is out of service
    TakenOut,      ///< %2: the item that it was a part of, which is kept apart since then
    TakenOutHot,   ///< the same, which was overheated then
    TakenOutBurnt, ///< the same, which was in a fire then
};

}

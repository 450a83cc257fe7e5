// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why nothing is written under a name.

#include "problem/fault.h"

namespace crownring {

enum class WritingFault : std::uint8_t {
    NamesNoFile,
    IsARecord,
    Exists,
    ReadOnly,
    IsADatabase,
    BesideADatabase,
    LostLink,
    NoPlainFile,
    NotLookedAt,
    NotWritten, ///< %1: why not
    TheRecordItself,
    OpenElsewhere,
    LaterVersion,
    HoldsOtherEntries,
    HoldsOtherPictures,
};
[[nodiscard]] FaultRow rowOf(WritingFault fault);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Rows of the due list that the record itself makes: what was found, and what was read.

#include "problem/argument.h"

namespace crownring {

enum class DuePhrase : std::uint8_t {
    Defect,   ///< %1: what was found
    FoundOn,  ///< %1: the day
    Deferred, ///< %1: why
    DefectNote,
    DefectsFound,
    TheRecordItself,
    DefectsAreNoProgramme,
    Fabric,     ///< %1: how it is tested
    FabricNote, ///< %1: what was read, %2: the day
    ReadingsOfFabric,
    ReadingsAreNoProgramme,
};

}

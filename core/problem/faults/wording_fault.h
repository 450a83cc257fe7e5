// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands in the way of adopting a text, of confirming it or a checklist, and of taking that back.

#include "problem/fault.h"

namespace crownring {

enum class WordingFault : std::uint8_t {
    NoSuchText,        ///< %1: the id, %2: those that there are
    NoSuchPlace,       ///< %1: the place, %2: those that there are
    PlaceMissing,      ///< %1: the text, %2: the place, or those of which one must be there
    OtherWording,      ///< %1: the text, %2: the revision
    NotAdopted,        ///< %1: the text, %2: the day
    AnotherDigest,     ///< %1: the text, %2: its revision, %3: the digest
    NoSuchChecklist,   ///< %1: the checklist, %2: its revision
    MayNotConfirm,     ///< %1: why
    AnotherLicence,    ///< %1: the licence that the record has
    NotCorrected,      ///< %1: the text
    TakenBackByNobody, ///< %1: the text
    NoCapacity,        ///< %1: as written
    Hidden,            ///< %1: the code point, %2: the line, %3: the place in it
};
[[nodiscard]] FaultRow rowOf(WordingFault fault);

}

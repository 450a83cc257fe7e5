// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Checklists: documents, those that a record keeps, those of the shelf.

#include "problem/fault.h"

namespace crownring {

enum class ChecklistFault : std::uint8_t {
    TooDeep,
    NotAnObject,
    KeyTwice,
    ValueNotAllowed, ///< %1: what may stand there
    KeyMissing,      ///< %1: what may stand there
    KeyNotAllowed,   ///< %1: what may stand there
    NotOfThisKind,
    CannotBeChecked, ///< %1: what the checker says
    VisitWithoutSource,
    OwnersTaskWithoutRule,
    RuleWithoutOwnersTask,
    ReadingOfNothing,
    AskedTwice,
    PlacedOnNoEnvelope,
    SectionTwice,
    LineTwice, ///< %1: the id
    NoSuchSection,
    OutOfOrder,
    LineOfTheOther, ///< %1: the id, %2: the checklist that has it
    KeptUnreadable, ///< %1: what the reader says
    NotOnTheShelf,  ///< %1: its name
};
[[nodiscard]] FaultRow rowOf(ChecklistFault fault);

}

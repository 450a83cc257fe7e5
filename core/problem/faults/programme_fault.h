// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Programme documents, and their adoption.

#include "problem/fault.h"

namespace crownring {

enum class ProgrammeFault : std::uint8_t {
    TooDeep,
    NotAnObject,
    KeyTwice,
    ValueNotAllowed, ///< %1: what may stand there
    KeyMissing,      ///< %1: what may stand there
    KeyNotAllowed,   ///< %1: what may stand there
    NotOfThisKind,
    CannotBeChecked, ///< %1: what the checker says
    MethodWithoutMonths,
    KeptWithoutWindow,
    NeverDue,
    WithItself,
    WithAndLast,
    EmptyRange,
    RequirementTwice, ///< %1: the id
    Unknown,          ///< %1: its name
    NoText,
    AnotherProgramme, ///< %1: the name in the document
    AnotherDigest,
    EveryBalloon,
    TwoRegimes,       ///< %1: whom both bind, %2, %3: the programmes
    DigestNotAmended, ///< %1: that of the document as it now stands
};
[[nodiscard]] FaultRow rowOf(ProgrammeFault fault);

}

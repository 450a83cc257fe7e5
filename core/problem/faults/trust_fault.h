// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is wrong with a code of the signatory's own, or with what is proven by one.

#include "problem/fault.h"

namespace crownring {

enum class TrustFault : std::uint8_t {
    CodeTooShort,       ///< %1: the fewest characters
    WrongCode,          ///< %1: the person
    NoCodeYet,          ///< %1: the person
    CodeSetAlready,     ///< %1: the person, %2: the day
    CodeBeforeTheOther, ///< %1: the day
    CodeIsFixed,        ///< %1: the person
    SetterHasNoCode,    ///< %1: the person
    SetByAnotherUnsaid, ///< %1: the person
    ProofMissing,       ///< %1: the person, %2: the day
    ProofByAnotherKey,  ///< %1: the person
    ProofFails,         ///< %1: the person
    ProofOfNothing,
    ProofOfNoCode, ///< %1: the person
    ProofWithoutSeal,
    NotAKey,
    LooksLikeAnother, ///< %1: the person as written, %2: the one in the record
};
[[nodiscard]] FaultRow rowOf(TrustFault fault);

}

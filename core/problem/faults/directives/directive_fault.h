// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is wrong with a directive, or with what is answered to one.

#include "problem/fault.h"

namespace crownring {

enum class DirectiveFault : std::uint8_t {
    NoDeadline,
    OfItemOrBalloon, ///< neither is named, or both
    SaidOfTheOther,  ///< a key that goes with the other answer
    ClockOfBalloon,
    PartsTooDeep, ///< %1: the most levels
    PartTwice,    ///< %1: the part, %2: its serial number
    OtherIssuer,  ///< %1: the directive, %2: who issued it
    IssuedTwice,  ///< %1: the directive, %2: the revision
    RangeReversed,
    DueBeforeEffective,  ///< %1: the last good day, %2: the effective day
    NoSuchRevision,      ///< %1: the directive, %2: the revision
    RecordSaysBound,     ///< %1: the directive, %2: the item
    NoTerminatingAction, ///< %1: the directive
    ByNobody,
    MayNotComply,  ///< %1: why
    NothingShows,  ///< neither a visit nor a capacity nor a paper
    NotOfTheVisit, ///< %1: the item or balloon, %2: the visit
    NotByRequirement,
    BindsNothing,        ///< %1: the directive, %2: the balloon
    SupersedesInARing,   ///< %1: the directive, %2: the one that it supersedes
    SupersedesAnothers,  ///< %1: the one that it supersedes, %2: who issued that
    SupersedesMandatory, ///< %1: the one that it supersedes
    AnswerUnsaid,        ///< %1: the directive
    ExcusedBeforeIssue,  ///< %1: the directive, %2: the first day
    NotHisLicence,       ///< %1: the licence, %2: whose it would be
    BeforeItWasMade,     ///< %1: the item, %2: when that was
};
[[nodiscard]] FaultRow rowOf(DirectiveFault fault);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands in the way of fitting a component, of bringing it back, of filling a cylinder, or of a batch of them.

#include "problem/fault.h"

namespace crownring {

enum class PartFault : std::uint8_t {
    CarriesItself,  ///< %1: the item, %2: what it would be a part of
    KeptApart,      ///< %1: the item, %2: since when, and as what
    StillFitted,    ///< %1: the item, %2: what it is fitted to
    Condemned,      ///< %1: the item
    NotReleased,    ///< %1: the item
    NotReleasedBy,  ///< %1: the item, %2: the visit
    BackSince,      ///< %1: the item, %2: the day on which it came back without a release
    TakenBack,      ///< %1: the item
    NoCylinder,     ///< %1: the item
    FilledOut,      ///< %1: the item, %2: what it is out of service for
    FilledHot,      ///< %1: the item, %2: on which day it was overheated
    FilledGrounded, ///< %1: the item, %2: what stands against flying it
    TestPast,       ///< %1: the item, %2: the test, %3: its last good day
    TestNotShown,   ///< %1: the item, %2: the test
    NothingReturned,
    NotAway,          ///< %1: the item
    TestedBeforeSent, ///< %1: the item, %2: the day of the test, %3: on which it was sent
    TestedAfterBack,  ///< %1: the day of the test, %2: of the return
    NotFitted,        ///< %1: the item, %2: the day
    NamedTwice,       ///< %1: the item
    ReplacesItself,   ///< %1: the item
    FittedElsewhere,  ///< %1: the item, %2: what it is fitted to
    OtherKind,        ///< %1: what goes on, %2: its kind, %3: what comes off, %4: its kind
    StampAmbiguous,   ///< %1: as stamped, %2, %3: what it may mean
    StampOfOneMonth,  ///< %1: as stamped, %2: what it means
    TagNotFound,      ///< no code is legible on the picture
    TagOfAnother,     ///< %1: what the code says
    TagsOfSeveral,    ///< %1: the items that they name
    TagOfUnknown,     ///< %1: the item that it names
};
[[nodiscard]] FaultRow rowOf(PartFault fault);

}

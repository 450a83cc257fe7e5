// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Entries, and the JSON that they are written in.

#include "problem/fault.h"

namespace crownring {

enum class EntryFault : std::uint8_t {
    NotJson,
    NestedTooDeep, ///< %1: the most levels
    KeyTwice,      ///< %1: the key
    NotAnEntry,    ///< not one JSON object
    UnknownKind,   ///< %1: the kind as written
    UnknownKey,    ///< %1: of which kind of entry, or inner object
    KeyMissing,
    NotAText,
    NullCharacter,
    Blank,
    TooLong, ///< %1: the most characters
    NotABoolean,
    NotANumber,      ///< or beyond what the key may be
    NotAWholeNumber, ///< %1, %2: the least and the most
    NotAnObject,
    NotAListOfObjects,
    NotAList,
    EmptyList,
    NamedTwice,         ///< %1: the name
    NotAName,           ///< %1: the most characters
    NotLegible,         ///< %1: the name
    NearlyATypeKnown,   ///< %1: as written, %2: the type that is known
    NearlyAnEventKnown, ///< %1: as written, %2: the event that is known
    NotASlug,
    NoWordForThis, ///< %1: as written; %2: the words that may stand here
    NoKindOfItem,  ///< %1: as written; %2: the kinds
    ClockWithoutFigure,
    OnlyTrue,
    BoundNotOnce,
    NoDigestOfADocument,
    NotHexDigits, ///< %1: how many
    NotADigest,
    EventOfNothing, ///< or of two things
    EventOfAnItem,  ///< %1: the event, %2: the kind of item that it happens to
    NotTheEvent,    ///< %1: the entry that is named and tells of no event, or of none of this balloon or item
    ChangesNothing,
    NotACorrection, ///< not one JSON object
    KeyIsFixed,
    NotATimeWithoutZone,
    NoDirection,
    NeitherReadNorHeld, ///< or both
    StepNotAbove,
    OnTwoItems, ///< on a basket and on an envelope
    DeferredWithoutEnd,
    LimitWithoutBound,
    LeastAboveMost,
    FirstAfterLast,
    SealOverNothing,
    NothingInspected,
    NobodySigns,
    WhyOfWhatApplies, ///< a reason why a line does not apply, where it does
    PageOfNotAsked,   ///< missing, or of another reason
    OtherInWords,     ///< another reason that no words give
    MajorWithoutApproval,
    NothingOutstanding,
    RecommendedUntil, ///< an expiry of what is no certificate
    ExpiresOnNoPaper,
    BuyerWithoutSale,      ///< to whom, of what is not sold
    TextOrChecklist,       ///< neither is named, or both
    SameRegistration,      ///< a balloon is renamed to what it is called
    OnBalloonOrItem,       ///< neither a balloon nor an item is named, or both
    ReleasedIntoNoService, ///< a release of what does not come back by it
    PlannedForNothing,     ///< or for a balloon and an item
    PaceNotOnce,           ///< neither times the usual nor flights a week, or both
    NotUtf8,
    NotReadAgain, ///< what would be written says something else when it is read
};
[[nodiscard]] FaultRow rowOf(EntryFault fault);

}

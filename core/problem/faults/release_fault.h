// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands in the way of closing an inspection, or of putting off a defect.

#include "problem/fault.h"

namespace crownring {

enum class ReleaseFault : std::uint8_t {
    ClosedAlready,
    ClosedByAnother,
    ClosedSince,   ///< %1: the inspection, %2: the day
    BeforeOpening, ///< %1: the day of the opening
    NothingLookedAt,
    NothingLookedAtOn,   ///< %1: the item
    OutOfService,        ///< %1: the item, %2: what it is out of service for
    FittedElsewhere,     ///< %1: the item, %2: the balloon that it is on, %3: the one that is certified
    ChecklistCut,        ///< %1: its title, %2: its revision, %3: how many lines are missing
    NotInspected,        ///< %1: the requirement, %2: the item
    NoSuchPlace,         ///< %1: the reading, %2: the type
    SaidAfter,           ///< %1: the day of what was said last
    Unsupported,         ///< %1: the inspection, %2: why
    LineOpen,            ///< %1: the line
    LeftOutstanding,     ///< %1: the line
    WhyNotSaid,          ///< %1: the line
    NothingRead,         ///< %1: the line
    GoesWithIt,          ///< %1: what goes with the inspection, %2: the item
    TooFewReadings,      ///< %1: of what, %2, %3: how many were taken and are asked for
    NoTester,            ///< %1: the line or the reading
    TesterNotCalibrated, ///< %1: the line or the reading, %2: the tester, %3: the day
    TesterMeasuresOther, ///< %1: the reading, %2: the tester, %3: what that measures
    TesterBeyondRange,   ///< %1: the reading, %2: the tester
    Doubtful,            ///< %1: the reading, %2: the question
    Fails,               ///< %1: the reading, %2: why
    DecidesNothing,      ///< %1: the reading, %2: why
    NoLimitStated,       ///< %1: the reading, %2: why
    DefectBarsFlight,    ///< %1: what was found, %2: the item
    NothingToList,
    NoListOfWork,       ///< %1: the visit
    NotIndependent,     ///< %1: the line, %2: who did the work and looked at it
    MaterialNotPutDown, ///< %1: the line, %2: the item that a part or material went into
    ComponentOfBalloon, ///< %1: the balloon
    ComponentFitted,    ///< %1: the item, %2: the balloon
    WorkNotDescribed,
    WorkNotDescribedOn,       ///< %1: the item
    GradeNotSaid,             ///< %1: the work, %2: the item
    NoOwnersTask,             ///< %1: the work, %2: the item
    NotOfTheTask,             ///< %1: the work, %2: the item, %3: the task
    OwnersTaskOffTheAircraft, ///< %1: the item
    NothingOutstanding,
    NoLimitation,
    AbandonedAfterRelease,
    Excepted,            ///< %1: what stands against it
    OtherText,           ///< %1: of what, %2: what the record composes
    NotAccomplished,     ///< %1: the requirement, %2: the item, %3: the inspection
    NotWithItsSignature, ///< %1: the inspection
    FoundBefore,         ///< %1: the defect, %2: the item, %3: the day
    RevokeInstead,       ///< %1: the inspection
    NoReleaseToRevoke,   ///< %1: the inspection
    NobodyRevokes,
    CorrectedUnsaid,       ///< %1: the inspection
    SaidBefore,            ///< %1: the line or the reading, %2: the day of the opening
    NamedBefore,           ///< %1: the inspection
    StaysRevoked,          ///< %1: the inspection
    MayNotSign,            ///< %1: why
    MayNotDefer,           ///< %1: why
    MayNotGradeDown,       ///< %1: why
    GradedDownUnsaid,      ///< %1: the defect
    ReadingUnsaid,         ///< %1: the reading that failed
    GroundUnsaid,          ///< %1: the event, or the type whose manual states the limit
    ClearingRestsOnIt,     ///< %1: the defect, %2: the reading
    DeferralUnsaid,        ///< %1: the defect
    LinesLeftOut,          ///< %1: the requirement, %2: the item, %3: title of a line, %4: how many more
    NobodyDefers,          ///< %1: why
    MayNotClear,           ///< %1: the defect, %2: why
    ClearedBefore,         ///< %1: the defect, %2: the day on which it was found
    NotReadAgain,          ///< %1: the defect, %2: the reading that found it
    RepairElsewhere,       ///< %1: the defect, %2: the reading that found it
    TestNotRead,           ///< %1: the test, %2: the item, %3: the inspection whose list it is on
    RegistrationInUse,     ///< %1: the registration
    RenamedAndOut,         ///< %1: the registration, %2: what it is out of service for, %3: what it flies as
    FoundWithClearing,     ///< %1: the defect, %2: the day
    FoundElsewhere,        ///< %1: the defect, %2: the item that it was found on
    ListAnswered,          ///< %1: the inspection
    ApprovedBefore,        ///< %1: the day of the list
    DefectStands,          ///< %1: what was found, %2: the item
    ListedStands,          ///< %1: what stands against flight, %2: the item
    TestStands,            ///< %1: the test, %2: the item
    LeftOut,               ///< %1: the requirement, %2: the item, %3: the inspection
    NotGiven,              ///< %1: what
    WordingNotAdopted,     ///< %1: the text, %2: its revision
    WordingNotConfirmed,   ///< %1: the text, %2: its revision
    ChecklistNotConfirmed, ///< %1: the checklist, %2: its revision
    PlaceUnfilled,         ///< %1: the text, %2: the place
    NoSuchLine,            ///< %1: the line, %2: the nearest that there is
    DirectiveOpen,         ///< %1: the line, %2: the directives, each with its item
    NotFlown,              ///< %1: the line, %2: the balloon
    EntryUnread,           ///< %1: its id, %2: which it is and why
};
[[nodiscard]] FaultRow rowOf(ReleaseFault fault);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on the papers of an inspection: titles, labels, sentences.

#include "problem/argument.h"

namespace crownring {

enum class SheetPhrase : std::uint8_t {
    Draft,     ///< %1: a title
    DraftNote, ///< %1: the day
    PapersOf,  ///< %1: the inspection
    SignedInTheRecord,
    ToBeSigned,
    Name,
    ActingAs,
    LicenceNumber,
    Date,
    Signature,
    Measures,
    MeasuresNotSaid,
    MeasuresUpTo,   ///< %1: what it measures, %2: the greatest figure
    MeasuresWithin, ///< %1: what it measures, %2, %3: the least and the greatest figure
    Gore,           ///< %1: its number
    Row,            ///< %1: its number
    Step,           ///< %1, %2: where it begins and ends
    Jaws,           ///< %1: their width
    Abandoned,
    WorkOnItems,
    ReleaseToService,
    WithoutRelease,
    ApprovedSince,
    ReturnToService,
    NoReturnToService,
    OpenDefects,
    OpenDefect, ///< %1: the item, %2: what was found, %3: how grave it is
    SealOver,   ///< %1: how many entries, %2: the digest
    CorrectedSinceSee,
    LogbookEntry,
    NotSigned,
    TotalTime,
    TimeInService,
    HighestTemperature,
    NotRead,
    DiscrepancyList,
    DiscrepancyNote, ///< %1: the day
    Number,
    Item,
    Discrepancy,
    Severity,
    State,
    NothingOpen,
    Report,
    WorkReport, ///< of a visit that is no inspection
    Visit,
    Opened,
    Closed,
    NotYet,
    Outcome,
    NoneYet,
    OutcomeReleased,
    OutcomeSigned, ///< of items on no balloon
    OutcomeDiscrepancies,
    OutcomeAbandoned,
    OutcomeIncomplete,
    Checklist,
    NoChecklist,
    Revision, ///< %1: a title, %2: its revision
    Inspectors,
    ToBeDone,
    WorkDone,
    WorkNotDone,
    NotDone,
    AnsweredSince, ///< %1: how it stood when it was signed
    Items,
    Kind,
    Type,
    SerialNumber,
    NotRecorded,
    OtherLines,
    OnItem,      ///< %1: a section, %2: the item
    WithTester,  ///< %1: the tester
    Photographs, ///< %1: how many
    CorrectionsNote,
    CorrectedSince,
    RepairOrPart,
    WhereSizeSerials,
    LotOrDocument,
    By,
    OffAndOn, ///< %1, %2: the serial numbers that came off and went on
    NotStated,
    RepairsAndParts,
    Defect,
    Defects,
    WhatBecameOfIt,
    Readings,
    Testers,
    QuantityAndTest,
    Where,
    Reading,
    Limit,
    Result,
    Tester,
    What,
    CalibratedUntil,
    NoCalibration,
    NotCalibrated, ///< %1: the tester
    HeldNote,
    Passes,
    Fails,         ///< how far, the two columns before say
    Undecided,     ///< %1: why
    NotComparable, ///< %1: why
    NoLimit,
    BarsFlight,
    Grounding,
    NotFitted,
    NotAsked,          ///< %1: the page
    Withdrawn,         ///< %1: who, on which day, %2: why
    ApprovalWithdrawn, ///< %1: who, on which day, %2: why
    ReturnApproved,    ///< %1: who, on which day, %2: the licence, %3: what was signed
    ListPending,
    NotSupported,
    Minor,
    IsOpen,
    IsDeferred, ///< %1: the reason
    AgreedBy,   ///< %1: a deferral, %2: the person
    UntilDay,   ///< %1: a deferral, %2: the day
    UntilClock, ///< %1: a deferral, %2: a figure of the clock
    IsCleared,  ///< %1: how, %2: by whom
    Map,
    MapCaption,      ///< %1: the envelope, %2: what was read
    MapUnit,         ///< %1: what was read, %2: its unit
    MapUnitAndLimit, ///< %1: what was read, %2: its unit, %3: the limit
    MapOrientation,
    MapSizeUnknown,
    NoReadingAtAPlace,
    Entry,
    FirstWritten,
    SaysNow,
    Nothing,
    GradedDown,   ///< %1: what has become of it, %2: by whom, %3: why
    GradedDownBy, ///< %1: what has become of it, %2: by whom
    IsVoided,     ///< %1: by whom and when, %2: why
    TakenBackThere,
    Voided,
    TestAndLimit, ///< %1: the test, %2: the limit
    OtherClauses,
    CopyOf,       ///< %1: the day, %2: the signatory
    CopyUnsigned, ///< %1: who closed it, and the day
    NoSeal,
    EarlierRelease, ///< %1: who, on which day, %2: the limitation, %3: what was outstanding
    EndedSince,     ///< %1: the day
    IncompleteRelease,
    NoIncompleteRelease,
    ComponentCertificate,
    ComponentReturn,
    ComponentsNotReleased,
    NoFormOfAuthority,
    LabelSheet,
    LabelReleased,
    LabelDraft,
    LabelWithdrawn,
    LabelUnsupported,
    LabelNotReleased,
    LabelRecordOnly,
    LabelNote,
    WorkInBrief,
    Limits,
    SignedBy,
    OrderNumber,
    OwnerOf,
    OperatorOf,
    WorkPerformed,
    WorkOf,
    Data,
    DataUsed,
    GradeOf,
    Form,
    PerformedBy,
    Placard,
    NoPlacard,
    DeferredBy,
    DeferredItems,
    NothingUndeferred,
    Unairworthy,
    NotCoveredShort,
    DeferredShort,
    OnAll,
    ReadAtNoPlace,
    ReadBy, ///< %1: a test, %2: by whom
    AllBy,  ///< %1: a test, %2: the equipment, %3: by whom
    ByWhom,
    Clauses,
    ClausesFromMemory,
};

}

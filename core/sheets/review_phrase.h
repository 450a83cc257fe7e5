// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on the papers of an airworthiness review: its own, and the status of directives and
/// of events.

#include "problem/argument.h"

namespace crownring {

enum class ReviewPhrase : std::uint8_t {
    AirworthinessReview,
    ReviewExtended,
    ReviewRecommended,
    ReviewedEnvelope,
    ReviewForm,
    CertificateNumber,
    IssuedOn,
    PrintedExpiry,
    ReviewedDuring,
    ReviewFindings,
    NoCertificateItself, ///< %1: the form
    ReviewSignature,
    Reviewer,
    ReviewingAs,
    ReviewedUnder,
    NotSupportedFor, ///< %1: why
    DirectiveStatus,
    StatusOn, ///< %1: the balloon, %2: the day
    NoDirectives,
    Directive,
    DirectiveItem,
    DirectiveState,
    DirectiveMethod,
    DirectiveDone,
    DirectiveNext,
    DirectiveNumber,     ///< %1: the directive, %2: its revision, %3: its effective day, %4: who issued it
    DirectiveAdvised,    ///< %1: the same
    ByOtherMeans,        ///< %1: the method, %2: the document
    StatusNotApplicable, ///< %1: why
    StatusUnproven,      ///< %1: why
    StatusOverdue,
    StatusAtOnce,
    StatusClosed,
    StatusSuperseded,
    StatusUpcoming,
    StatusOpen,
    StatusRests,
    WhatHappened,
    WhatItMadeDue,
    MadeDue, ///< %1: the work, item by item
    MadeNothingDue,
    EventStatus,
    EventStatusOf, ///< %1: the balloon, %2, %3: the first and the last day
    NoEvents,
    EventOpen,
    EventDone,        ///< %1: the day
    EventReportUntil, ///< %1: the day, %2: the time, UTC
    ReportedTo,
    EventStatusRests,
};

}

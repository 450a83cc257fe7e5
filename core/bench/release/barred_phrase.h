// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why somebody may not sign, or not put off a defect. %1 is the person where not said otherwise.

#include "problem/argument.h"

namespace crownring {

enum class BarredPhrase : std::uint8_t {
    NobodyNamed,
    NotEntitled,       ///< %2: the capacity
    Ended,             ///< %2: the capacity, %3: the last good day
    NotYet,            ///< %2: the capacity, %3: the first day
    OnlyFor,           ///< %2: the capacity, %3: the balloons
    NotFor,            ///< %2: the capacity, %3: the balloons, %4: the one acted on
    EntitledToNothing, ///< %2: the day
    OtherRules,        ///< %1: the capacity
    OtherState,        ///< %1: the capacity
    OwnerForHire,
    AnnualByAMechanic,
    MajorByAMechanic,
    OwnersTasksOnly,
    IncompleteInTheUs,
    DeferredForHire,
    RequiredInTheUs,
    OwnerMayNot, ///< %1: what the rule says
    NotPreventive,
    ReviewByOwner,
    FailedReading, ///< %1: the defect
    DangerToFlight,
    OwnFindingsOnly,
    IndependentForHire,
    ReviewsOnly, ///< %1: the capacity
    NoReviewer,  ///< %1: the capacity
    IndependentReviewsAdd,
    ExtendedByOthers,    ///< %1: the capacity
    NoApproval,          ///< %1: the capacity
    ApprovalUnknown,     ///< %1: the approval
    MaintenanceExtends,  ///< %1: the annex
    ReviewOutsideVisit,  ///< %1: the capacity or the annex
    ReviewAnothersVisit, ///< %1: the inspection, %2: for whom it was signed
    NoLicenceBeside,
    AuthorisationOld, ///< %2: its number, %3: the last good day
    NoReviewOfLate,   ///< %2: its number, %3: the last review
};

}

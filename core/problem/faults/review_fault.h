// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands in the way of signing an airworthiness review, or of extending its certificate.

#include "problem/fault.h"

namespace crownring {

enum class ReviewFault : std::uint8_t {
    NotItsEnvelope,         ///< %1: the item, %2: the balloon
    NoProgramme,            ///< %1: the balloon
    MayNotReview,           ///< %1: why
    PrintedDiffers,         ///< %1: the day printed, %2: the day that the rule gives
    NothingToExtend,        ///< %1: the balloon
    ExpiredBefore,          ///< %1: the last good day
    ExtendedTooOften,       ///< %1: the balloon, %2: how often it may be
    LineNotDone,            ///< %1: the line, %2: the inspection
    NoLineForReview,        ///< %1: the inspection
    StandsAgainst,          ///< %1: what, %2: the item
    AuthorisationDiffers,   ///< %1: what the record composes
    StatedByNobody,         ///< %1: the requirement, %2: the item, %3: the day of the last signed review
    ExpiresOfNoCertificate, ///< %1: the requirement
    ExpiresTooLate,         ///< %1: the day printed, %2: the latest that it can be
    CertificateIsFixed,
    VoidUnsaid,
    NoReview, ///< %1: how it was called, %2: the day
};
[[nodiscard]] FaultRow rowOf(ReviewFault fault);

}

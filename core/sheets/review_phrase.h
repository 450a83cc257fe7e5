// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on the paper of an airworthiness review.

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
};

}

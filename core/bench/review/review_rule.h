// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who may sign an airworthiness review, extend its certificate, or recommend that one be issued.
///
/// Sources. Read: ML.A.901(a), (b) (who issues, and while performing what); ML.A.904(c), (d) in the UK's copy (an
/// authorisation is valid 5 years while at least one review is done every 12 months, else a supervised one comes
/// first). Read in a UK library: ML.A.901(c) (extended by an approved CAMO or CAO). From memory: who may recommend, and
/// how the number of an approval says under which annex an organisation works.
///
/// Not judged here: that a balloon was managed, and maintained, by the same organisations for the 12 months before an
/// extension (ML.A.901(c)(1), (2)), nor the knowledge that the authorisation rests on.

#include "bench/release/entitlement.h"
#include "record/kinds/inspections.h"
#include "record/kinds/programmes.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// The visit while which a review is made.
struct ReviewVisit {
    InspectionId inspection;
    bool isPeriodic = false; ///< an annual or 100-hour inspection (Part-ML) of the envelope, on that balloon
    CivilDate opened;
    std::optional<CivilDate> closed;
    std::optional<PersonId> signatory; ///< of its closing
    std::string performedFor;          ///< the organisation that the signatory then signed for
    [[nodiscard]] bool isPerformedOn(CivilDate day) const {
        return isPeriodic && opened <= day && (!closed || day <= *closed);
    }
};

struct Reviewing {
    PersonId person;
    Capacity capacity = Capacity::AirworthinessReviewStaff;
    ReviewAct act = ReviewAct::Review;
    std::optional<Registration> balloon;
    std::vector<std::string> operations; ///< of that balloon
    CivilDate on;
    std::optional<ReviewVisit> visit;
    std::vector<CivilDate> reviewed; ///< when the record has that person review before
};

/// Nothing when the person may.
[[nodiscard]] std::optional<Barred> mayReview(std::span<const Entitlement> entitlements, const Reviewing& reviewing);

/// By what that person reviews: the number of the authorisation, with the approval of an organisation; empty where the
/// record has none.
[[nodiscard]] std::string authorisationOf(std::span<const Entitlement> entitlements, const PersonId& person,
                                          Capacity capacity, CivilDate on);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// May this review be signed so, by this person, on this day? Pure: what it is judged by is in the file.
///
/// Sources. Read: ML.A.903(a), (b) (all maintenance due was carried out, no defect that is neither put right nor
/// deferred; a survey); the anticipation by at most 90 and 30 days as `regulations` of the programme has it. ML.A.901
/// (an expired certificate is not extended) and that forms print the day itself or the day before it: from memory.

#include "bench/confirmed/wording_refusals.h"
#include "bench/review/review_rule.h"
#include "problem/problem.h"
#include "registry/item_facts.h"
#include "rules/standing/standing.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// All that the signing of a review is judged by.
struct ReviewFile {
    Reviewing reviewing;
    std::optional<ItemFacts> envelope; ///< the item named, on that day; nothing where it is not in the record then
    std::vector<Entitlement> entitlements;
    WordingBook wordings;             ///< up to that day
    std::string authorisation;        ///< under which it is signed, as the record composes it
    bool isAsked = false;             ///< a programme in force asks for a review of the envelope
    std::optional<CivilDate> current; ///< the last good day of the certificate before
    std::optional<CivilDate> due;     ///< that of the new one, as the rule gives it
    std::optional<int> tooOften;      ///< it was extended as often as it may be: so often

    struct Against {
        ItemId item;
        Argument title;
        std::string source;
    };
    std::vector<Against> against;     ///< on the balloon, beside the work of the visit
    std::vector<std::string> notDone; ///< titles of lines of the visit
    bool hasLines = false;            ///< the visit has lines for the review
};

/// What stands in the way; empty when it may be signed so. Each with its rule.
[[nodiscard]] std::vector<Problem> refusals(const ReviewFile& file, const ReviewSigned& said);

/// What is signed besides the form of the authority, and whether it is confirmed: asked when it is signed, and not
/// again.
[[nodiscard]] PrescribedStatement statementOf(const ReviewFile& file, const ReviewSigned& said);
[[nodiscard]] WordingAsked wordingAsked(const ReviewFile& file, const ReviewSigned& said);

/// Printed forms name the last day, or the day before it.
[[nodiscard]] bool isAsTheRuleGives(CivilDate printed, CivilDate rule);

}

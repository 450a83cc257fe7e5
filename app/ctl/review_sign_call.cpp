// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign_review.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/bench_fault.h"
#include "sheets/review_paper.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

Result<ReviewSigning> signingFrom(const ReviewSignOptions& options) {
    const auto on = dayFrom(options.on);
    if (!on)
        return tl::unexpected(on.error());
    const auto capacity = capacityFrom(options.capacity);
    if (!capacity)
        return problem(BenchFault::NoCapacityToSignIn, {options.capacity});
    ReviewSigning signing;
    signing.balloon = Registration(options.balloon);
    signing.act = reviewActFrom(options.act).value_or(ReviewAct::Review);
    signing.form = options.form;
    signing.certificate = options.certificate;
    signing.reviewer = PersonId(options.by);
    signing.capacity = *capacity;
    signing.findings = options.findings;
    signing.on = *on;
    if (!options.inspection.empty())
        signing.inspection = InspectionId(options.inspection);
    if (!options.expires.empty()) {
        const auto expires = CivilDate::parse(options.expires);
        if (!expires)
            return tl::unexpected(expires.error());
        signing.expires = *expires;
    }
    if (!options.time.empty()) {
        const auto time = TimeOfDay::parse(options.time);
        if (!time)
            return tl::unexpected(time.error());
        signing.time = *time;
    }
    return signing;
}

}

int run(const ReviewSignOptions& options, const Common& common) {
    const auto signing = signingFrom(options);
    if (!signing)
        return refuse(signing.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = signReview(record, record, *signing);
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto line = record.line(receipt->ids.front());
        if (!line)
            return tl::unexpected(std::vector{line.error()});
        return printed(reviewJson((*line)->entry));
    });
}

}

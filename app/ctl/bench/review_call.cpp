// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign_review.h"
#include "answers/review/reviews.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "paper/document_text.h"
#include "print/pdf.h"
#include "print/photograph.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/review_fault.h"
#include "sheets/review_paper.h"
#include "words/spoken.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

namespace {

const words::Spoken reviewLanguage;

std::string orDash(const std::optional<CivilDate>& date) { return date ? date->iso() : "-"; }

/// Kept as on the screen; nothing of it unless all are pictures.
Result<std::vector<Picture>> picturesIn(const std::vector<std::string>& files) {
    std::vector<Picture> pictures;
    for (const auto& file : files) {
        auto picture = print::photographFrom(file);
        if (!picture)
            return tl::unexpected(picture.error());
        pictures.push_back(std::move(*picture));
    }
    return pictures;
}

/// What refuses the review refuses its pictures: they are kept once it would be signed, and named by it.
Results<Receipt> signPictured(Record& record, ReviewSigning signing, const std::vector<Picture>& pictures,
                              const SaidCode& said) {
    if (!pictures.empty()) {
        const auto draft = draftReview(record, signing);
        if (!draft)
            return tl::unexpected(std::vector{draft.error()});
        if (!draft->refusals.empty())
            return tl::unexpected(draft->refusals);
    }
    for (const auto& picture : pictures) {
        auto digest = record.keepPicture(picture);
        if (!digest)
            return tl::unexpected(std::vector{digest.error()});
        if (std::ranges::find(signing.photographs, *digest) == signing.photographs.end())
            signing.photographs.push_back(std::move(*digest));
    }
    return signReview(record, record, signing, said);
}

/// The latest of that certificate, or the entry of that id.
const Entry* reviewNamed(const std::vector<Entry>& reviews, const std::string& name) {
    const auto is = [&](const Entry& each) {
        return each.id.text() == name || std::get<ReviewSigned>(each.body).certificate == name;
    };
    const auto found = std::ranges::find_if(reviews, is);
    return found == reviews.end() ? nullptr : &*found;
}

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

int run(const ReviewListOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto balloon = options.balloon.empty() ? std::nullopt : std::optional(Registration(options.balloon));
    const auto reviews = signedReviews(*record, balloon, record.on);
    if (!reviews)
        return refuse(reviews.error());
    if (options.json) {
        auto list = nlohmann::ordered_json::array();
        for (const auto& each : *reviews)
            list.push_back(reviewJson(each));
        print({{"on", record.on.iso()}, {"reviews", list}});
        return Done;
    }
    if (reviews->empty()) {
        std::cout << "No airworthiness review signed up to " << record.on.iso() << ".\n";
        return Done;
    }
    paper::Table table{{{"Balloon"}, {"Act"}, {"Certificate"}, {"Issued"}, {"Expires"}, {"Reviewer"}}, {}, {}};
    for (const auto& each : *reviews) {
        const auto& said = std::get<ReviewSigned>(each.body);
        table.rows.push_back({said.balloon.text(), std::string(reviewActName(said.act)), said.certificate,
                              each.on.iso(), orDash(said.expires), said.reviewer.text()});
    }
    std::cout << paper::toText({"Airworthiness reviews up to " + record.on.iso(), {}, {}, {}, {table}}, reviewLanguage);
    return Done;
}

int run(const ReviewShowOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto reviews = signedReviews(*record, std::nullopt, record.on);
    if (!reviews)
        return refuse(reviews.error());
    const auto* review = reviewNamed(*reviews, options.review);
    if (!review)
        return refuse(Problem{ReviewFault::NoReview, {options.review, record.on}});
    const auto file = reviewFile(*record, *review);
    if (!file)
        return refuse(file.error());
    const auto against = refusals(*file, std::get<ReviewSigned>(review->body));
    const auto paper = reviewPaper(*review, against, reviewLanguage);
    if (!options.to.empty()) {
        const auto format = options.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4;
        const auto written =
            print::writePdf(paper, format, options.to, options.force ? Replace::Asked : Replace::Never);
        return written ? int{Done} : refuse(written.error());
    }
    if (options.json) {
        auto json = reviewJson(*review);
        json["supported"] = against.empty();
        print(json);
    } else
        std::cout << paper::toText(paper, reviewLanguage);
    return Done;
}

int run(const ReviewSignOptions& options, const Common& common) {
    const auto signing = signingFrom(options);
    if (!signing)
        return refuse(signing.error());
    const auto code = codeIn(options.codeFile);
    if (!code)
        return refuse(code.error());
    const auto pictures = picturesIn(options.photographs);
    if (!pictures)
        return refuse(pictures.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto receipt = signPictured(record, *signing, *pictures, {*code});
        if (!receipt)
            return tl::unexpected(receipt.error());
        const auto line = record.line(receipt->ids.front());
        if (!line)
            return tl::unexpected(std::vector{line.error()});
        return printed(reviewJson((*line)->entry));
    });
}

int run(const ReviewVoidOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto code = codeIn(options.codeFile);
    if (!code)
        return refuse(code.error());
    return write(common, [&](Record& record) -> Results<std::string> {
        const auto reviews = signedReviews(record, std::nullopt, *on);
        if (!reviews)
            return tl::unexpected(std::vector{reviews.error()});
        const auto* review = reviewNamed(*reviews, options.review);
        if (!review)
            return tl::unexpected(std::vector{Problem{ReviewFault::NoReview, {options.review, *on}}});
        Entry entry;
        entry.on = *on;
        entry.by = options.by;
        entry.body = EntryVoided{review->id, options.reason};
        const auto receipt = postSigned(record, record, {{std::move(entry), 0}}, {*code});
        if (!receipt)
            return tl::unexpected(receipt.error());
        return printed({{"voided", review->id.text()},
                        {"on", on->iso()},
                        {"by", options.by},
                        {"entry", receipt->ids.front().text()}});
    });
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/reviews.h"

#include "problem/faults/entry_fault.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

namespace {

constexpr Words<reviewActCount> reviewActs = {"review", "extension", "recommendation"};

}

std::string_view reviewActName(ReviewAct act) { return reviewActs[static_cast<std::size_t>(act)]; }
std::optional<ReviewAct> reviewActFrom(std::string_view name) { return among<ReviewAct>(reviewActs, name); }

std::optional<RequirementId> requirementOf(ReviewAct act) {
    switch (act) {
    case ReviewAct::Review:
        return RequirementId("ml.arc-review");
    case ReviewAct::Extension:
        return RequirementId("ml.arc-extension");
    case ReviewAct::Recommendation:
        break;
    }
    return std::nullopt;
}

bool isOfReviews(const RequirementId& requirement) {
    return requirement == requirementOf(ReviewAct::Review) || requirement == requirementOf(ReviewAct::Extension);
}

ReviewSigned Kind<ReviewSigned>::read(ObjectReader& reader) {
    ReviewSigned body;
    body.balloon = reader.name<Registration>("balloon");
    body.item = reader.name<ItemId>("item");
    body.act = reader.word("act", reviewActFrom, "review, extension, recommendation");
    body.form = reader.saying("form");
    body.certificate = reader.saying("certificate");
    if (body.act != ReviewAct::Recommendation)
        body.expires = reader.date("expires");
    else if (reader.has("expires"))
        reader.refuse("expires", EntryFault::RecommendedUntil);
    body.reviewer = reader.name<PersonId>("reviewer");
    body.capacity = reader.slug("capacity");
    body.authorisation = reader.optionalText("authorisation");
    body.findings = reader.optionalText("findings");
    body.photographs = readPhotographs(reader);
    body.inspection = reader.optionalName<InspectionId>("inspection");
    return body;
}

void Kind<ReviewSigned>::write(nlohmann::json& into, const ReviewSigned& body) {
    into["balloon"] = body.balloon.text();
    into["item"] = body.item.text();
    into["act"] = reviewActName(body.act);
    into["form"] = body.form;
    into["certificate"] = body.certificate;
    writeDate(into, "expires", body.expires);
    into["reviewer"] = body.reviewer.text();
    into["capacity"] = body.capacity;
    writeText(into, "authorisation", body.authorisation);
    writeText(into, "findings", body.findings);
    writePhotographs(into, body.photographs);
    writeName(into, "inspection", body.inspection);
}

}

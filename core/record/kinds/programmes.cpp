// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/programmes.h"

#include "problem/faults/entry_fault.h"
#include "record/chain/chain.h"
#include "record/json/words.h"
#include "record/json/written.h"
#include "record/kinds/bench_keys.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<reviewActCount> reviewActs = {"review", "extension", "recommendation"};

Bound readBound(ObjectReader& reader) {
    auto balloons = reader.optionalNames<Registration>("balloons");
    auto items = reader.optionalNames<ItemId>("items");
    const bool everything = reader.optionalBool("everything");
    if (reader.has("everything") && !everything)
        reader.refuse("everything", EntryFault::OnlyTrue);
    if ((balloons ? 1 : 0) + (items ? 1 : 0) + (everything ? 1 : 0) != 1) {
        reader.refuse("balloons", EntryFault::BoundNotOnce);
        return BoundEverything{};
    }
    if (balloons)
        return BoundBalloons{std::move(*balloons)};
    if (items)
        return BoundItems{std::move(*items)};
    return BoundEverything{};
}

}

const std::vector<Registration>* boundBalloons(const ProgrammeAdopted& adopted) {
    const auto* bound = std::get_if<BoundBalloons>(&adopted.bound);
    return bound ? &bound->balloons : nullptr;
}

const std::vector<ItemId>* boundItems(const ProgrammeAdopted& adopted) {
    const auto* bound = std::get_if<BoundItems>(&adopted.bound);
    return bound ? &bound->items : nullptr;
}

ProgrammeAdopted Kind<ProgrammeAdopted>::read(ObjectReader& reader) {
    ProgrammeAdopted body;
    body.programme = reader.name<ProgrammeId>("programme");
    body.bound = readBound(reader);
    body.document = reader.optionalObjectText("document");
    body.digest = reader.optionalText("digest");
    if (reader.has("digest") && !digestFromHex(body.digest))
        reader.refuse("digest", EntryFault::NoDigestOfADocument);
    return body;
}

void Kind<ProgrammeAdopted>::write(json& into, const ProgrammeAdopted& body) {
    into["programme"] = body.programme.text();
    if (const auto* balloons = boundBalloons(body))
        into["balloons"] = namesOf(*balloons);
    else if (const auto* items = boundItems(body))
        into["items"] = namesOf(*items);
    else
        into["everything"] = true;
    if (!body.document.empty())
        into["document"] = json::parse(body.document);
    writeText(into, "digest", body.digest);
}

RequirementDone Kind<RequirementDone>::read(ObjectReader& reader) {
    RequirementDone body{reader.name<ItemId>("item"),    reader.name<RequirementId>("requirement"),
                         readStatedClock(reader),        reader.optionalSlug("method"),
                         reader.optionalText("ref"),     reader.optionalName<PersonId>("signatory"),
                         reader.optionalText("licence"), reader.optionalDate("expires"),
                         reader.optionalText("mark")};
    if (body.expires && (body.ref.empty() || !body.signatory || body.licence.empty()))
        reader.refuse("expires", EntryFault::ExpiresOnNoPaper);
    return body;
}

void Kind<RequirementDone>::write(json& into, const RequirementDone& body) {
    into["item"] = body.item.text();
    into["requirement"] = body.requirement.text();
    writeFigures(into, "clock", body.clock, {});
    writeText(into, "method", body.method);
    writeText(into, "ref", body.ref);
    writeName(into, "signatory", body.signatory);
    writeText(into, "licence", body.licence);
    writeDate(into, "expires", body.expires);
    writeText(into, "mark", body.mark);
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
    body.proof = readProof(reader);
    body.statement = reader.optionalText("statement");
    body.confirmed = readConfirmed(reader);
    return body;
}

void Kind<ReviewSigned>::write(json& into, const ReviewSigned& body) {
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
    writeProof(into, body.proof);
    writeText(into, "statement", body.statement);
    writeConfirmed(into, body.confirmed);
}

}

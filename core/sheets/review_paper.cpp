// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/review_paper.h"

#include "bench/release/entitlement.h"
#include "bench/release/release_phrase.h"
#include "sheets/review_phrase.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheet_phrase.h"
#include "sheets/sheets.h"
#include "sheets/wording_lines.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

using namespace paper;

ReviewPhrase titleOfReview(ReviewAct act) {
    switch (act) {
    case ReviewAct::Review:
        return ReviewPhrase::AirworthinessReview;
    case ReviewAct::Extension:
        return ReviewPhrase::ReviewExtended;
    case ReviewAct::Recommendation:
        break;
    }
    return ReviewPhrase::ReviewRecommended;
}

std::string capacityText(const std::string& name, const Speech& in) {
    const auto capacity = capacityFrom(name);
    return capacity ? in.say(termOf(*capacity)) : name;
}

}

paper::Document reviewPaper(const Entry& signing, const std::vector<Problem>& against, const Speech& in) {
    const auto& said = std::get<ReviewSigned>(signing.body);
    Document document;
    document.title = in.say(titleOfReview(said.act));
    document.subtitle = said.balloon.text();
    document.recordId = said.certificate; // as it is filed
    document.caution = in.say(ReleasePhrase::CautionText);
    Facts facts;
    const auto add = [&](PhraseCode label, std::string value) {
        if (!value.empty())
            facts.facts.push_back({in.say(label), std::move(value)});
    };
    add(ReviewPhrase::ReviewedEnvelope, said.item.text());
    add(ReviewPhrase::ReviewForm, said.form);
    add(ReviewPhrase::CertificateNumber, said.certificate);
    add(ReviewPhrase::IssuedOn, in.say(signing.on));
    if (said.expires)
        add(ReviewPhrase::PrintedExpiry, in.say(*said.expires));
    if (said.inspection)
        add(ReviewPhrase::ReviewedDuring, said.inspection->text());
    add(ReviewPhrase::ReviewFindings, said.findings);
    document.blocks.emplace_back(std::move(facts));
    if (!said.photographs.empty())
        document.blocks.emplace_back(
            Paragraph{in.say(SheetPhrase::Photographs, {said.photographs.size()}), Emphasis::Plain});
    document.blocks.emplace_back(Paragraph{in.say(ReviewPhrase::NoCertificateItself, {said.form}), Emphasis::Strong});
    document.blocks.emplace_back(Paragraph{provenText(said.proof, in), Emphasis::Quiet});
    for (const auto& each : against)
        document.blocks.emplace_back(
            Paragraph{in.say(ReviewPhrase::NotSupportedFor, {Phrase{each.fault, each.arguments}}), Emphasis::Strong});
    if (!said.statement.empty())
        document.blocks.emplace_back(confirmedStatement({said.statement, {}}, said.confirmed, AdoptedTexts{}, in));
    document.blocks.emplace_back(Signature{in.say(ReviewPhrase::ReviewSignature),
                                           {{in.say(ReviewPhrase::Reviewer), said.reviewer.text(), false},
                                            {in.say(ReviewPhrase::ReviewingAs), capacityText(said.capacity, in), false},
                                            {in.say(ReviewPhrase::ReviewedUnder), said.authorisation, false},
                                            {in.say(ReviewPhrase::IssuedOn), in.say(signing.on), false},
                                            {in.say(ReviewPhrase::ReviewSignature), {}, true}}});
    return document;
}

nlohmann::ordered_json reviewJson(const Entry& signing) {
    const auto& said = std::get<ReviewSigned>(signing.body);
    const auto orNull = [](const auto& value) {
        return value ? nlohmann::ordered_json(value->text()) : nlohmann::ordered_json();
    };
    return {{"entry", signing.id.text()},
            {"balloon", said.balloon.text()},
            {"item", said.item.text()},
            {"act", reviewActName(said.act)},
            {"form", said.form},
            {"certificate", said.certificate},
            {"issued", signing.on.iso()},
            {"expires", said.expires ? nlohmann::ordered_json(said.expires->iso()) : nlohmann::ordered_json()},
            {"reviewer", said.reviewer.text()},
            {"capacity", said.capacity},
            {"authorisation", said.authorisation},
            {"findings", said.findings},
            {"photographs", said.photographs},
            {"statement", said.statement},
            {"confirmed", confirmedJson(said.confirmed)},
            {"inspection", orNull(said.inspection)},
            {"proof", proofJson(said.proof)}};
}

}

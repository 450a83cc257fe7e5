// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/wording/wording.h"

#include "bench/wording/places.h"
#include "problem/faults/wording_fault.h"
#include "record/chain/chain.h"
#include "text/legible.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& wordingShelfData();

}

namespace crownring {

namespace {

using nlohmann::json;

/// One of them must be there.
using OneOfPlaces = std::vector<std::string_view>;

struct KnownText {
    std::string_view id;
    std::vector<OneOfPlaces> must; ///< what its rule wants in the statement itself; assets/texts/README.md names them
    std::string_view rule;
};

const std::array<KnownText, statementTextCount>& knownTexts() {
    static const OneOfPlaces what{"aircraft", "items"};
    static const OneOfPlaces which{"registration"};
    static const std::array<KnownText, statementTextCount> texts{{
        {"part-ml-release", {what, {"annex"}}, "AMC M.A.801(e)1; ML.A.801(e) (from memory)"},
        {"part-ml-owner-release", {what, {"annex"}}, "AMC M.A.801(e)1; ML.A.801(e) (from memory)"},
        {"part-ml-component-release", {{"items"}, {"annex"}}, "ML.A.802 (from memory)"},
        {"part-ml-incomplete-release", {what, {"annex"}}, "ML.A.801(f) (from memory)"},
        {"part-ml-review", {which}, "ML.A.901 (from memory)"},
        {"part-ml-review-extension", {which, {"certificate"}}, "ML.A.901(c) (from memory)"},
        {"part-ml-review-recommendation", {which}, "ML.A.901 (from memory)"},
        {"us-inspection-airworthy", {what, {"inspection"}}, "14 CFR 43.11(a)(4)"},
        {"us-inspection-discrepancies", {what, {"inspection"}, {"list_date"}}, "14 CFR 43.11(a)(5)"},
        {"us-return-to-service", {}, "14 CFR 43.9(a)(4) (from memory)"},
    }};
    return texts;
}

const KnownText& known(StatementText text) { return knownTexts()[static_cast<std::size_t>(text)]; }

bool isOfReviewing(StatementText text) {
    return text == StatementText::PartMlReview || text == StatementText::PartMlReviewExtension ||
           text == StatementText::PartMlReviewRecommendation;
}

std::vector<std::string_view> placesOf(StatementText text) {
    std::vector<std::string_view> names{"registration", "date", "person", "licence", "organisation", "approval"};
    for (const auto* name : {"certificate", "form", "expires"})
        if (isOfReviewing(text))
            names.emplace_back(name);
    for (const auto* name :
         {"aircraft", "items", "inspection", "annex", "list_date", "manuals", "limitations", "order", "owner"})
        if (!isOfReviewing(text))
            names.emplace_back(name);
    return names;
}

std::string braced(std::string_view name) { return "{" + std::string(name) + "}"; }

std::vector<ShippedWording> readShelf() {
    std::vector<ShippedWording> shelf(statementTextCount);
    for (const auto& [name, text] : embedded::wordingShelfData()) {
        const auto object = json::parse(text);
        ShippedWording each{{TextId(object.at("text").get<std::string>()), object.at("revision"), object.at("title"),
                             object.at("body"), object.at("source")},
                            object.at("wording") == "read",
                            object.value("note", std::string())};
        const auto of = statementTextFrom(each.wording.text);
        shelf.at(static_cast<std::size_t>(of.value())) = std::move(each);
    }
    return shelf;
}

}

TextId idOf(StatementText text) { return TextId(known(text).id); }

std::optional<StatementText> statementTextFrom(const TextId& id) {
    for (int i = 0; i < statementTextCount; ++i)
        if (knownTexts()[static_cast<std::size_t>(i)].id == id.text())
            return static_cast<StatementText>(i);
    return std::nullopt;
}

StatementText textOf(ReviewAct act) {
    switch (act) {
    case ReviewAct::Review:
        return StatementText::PartMlReview;
    case ReviewAct::Extension:
        return StatementText::PartMlReviewExtension;
    case ReviewAct::Recommendation:
        break;
    }
    return StatementText::PartMlReviewRecommendation;
}

std::vector<Visit> visitsSignedBy(StatementText text) {
    std::vector<Visit> visits;
    const bool isUs = text >= StatementText::UsAirworthy;
    for (const auto visit : allVisits) {
        if (isOfReviewing(text) || (regimeOf(visit) == Regime::Us14Cfr) != isUs)
            continue;
        if (text == StatementText::PartMlOwnerRelease && !isOfOwnersTasks(visit))
            continue;
        if (text == StatementText::PartMlComponentRelease && !isOfComponents(visit))
            continue;
        if ((text == StatementText::UsAirworthy || text == StatementText::UsDiscrepancies) && !isPeriodic(visit))
            continue;
        visits.push_back(visit);
    }
    return visits;
}

std::string digestOf(const Wording& wording) {
    json object = {{"text", wording.text.text()}, {"revision", wording.revision}, {"body", wording.body}};
    if (!wording.title.empty())
        object["title"] = wording.title;
    if (!wording.source.empty())
        object["source"] = wording.source;
    return hex(sha256(object.dump()));
}

Wording wordingOf(const TextAdopted& adopted) {
    return {adopted.text, adopted.revision, adopted.title, adopted.body, adopted.source};
}

std::span<const ShippedWording> shippedWordings() {
    static const auto shelf = readShelf();
    return shelf;
}

const ShippedWording& shipped(StatementText text) { return shippedWordings()[static_cast<std::size_t>(text)]; }

std::optional<Problem> hiddenIn(std::string_view text, std::string key) {
    const auto hidden = firstHidden(text);
    if (!hidden)
        return std::nullopt;
    constexpr int digits = 4;
    std::string point;
    for (auto rest = static_cast<unsigned>(hidden->point); rest > 0 || point.size() < digits; rest /= 16)
        point.insert(point.begin(), "0123456789ABCDEF"[rest % 16]);
    return Problem{WordingFault::Hidden, {"U+" + point, hidden->line, hidden->place}, atKey(std::move(key))};
}

std::vector<Problem> faultsOf(const TextAdopted& adopted) {
    const auto text = statementTextFrom(adopted.text);
    if (!text) {
        Listed names;
        for (const auto& each : knownTexts())
            names.list.emplace_back(each.id);
        return {Problem{WordingFault::NoSuchText, {adopted.text, std::move(names)}, atKey("text")}};
    }
    std::vector<Problem> faults;
    for (const auto& [said, key] :
         {std::pair{&adopted.body, "body"}, {&adopted.title, "title"}, {&adopted.source, "source"}})
        if (auto hidden = hiddenIn(*said, key))
            faults.push_back(std::move(*hidden));
    const auto has = placesIn(adopted.body);
    const auto may = placesOf(*text);
    for (const auto& name : has)
        if (std::ranges::find(may, name) == may.end())
            faults.push_back(Problem{WordingFault::NoSuchPlace, {name, listed(may)}, atKey("body")});
    for (const auto& oneOf : known(*text).must)
        if (std::ranges::none_of(oneOf,
                                 [&](std::string_view each) { return std::ranges::find(has, each) != has.end(); })) {
            Listed wanted{{}, Listed::Joined::Or};
            for (const auto& each : oneOf)
                wanted.list.emplace_back(braced(each));
            faults.push_back(Problem{WordingFault::PlaceMissing,
                                     {adopted.text, std::move(wanted)},
                                     atKey("body"),
                                     std::string(known(*text).rule)});
        }
    const auto& ships = shipped(*text).wording;
    if (adopted.revision == ships.revision && wordingOf(adopted) != ships)
        faults.push_back(Problem{WordingFault::OtherWording, {adopted.text, adopted.revision}, atKey("revision")});
    return faults;
}

}

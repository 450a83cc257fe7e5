// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wording_lines.h"

#include "bench/release/signed_phrase.h"
#include "sheets/sheet_parts.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace crownring {

namespace {

using Json = nlohmann::ordered_json;

std::string idOfConfirmed(const ConfirmedText& each) {
    return each.text ? each.text->text() : each.checklist ? each.checklist->text() : std::string();
}

}

void addConfirmed(paper::Document& document, const std::vector<ConfirmedText>& confirmed, const AdoptedTexts& texts,
                  const Speech& in) {
    std::string line;
    for (const auto& each : confirmed)
        line += (line.empty() ? "" : " ") +
                in.say(SignedPhrase::WordingConfirmed,
                       {titleOf(each, texts), each.revision, each.against, each.by, each.licence, each.on});
    if (line.empty())
        line = in.say(SignedPhrase::WordingUnsaid);
    document.blocks.emplace_back(paper::Paragraph{line, paper::Emphasis::Quiet});
}

void addUnconfirmed(paper::Document& document, const BenchFile& file, const Speech& in) {
    const auto states = statesOf(wordingAsked(file, signingOf(file)));
    if (std::ranges::any_of(states, [](const WordingState& each) { return !each.adopted || !each.confirmed; }))
        document.blocks.emplace_back(paper::Paragraph{in.say(SignedPhrase::DraftUnconfirmed), paper::Emphasis::Strong});
}

Json confirmedJson(const std::vector<ConfirmedText>& confirmed) {
    auto list = Json::array();
    for (const auto& each : confirmed)
        list.push_back({{each.text ? "text" : "checklist", idOfConfirmed(each)},
                        {"revision", each.revision},
                        {"digest", each.digest},
                        {"by", each.by.text()},
                        {"licence", each.licence},
                        {"on", each.on.iso()},
                        {"against", each.against}});
    return list;
}

Json wordingJson(const std::vector<WordingState>& states) {
    auto list = Json::array();
    for (const auto& each : states)
        list.push_back({{each.named.text ? "text" : "checklist", each.named.id()},
                        {"revision", each.named.revision},
                        {"digest", each.named.digest},
                        {"adopted", each.adopted},
                        {"confirmed", each.adopted && each.confirmed.has_value()}});
    return list;
}

}

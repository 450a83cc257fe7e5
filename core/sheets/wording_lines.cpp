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

paper::Statement confirmedStatement(paper::Statement statement, const std::vector<ConfirmedText>& confirmed,
                                    const AdoptedTexts& texts, const Speech& in) {
    std::vector<std::pair<const ConfirmedText*, std::string>> alike; ///< by whom, against what; and what
    for (const auto& each : confirmed) {
        const auto isAlike = [&](const auto& other) {
            const auto& first = *other.first;
            return first.against == each.against && first.by == each.by && first.licence == each.licence;
        };
        const auto what = in.say(SignedPhrase::WordingOfADay, {titleOf(each, texts), each.revision, each.on});
        if (const auto there = std::ranges::find_if(alike, isAlike); there != alike.end())
            there->second += "; " + what;
        else
            alike.emplace_back(&each, what);
    }
    std::string line;
    for (const auto& [first, what] : alike)
        line += (line.empty() ? "" : " ") +
                in.say(SignedPhrase::WordingConfirmed, {first->against, first->by, first->licence, what});
    if (line.empty())
        line = in.say(SignedPhrase::WordingUnsaid);
    statement.note = line;
    return statement;
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

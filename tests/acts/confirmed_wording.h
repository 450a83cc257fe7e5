// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An organisation that has adopted all texts as they ship, and people who have confirmed them and the checklists, so
/// that tests of other things can sign. What they were held against is invented.

#include "answers/wording/wording_lines.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace crownring::testing {

inline constexpr const char* inventedRule = "the rule as of an invented day, for tests";

inline std::string adoptedLine(const Wording& wording, const char* on, const char* organisation = "Lakeside") {
    return nlohmann::json{{"entry", "text.adopted"},     {"on", on},
                          {"text", wording.text.text()}, {"revision", wording.revision},
                          {"title", wording.title},      {"body", wording.body},
                          {"source", wording.source},    {"organisation", organisation}}
               .dump() +
           "\n";
}

inline std::string confirmedLine(const NamedText& named, const char* on, const std::string& person, Capacity capacity,
                                 const std::string& licence = {}, const char* against = inventedRule) {
    nlohmann::json line{{"entry", "text.confirmed"},
                        {"on", on},
                        {"by", person},
                        {"revision", named.revision},
                        {"digest", named.digest},
                        {"against", against},
                        {"confirmed_by", person},
                        {"capacity", capacityName(capacity)}};
    line[named.text ? "text" : "checklist"] = named.id();
    if (!licence.empty())
        line["licence"] = licence;
    return line.dump() + "\n";
}

inline std::string adoptedAsShipped(const char* on) {
    std::string lines;
    for (const auto& each : shippedWordings())
        lines += adoptedLine(each.wording, on);
    return lines;
}

/// All that somebody in that capacity may confirm. @pre the texts are adopted
/// @param licence where the person is entitled in the same batch only
inline std::string confirmedBy(const std::string& person, Capacity capacity, const char* on,
                               const std::string& licence = {}) {
    std::string lines;
    for (int i = 0; i < statementTextCount; ++i) {
        const auto text = static_cast<StatementText>(i);
        if (!barOfConfirming(capacity, visitsSignedBy(text)))
            lines += confirmedLine(named(shipped(text).wording), on, person, capacity, licence);
    }
    for (const auto& list : shippedChecklists())
        if (!barOfConfirming(capacity, visitsOfChecklist(std::string(shippedDocument(list)))))
            lines += confirmedLine(list, on, person, capacity, licence);
    return lines;
}

}

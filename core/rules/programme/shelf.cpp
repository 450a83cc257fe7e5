// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/programme.h"

#include <nlohmann/json.hpp>

#include <map>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& programmeShelfData();

}

namespace crownring {

const std::vector<std::string>& shelf() {
    static const auto texts = [] {
        std::vector<std::string> canonical;
        for (const auto& [name, text] : embedded::programmeShelfData())
            canonical.push_back(nlohmann::json::parse(text).dump()); // its tests hold it against the schema
        return canonical;
    }();
    return texts;
}

std::string_view shelfText(const ProgrammeId& programme) {
    static const auto byId = [] {
        std::map<ProgrammeId, std::string_view> texts;
        for (const auto& text : shelf())
            texts.emplace(ProgrammeId(nlohmann::json::parse(text).at("programme").get<std::string>()), text);
        return texts;
    }();
    const auto found = byId.find(programme);
    return found == byId.end() ? std::string_view() : found->second;
}

}

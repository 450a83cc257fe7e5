// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/forecast/visit_json.h"

#include "ctl/answer_json.h"
#include "ctl/due_table.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

std::string_view howText(LapseChance how) {
    switch (how) {
    case LapseChance::Already:
        return "already";
    case LapseChance::Surely:
        return "surely";
    case LapseChance::Likely:
        return "likely";
    case LapseChance::Perhaps:
        return "perhaps";
    }
    return {};
}

std::string rowText(const DueRow& row) {
    return words::said(row.requirement->title).toStdString() + " of " + row.item->id.text();
}

Json rowNames(const DueRow& row, const std::optional<DateBand>& band) {
    return {{"item", row.item->id.text()},
            {"requirement", row.requirement->id.text()},
            {"title", words::said(row.requirement->title).toStdString()},
            {"standing", standingText(row.state.standing)},
            {"projected", projectedJson(band)}};
}

}

nlohmann::ordered_json madeDueJson(const MadeDue& made) {
    auto row = rowJson(*made.after);
    row["standing_before"] = standingText(made.before->state.standing);
    row["supposed"] = true;
    return row;
}

std::string madeDueText(const MadeDue& made) {
    const auto* limit = governingLimit(made.after->state);
    return rowText(*made.after) + " is then " + std::string(standingText(made.after->state.standing)) +
           (limit && limit->isProven() ? ", " + leftText(*limit) : "");
}

nlohmann::ordered_json visitJson(const VisitAhead& ahead, const VisitOutlook& outlook) {
    Json json{{"entry", ahead.stated.id.text()}, {"balloon", ahead.visit.balloon.text()},
              {"station", ahead.visit.station},  {"from", ahead.visit.from.iso()},
              {"to", ahead.visit.to.iso()},      {"covers", Json::array()},
              {"due_before", Json::array()}};
    for (const auto& work : outlook.covers)
        json["covers"].push_back(work.row ? rowNames(*work.row, work.band)
                                          : Json{{"item", work.work.item.text()},
                                                 {"requirement", work.work.requirement.text()},
                                                 {"standing", nullptr}});
    for (const auto& each : outlook.before) {
        auto row = rowNames(*each.row, each.band);
        row["how"] = howText(each.how);
        row["covered"] = each.isCovered;
        json["due_before"].push_back(std::move(row));
    }
    return json;
}

}

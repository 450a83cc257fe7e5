// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/balloon_lines.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"
#include "measure/duration_text.h"
#include "rules/due/reckoned.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

bool isOut(const BalloonCard& card) { return card.out || card.renamed; }

std::string outText(const BalloonCard& card) {
    return words::said(card.out ? reasonOf(*card.out) : reasonOf(*card.renamed)).toStdString();
}

nlohmann::ordered_json lineJson(const BalloonLine& line) {
    const auto* row = line.headline.row;
    const auto& limit = line.headline.limit;
    nlohmann::ordered_json none;
    auto object = nlohmann::ordered_json{
        {"balloon", line.card.balloon.text()},
        {"title", line.card.title},
        {"standing", isOut(line.card) && !row ? none : nlohmann::ordered_json(standingText(line.standing()))},
        {"item", row ? nlohmann::ordered_json(row->item->id.text()) : none},
        {"requirement", row ? nlohmann::ordered_json(row->requirement->id.text()) : none}};
    object["governs"] = limit ? nlohmann::ordered_json(clockNameText(limit->clock)) : none;
    addDueAndLeft(object, limit);
    object["items"] = line.card.items;
    object["flights"] = line.card.flights;
    object["minutes"] = line.card.flown.minutes.value();
    if (!line.outOfService.empty())
        for (const auto& item : line.outOfService)
            object["out_of_service"].push_back(item.text());
    if (line.card.before)
        object["before"] = line.card.before->from.text();
    if (line.card.renamed)
        object["renamed"] = line.card.renamed->to.text();
    if (line.card.out) {
        object["state"] = serviceStateName(line.card.out->state);
        object["since"] = line.card.out->since.iso();
    }
    return object;
}

void printLine(const BalloonLine& line) {
    std::cout << std::left << std::setw(10) << line.card.balloon.text() << std::setw(10)
              << (isOut(line.card) && !line.headline.row ? "out"
                  : line.headline.row                    ? reckonedText(reckonedAs(line.headline.row->state))
                                                         : standingText(line.standing()));
    if (isOut(line.card))
        std::cout << outText(line.card) << (line.headline.row ? "; if it were not: " : "");
    for (const auto& item : line.outOfService)
        std::cout << item.text() << " is out of service though fitted; else: ";
    if (const auto* row = line.headline.row) {
        std::cout << row->item->id.text() << ", " << words::said(row->requirement->title).toStdString();
        if (line.headline.limit && line.headline.limit->isProven())
            std::cout << ", " << leftText(*line.headline.limit);
    } else if (!isOut(line.card)) {
        std::cout << "no mandatory requirement adopted for it";
    }
    std::cout << "; " << counted(line.card.items, "item", "items") << ", "
              << counted(line.card.flights, "flight", "flights") << ", " << hoursAndMinutes(line.card.flown.minutes)
              << " h logged for the registration\n";
}

}

int run(const BalloonsOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto answer =
        balloonLines(*record, options.balloon.empty() ? std::nullopt : std::optional(Registration(options.balloon)),
                     record.on, options.outOfService ? Outside::AsInService : Outside::LeftOut);
    if (!answer)
        return refuse(answer.error());
    if (!options.json) {
        for (const auto& line : answer->lines)
            printLine(line);
        return Done;
    }
    nlohmann::ordered_json json{{"on", record.on.iso()}, {"balloons", nlohmann::ordered_json::array()}};
    for (const auto& line : answer->lines)
        json["balloons"].push_back(lineJson(line));
    if (const auto added = addUnread(json, *record); !added)
        return refuse(added.error());
    print(json);
    return Done;
}

}

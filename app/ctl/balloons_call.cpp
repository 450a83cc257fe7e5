// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/balloon_lines.h"
#include "answers/bench_file.h"
#include "answers/review/supported_reviews.h"
#include "answers/supported.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"
#include "measure/duration_text.h"
#include "rules/due/reckoned.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iomanip>
#include <iostream>
#include <map>

namespace crownring::ctl {

namespace {

bool isOut(const BalloonCard& card) { return card.out || card.renamed; }

std::string outText(const BalloonCard& card) {
    return words::said(card.out ? reasonOf(*card.out) : reasonOf(*card.renamed)).toStdString();
}

std::string notEnteredText(const BalloonLine& line) {
    return counted(line.notEntered, "fitted item is", "fitted items are") +
           " not in the record on that day, so nothing can be said";
}

/// Why it is not clear whatever the rest says: as in the answer of rig-up.
nlohmann::ordered_json reasonsJson(const BalloonLine& line) {
    auto reasons = nlohmann::ordered_json::array();
    for (const auto& item : line.outOfService)
        reasons.push_back({{"reason", "out-of-service"},
                           {"item", item.text()},
                           {"text", item.text() + " is out of service though fitted"}});
    if (line.notEntered > 0)
        reasons.push_back({{"reason", "cannot-say"}, {"count", line.notEntered}, {"text", notEnteredText(line)}});
    return reasons;
}

nlohmann::ordered_json lineJson(const BalloonLine& line) {
    const auto* row = line.isUnknown() && !line.isGoverned() ? nullptr : line.headline.row;
    const auto limit = row ? line.headline.limit : std::nullopt;
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
    if (line.isUnknown())
        object["reasons"] = reasonsJson(line);
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

std::vector<ItemId> itemsOn(const BalloonLines& answer, const std::string& balloon) {
    std::vector<ItemId> items;
    for (const auto& item : answer.due->items)
        if (item.balloon == Registration(balloon))
            items.push_back(item.id);
    return items;
}

void printLine(const BalloonLine& line) {
    std::cout << std::left << std::setw(10) << line.card.balloon.text() << std::setw(10)
              << (isOut(line.card) && !line.headline.row ? "out"
                  : line.isGoverned()                    ? reckonedText(reckonedAs(line.headline.row->state))
                                                         : standingText(line.standing()));
    if (isOut(line.card))
        std::cout << outText(line.card) << (line.headline.row ? "; if it were not: " : "");
    for (const auto& item : line.outOfService)
        std::cout << item.text() << " is out of service though fitted; else: ";
    if (line.notEntered > 0)
        std::cout << notEnteredText(line) << "; else: ";
    if (const auto* row = line.headline.row) {
        if (line.isUnknown() && !line.isGoverned())
            std::cout << reckonedText(reckonedAs(row->state)) << ", ";
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
    const auto ofFleet =
        options.balloon.empty() ? unsupportedByBalloon(*record, record.on, latestOfTheFleet) : Result<LostReleases>();
    if (!ofFleet)
        return refuse(ofFleet.error());
    const auto unsupported = options.balloon.empty() ? Result<std::vector<InspectionId>>({})
                                                     : unsupportedReleasesOf(*record, itemsOn(*answer, options.balloon),
                                                                             record.on, latestReleases);
    if (!unsupported)
        return refuse(unsupported.error());
    auto rows = options.balloon.empty() ? std::vector<DueRow>() : answer->due->rows;
    const auto reviews = markUnsupportedReviews(*record, rows, record.on);
    if (!reviews)
        return refuse(reviews.error());
    if (!options.json) {
        for (const auto& line : answer->lines) {
            printLine(line);
            if (const auto lost = ofFleet->find(line.card.balloon); lost != ofFleet->end())
                for (const auto& each : lost->second)
                    std::cout << "  " << unsupportedText(each) << "\n";
        }
        for (const auto& each : *unsupported)
            std::cout << "  " << unsupportedText(each) << "\n";
        for (const auto& each : *reviews)
            std::cout << "  " << unsupportedText(each) << "\n";
        return Done;
    }
    nlohmann::ordered_json json{{"on", record.on.iso()}, {"balloons", nlohmann::ordered_json::array()}};
    for (const auto& line : answer->lines) {
        auto object = lineJson(line);
        if (const auto lost = ofFleet->find(line.card.balloon); lost != ofFleet->end())
            object["unsupported"] = unsupportedJson(lost->second);
        json["balloons"].push_back(std::move(object));
    }
    if (!options.balloon.empty())
        json["balloons"].front()["unsupported"] = unsupportedJson(*unsupported);
    if (!options.balloon.empty())
        json["balloons"].front()["unsupported_reviews"] = unsupportedJson(*reviews);
    if (const auto added = addUnread(json, *record); !added)
        return refuse(added.error());
    print(json);
    return Done;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "answers/review/supported_reviews.h"
#include "answers/supported.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"
#include "ctl/rig_up_answer.h"
#include "rules/due/reckoned.h"
#include "words/problem_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

nlohmann::ordered_json governsJson(const DueRow* row) {
    if (!row)
        return nullptr;
    return {{"item", row->item->id.text()},
            {"requirement", row->requirement->id.text()},
            {"clock", row->state.governs ? nlohmann::ordered_json(clockNameText(*row->state.governs))
                                         : nlohmann::ordered_json()},
            {"left", leftJson(governingLimit(row->state))},
            {"standing", standingText(row->state.standing)}};
}

/// What was accomplished counts until it is withdrawn, so this is to mind and no reason.
struct Lost {
    std::vector<InspectionId> releases;
    std::vector<Entry> reviews;
};

Result<Lost> lostGround(Books& books, const std::vector<ItemId>& kit, const RigUpAnswer& answer) {
    auto releases = unsupportedReleasesOf(books, kit, answer.due.on, latestReleases);
    auto rows = answer.due.rows;
    auto reviews = markUnsupportedReviews(books, rows, answer.due.on);
    if (!releases || !reviews)
        return tl::unexpected(releases ? reviews.error() : releases.error());
    return Lost{std::move(*releases), std::move(*reviews)};
}

nlohmann::ordered_json answerJson(const RigUpAnswer& asked, const Lost& lost) {
    const auto& verdict = asked.verdict;
    nlohmann::ordered_json answer{{"may_fly", verdict.mayFly},
                                  {"governs", governsJson(verdict.governs)},
                                  {"reasons", nlohmann::ordered_json::array()},
                                  {"in_tolerance", nlohmann::ordered_json::array()},
                                  {"notes", nlohmann::ordered_json::array()},
                                  {"limitations", asked.limitations}};
    for (const auto& reason : verdict.reasons)
        answer["reasons"].push_back(reasonJson(reason));
    for (const auto& use : verdict.tolerances)
        answer["in_tolerance"].push_back({{"item", use.row->item->id.text()},
                                          {"requirement", use.row->requirement->id.text()},
                                          {"clock", clockNameText(use.limit.clock)},
                                          {"left", leftJson(&use.limit)},
                                          {"text", toleranceText(use)}});
    for (const auto* note : verdict.notes)
        answer["notes"].push_back(rowJson(*note));
    answer["unsupported"] = unsupportedJson(lost.releases);
    answer["unsupported_reviews"] = unsupportedJson(lost.reviews);
    return answer;
}

/// Where the record cannot be read nobody knows that nothing stands against the flight.
int cannotBeSaid(const Problem& why, bool json) {
    const auto text = words::line(why).toStdString();
    nlohmann::ordered_json reason{{"reason", reasonName(RigUpReason::Kind::CannotSay)}, {"text", text}};
    if (json)
        print({{"may_fly", false},
               {"governs", nullptr},
               {"reasons", nlohmann::ordered_json::array({std::move(reason)})},
               {"in_tolerance", nlohmann::ordered_json::array()},
               {"notes", nlohmann::ordered_json::array()}});
    else
        std::cout << "Whether this kit may fly cannot be said:\n  " << text << "\n";
    return AnswerIsNo;
}

std::string standingWithDue(const DueRow& row) {
    const auto due = dueText(row);
    const std::string standing(reckonedText(reckonedAs(row.state)));
    return due.empty() ? standing : standing + ", due " + due;
}

void printText(const RigUpAnswer& asked, const Lost& lost) {
    const auto& verdict = asked.verdict;
    std::cout << (verdict.mayFly ? "By the record nothing stands against this flight.\n"
                                 : "By the record this kit may not fly:\n");
    for (const auto& limitation : asked.limitations)
        std::cout << "A check flight alone, within the limitation of its release: " << limitation << "\n";
    for (const auto& reason : verdict.reasons)
        std::cout << "  " << reasonText(reason) << "\n";
    if (verdict.governs)
        std::cout << "Governs: " << verdict.governs->item->id.text() << ", "
                  << words::said(verdict.governs->requirement->title).toStdString() << " ("
                  << standingWithDue(*verdict.governs) << ")\n";
    for (const auto& use : verdict.tolerances)
        std::cout << "In its tolerance: " << toleranceText(use) << "\n";
    for (const auto* note : verdict.notes)
        std::cout << "To mind: " << note->item->id.text() << ", " << words::said(note->requirement->title).toStdString()
                  << " (" << standingWithDue(*note) << ")\n";
    for (const auto& each : lost.releases)
        std::cout << "To mind: " << unsupportedText(each) << "\n";
    for (const auto& each : lost.reviews)
        std::cout << "To mind: " << unsupportedText(each) << "\n";
    std::cout << "From the record and the adopted rules only; the pilot, the licensed person, the authority and the\n"
                 "manufacturer's current instructions decide.\n";
}

}

int run(const RigUpOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    PlannedFlight flight;
    flight.use.minutes = Minutes(options.minutes);
    flight.positioning = options.positioning;
    flight.checkFlight = options.checkFlight;
    const std::vector<ItemId> kit(options.kit.begin(), options.kit.end());
    const auto answer = checkRigUp(*record, kit, record.on, flight);
    const auto lost = answer ? lostGround(*record, kit, *answer) : Result<Lost>(tl::unexpected(answer.error()));
    if (!lost)
        return lost.error().code() == Code::StoreFailed ? cannotBeSaid(lost.error(), options.json)
                                                        : refuse(lost.error());
    if (options.json)
        print(answerJson(*answer, *lost));
    else
        printText(*answer, *lost);
    return answer->verdict.mayFly ? Done : AnswerIsNo;
}

}

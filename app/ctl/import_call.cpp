// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/flight_import.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "exchange/log/flight_log.h"
#include "exchange/track/igc_flight.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"
#include "registry/flight_said.h"
#include "words/problem_words.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

namespace {

/// What a file came to, whichever form it has.
struct Found {
    std::vector<JudgedProposal> flights;
    std::vector<Problem> refused;
    std::vector<std::string> remarks;
    std::vector<LogHeading> columns; ///< of a log
    bool open = false;               ///< something must be chosen before anything can be accepted
};

std::string_view stateName(ProposalState state) {
    switch (state) {
    case ProposalState::New:
        return "new";
    case ProposalState::AlreadyLogged:
        return "already-logged";
    case ProposalState::TwiceInFile:
        return "twice-in-file";
    case ProposalState::UnknownBalloon:
        return "unknown-balloon";
    case ProposalState::UnknownItem:
        return "unknown-item";
    }
    return "";
}

std::string fateOf(const JudgedProposal& judged) {
    switch (judged.state) {
    case ProposalState::New:
        return "new";
    case ProposalState::AlreadyLogged:
        return "in the record already";
    case ProposalState::TwiceInFile:
        return "stands twice in the file";
    case ProposalState::UnknownBalloon:
        return judged.entered ? "this balloon was entered only on " + judged.entered->iso()
                              : "this balloon is not in the record";
    case ProposalState::UnknownItem:
        return "'" + judged.unknown + "' is not in the record";
    }
    return "";
}

std::string_view openChoiceText(OpenChoice choice) {
    switch (choice) {
    case OpenChoice::Columns:
        return "two columns may be meant for one thing: rename one in the header";
    case OpenChoice::DateOrder:
        return "the order of day and month cannot be told: give --date-order";
    case OpenChoice::DurationUnit:
        return "the unit of the durations cannot be told: give --duration";
    case OpenChoice::TemperatureUnit:
        return "the unit of the temperatures cannot be told: name it in the heading, e.g. (°C)";
    case OpenChoice::FuelUnit:
        return "the unit of the fuel used cannot be told: give --fuel, or name it in the heading, e.g. (kg)";
    case OpenChoice::LoadUnit:
        return "the unit of the loads cannot be told: give --load, or name it in the heading, e.g. (kg)";
    }
    return "";
}

std::vector<std::string> textsOf(const std::vector<Phrase>& remarks) {
    std::vector<std::string> texts;
    for (const auto& remark : remarks)
        texts.push_back(words::said(remark).toStdString());
    return texts;
}

bool isTrack(const std::string& file) {
    auto ending = file.size() >= 4 ? file.substr(file.size() - 4) : "";
    std::transform(ending.begin(), ending.end(), ending.begin(), [](unsigned char c) { return std::tolower(c); });
    return ending == ".igc";
}

Results<Found> fromTrack(Books& books, const std::string& bytes, const ImportOptions& options) {
    const auto balloon = options.balloon.empty() ? std::nullopt : std::optional(Registration(options.balloon));
    auto preview = previewTrack(bytes, options.file, balloon);
    if (!preview)
        return tl::unexpected(std::vector{preview.error()});
    auto judged = judge(books, std::move(preview->proposals));
    if (!judged)
        return tl::unexpected(std::vector{judged.error()});
    return Found{std::move(*judged), {}, textsOf(preview->remarks), {}, false};
}

FlightLogChoices choicesOf(const ImportOptions& options) {
    FlightLogChoices choices;
    if (!options.balloon.empty())
        choices.balloon = Registration(options.balloon);
    if (options.dateOrder == "dmy")
        choices.dateOrder = DateOrder::DayMonthYear;
    else if (options.dateOrder == "mdy")
        choices.dateOrder = DateOrder::MonthDayYear;
    else if (options.dateOrder == "ymd")
        choices.dateOrder = DateOrder::YearMonthDay;
    if (options.duration == "minutes")
        choices.bareDuration = BareDuration::Minutes;
    else if (options.duration == "hours")
        choices.bareDuration = BareDuration::Hours;
    choices.fuelUnit = amountUnitNamed(options.fuel);
    choices.loadUnit = amountUnitNamed(options.load);
    choices.timesAreUtc = options.utc;
    choices.notAfter = today();
    return choices;
}

Results<Found> fromLog(Books& books, const std::string& bytes, const ImportOptions& options) {
    auto preview = previewFlightLog(bytes, options.file, choicesOf(options));
    if (preview.refused)
        return tl::unexpected(std::vector{*preview.refused});
    auto judged = judge(books, std::move(preview.flights));
    if (!judged)
        return tl::unexpected(std::vector{judged.error()});
    Found found{std::move(*judged), std::move(preview.badRows), textsOf(preview.remarks), std::move(preview.columns),
                !preview.open.empty()};
    for (const auto choice : preview.open)
        found.remarks.emplace_back(openChoiceText(choice));
    return found;
}

/// What the log says, and what is known of where the flight comes from.
std::string noteOf(const FlightProposal& proposal) {
    auto source = words::said(sourceOf(proposal.flight)).toStdString();
    return proposal.note.empty() ? source : source.empty() ? proposal.note : proposal.note + "; " + source;
}

nlohmann::ordered_json flightJson(const JudgedProposal& judged) {
    const auto& proposal = judged.proposal;
    nlohmann::ordered_json row{{"line", proposal.line},
                               {"state", stateName(judged.state)},
                               {"balloon", proposal.balloon.text()},
                               {"on", proposal.on.iso()}};
    if (proposal.time)
        row["time"] = proposal.time->iso();
    row["minutes"] = proposal.flight.use.minutes.value();
    row["landings"] = proposal.flight.use.landings.value();
    const auto put = [&row](const char* key, const auto& amount) {
        if (amount)
            row[key] = amount->value();
    };
    put("fuel_kg", proposal.flight.fuelWeighed);
    put("fuel_l", proposal.flight.fuelRead);
    put("oat_c", proposal.flight.outside);
    put("load_kg", proposal.flight.load);
    if (proposal.flight.kit) {
        auto& kit = row["kit"] = nlohmann::ordered_json::array();
        for (const auto& item : *proposal.flight.kit)
            kit.push_back(item.text());
    }
    if (!judged.unknown.empty())
        row["unknown"] = judged.unknown;
    if (!judged.written.empty())
        row["written"] = judged.written;
    if (const auto note = noteOf(proposal); !note.empty())
        row["note"] = note;
    return row;
}

nlohmann::ordered_json answerJson(const Found& found, std::size_t posted) {
    nlohmann::ordered_json answer{{"posted", posted},
                                  {"flights", nlohmann::ordered_json::array()},
                                  {"refused", nlohmann::ordered_json::array()},
                                  {"remarks", found.remarks},
                                  {"columns", nlohmann::ordered_json::array()}};
    for (const auto& column : found.columns)
        answer["columns"].push_back({{"heading", column.text},
                                     {"read_as", column.meaning ? nlohmann::ordered_json(logColumnName(*column.meaning))
                                                                : nlohmann::ordered_json()}});
    for (const auto& flight : found.flights)
        answer["flights"].push_back(flightJson(flight));
    for (const auto& each : found.refused)
        answer["refused"].push_back({{"code", codeName(each.code())},
                                     {"line", each.where.line},
                                     {"column", each.where.key},
                                     {"message", words::message(each).toStdString()},
                                     {"mend", words::mend(each).toStdString()}});
    return answer;
}

void printText(const Found& found, std::size_t posted, bool accepted) {
    for (const auto& each : found.flights) {
        const auto& proposal = each.proposal;
        std::cout << (proposal.line > 0 ? "line " + std::to_string(proposal.line) + ": " : "") << proposal.on.iso()
                  << " " << (proposal.time ? proposal.time->iso() + " " : "") << proposal.balloon.text() << " "
                  << hoursAndMinutes(proposal.flight.use.minutes) << " h  " << fateOf(each)
                  << (each.written.empty() ? "" : ", written " + each.written) << "\n";
    }
    for (const auto& each : found.refused)
        std::cout << "refused: " << words::line(each).toStdString() << "\n";
    for (const auto& column : found.columns)
        std::cout
            << "column: " << column.text << " = "
            << (column.meaning
                    ? words::said(Term{Term::Of::LogColumn, std::string(logColumnName(*column.meaning))}).toStdString()
                    : "not read")
            << "\n";
    for (const auto& remark : found.remarks)
        std::cout << "note: " << remark << "\n";
    std::cout << (accepted ? counted(static_cast<std::int64_t>(posted), "flight", "flights") + " posted\n"
                           : "Nothing was posted. Run again with --accept to post the new flights.\n");
}

}

int run(const ImportOptions& options, const Common& common) {
    const auto bytes = contentOf(options.file);
    if (!bytes)
        return refuse(bytes.error());
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    const auto found = isTrack(options.file) ? fromTrack(*record, *bytes, options) : fromLog(*record, *bytes, options);
    if (!found)
        return refuse(found.error());
    std::size_t posted = 0;
    if (options.accept) {
        if (found->open) {
            printText(*found, 0, false);
            return refuse(Problem{UseFault::SomethingToChoose, {}, {options.file, 0, {}}});
        }
        if (!found->refused.empty() && !options.skipBad) {
            refuse(found->refused);
            return refuse(Problem{UseFault::BadRows, {}, {options.file, 0, {}}});
        }
        const auto receipt = accept(*record, *record, found->flights, options.file);
        if (!receipt)
            return refuse(receipt.error());
        posted = receipt->ids.size();
    }
    if (options.json)
        print(answerJson(*found, posted));
    else
        printText(*found, posted, options.accept);
    return Done;
}

}

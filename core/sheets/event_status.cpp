// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/event_status.h"

#include "bench/release/release_phrase.h"
#include "sheets/review_phrase.h"
#include "sheets/sheet_parts.h"

#include <utility>

namespace crownring {

namespace {

using namespace paper;

std::string madeText(const MadeDueLine& made, const Speech& in) {
    return made.item.text() + ": " + in.say(made.title) + " (" + in.say(made.source) + ")";
}

std::string stateText(const MadeDueLine& made, const Speech& in) {
    return made.done ? in.say(ReviewPhrase::EventDone, {*made.done}) : in.say(ReviewPhrase::EventOpen);
}

std::string reportsText(const EventStatusLine& line, const Speech& in) {
    std::string text;
    for (const auto& report : line.reports)
        text += (text.empty() ? "" : "\n") + report;
    if (!line.reportUntil)
        return text;
    constexpr int hour = 60;
    const auto minute =
        static_cast<int>((line.reportUntil->minutes() - Moment::startOf(line.reportUntil->on()).minutes()));
    return text + (text.empty() ? "" : "\n") +
           in.say(ReviewPhrase::EventReportUntil,
                  {line.reportUntil->on(), TimeOfDay(minute / hour, minute % hour).iso().substr(0, 5)});
}

}

paper::Document eventStatus(const Registration& balloon, CivilDate since, CivilDate on,
                            const std::vector<EventStatusLine>& lines, const Speech& in) {
    Document document;
    document.title = in.say(ReviewPhrase::EventStatus);
    document.subtitle = in.say(ReviewPhrase::EventStatusOf, {balloon, since, on});
    document.caution = in.say(ReleasePhrase::CautionText);
    if (lines.empty()) {
        document.blocks.emplace_back(Paragraph{in.say(ReviewPhrase::NoEvents), Emphasis::Plain});
        return document;
    }
    Table table;
    table.columns = {{in.say(SheetPhrase::Date), Align::Left, 1.4},
                     {in.say(ReviewPhrase::WhatHappened), Align::Left, 2},
                     {in.say(ReviewPhrase::WhatItMadeDue), Align::Left, 4},
                     {in.say(SheetPhrase::State), Align::Left, 1.4},
                     {in.say(ReviewPhrase::ReportedTo), Align::Left, 1.8}};
    for (const auto& line : lines) {
        std::vector<std::string> row{in.say(line.event.stamp.at.on()),
                                     eventText(line.event, in) + " (" + line.subject + ")",
                                     in.say(ReviewPhrase::MadeNothingDue), "", reportsText(line, in)};
        if (line.madeDue.empty())
            table.rows.push_back(row);
        for (const auto& made : line.madeDue) {
            row[2] = madeText(made, in);
            row[3] = stateText(made, in);
            table.rows.push_back(std::exchange(row, std::vector<std::string>(table.columns.size())));
        }
    }
    document.blocks.emplace_back(std::move(table));
    document.blocks.emplace_back(Paragraph{in.say(ReviewPhrase::EventStatusRests), Emphasis::Quiet});
    return document;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/known_events.h"
#include "sheets/review_phrase.h"
#include "sheets/sheet_parts.h"

namespace crownring {

using namespace paper;

std::string eventText(const Occurrence& event, const Speech& in) {
    auto text = in.say(eventTerm(event.event));
    if (event.hottest)
        text += ", " + in.say(InUnit{event.hottest->value(), "degC"});
    if (event.lasted)
        text += ", " + hoursText(event.lasted, in);
    return text;
}

std::string eventsText(const BenchFile& file, const Speech& in) {
    std::string text;
    for (const auto& each : file.events)
        text += (text.empty() ? "" : "\n") + in.say(each.event.stamp.at.on()) + ": " + eventText(each.event, in) +
                "; " + in.say(ReviewPhrase::MadeDue, {workText(file, each.madeDue, in)});
    return text;
}

void addEvents(Document& document, const BenchFile& file, const Speech& in) {
    if (file.events.empty())
        return;
    Table table;
    table.columns = {{in.say(SheetPhrase::Date), Align::Left, 1.2},
                     {in.say(ReviewPhrase::WhatHappened), Align::Left, 2},
                     {in.say(ReviewPhrase::WhatItMadeDue), Align::Left, 4}};
    for (const auto& each : file.events)
        table.rows.push_back(
            {in.say(each.event.stamp.at.on()), eventText(each.event, in), workText(file, each.madeDue, in)});
    document.blocks.emplace_back(Heading{2, in.say(ReviewPhrase::WhatHappened)});
    document.blocks.emplace_back(std::move(table));
}

}

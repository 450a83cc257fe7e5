// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "sheets/review_phrase.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

namespace crownring {

using namespace paper;

paper::Document logbookPage(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::LogbookEntry, in);
    const auto facts = factsOf(file);
    addWhatItIs(document, file, in);
    addSince(document, file, in);
    addEarlierRelease(document, file, in);
    Facts head;
    head.columns = 2;
    head.labelShare = 0.34;
    head.small = true;
    head.facts = {{in.say(SheetPhrase::Date), facts.date ? in.say(*facts.date) : in.say(SheetPhrase::NotSigned)},
                  {in.say(SheetPhrase::Visit), in.say(titleOfVisit(file))},
                  {in.say(SheetPhrase::TotalTime), hoursText(facts.totalTime, in)},
                  {in.say(SheetPhrase::HighestTemperature),
                   facts.highestTemperature ? in.say(*facts.highestTemperature) : in.say(SheetPhrase::NotRead)}};
    if (isLoose(facts)) { // no envelope's time is that of a burner on the table
        head.facts.resize(2);
        for (const auto& item : facts.items)
            head.facts.push_back(
                {in.say(SheetPhrase::TimeInService), in.say(item.title) + ": " + hoursText(item.time, in)});
    }
    for (const auto& [label, value] :
         {std::pair(SheetPhrase::OrderNumber, facts.order), std::pair(SheetPhrase::OwnerOf, facts.owner),
          std::pair(SheetPhrase::OperatorOf, facts.operatedBy)})
        if (!value.empty())
            head.facts.push_back({in.say(label), value});
    document.blocks.emplace_back(std::move(head));
    Facts rows{{}, 1, 0.16, true};
    const auto add = [&](SheetPhrase label, const std::vector<Argument>& said) {
        std::string lines;
        for (const auto& each : said)
            lines += (lines.empty() ? "" : label == SheetPhrase::DataUsed ? "; " : "\n") + in.say(each);
        if (!lines.empty())
            rows.facts.push_back({in.say(label), lines});
    };
    if (const auto events = eventsText(file, in); !events.empty())
        rows.facts.push_back({in.say(ReviewPhrase::WhatHappened), events});
    add(SheetPhrase::WorkOf, workOf(facts));
    add(SheetPhrase::DataUsed, {facts.manuals.begin(), facts.manuals.end()});
    if (facts.outcome != Outcome::Abandoned)
        add(SheetPhrase::NotDone, {workText(file, workNotDone(file), in)});
    add(SheetPhrase::OpenDefects, {openMinorText(file, facts.outcome, in)});
    add(SheetPhrase::Unairworthy, facts.discrepancies);
    add(SheetPhrase::NotCoveredShort, facts.excepted);
    add(SheetPhrase::DeferredShort, facts.deferred);
    add(SheetPhrase::Limits, limitsOfFlight(facts.limitations, facts.within));
    document.blocks.emplace_back(std::move(rows));
    addStatement(document, file, facts, in);
    document.blocks.emplace_back(signatureOf(file, in));
    return document;
}

}

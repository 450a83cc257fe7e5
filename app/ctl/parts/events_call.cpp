// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "answers/events/told_events.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/parts/paper_output.h"
#include "print/status/status_papers.h"
#include "words/moment_words.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

template <class Value>
Json valueOrNull(const std::optional<Value>& value) {
    return value ? Json(value->value()) : Json();
}

Json madeDueJson(const DueRow& row) {
    return {{"item", row.item->id.text()},
            {"requirement", row.requirement->id.text()},
            {"title", words::said(row.requirement->title).toStdString()},
            {"source", words::said(row.requirement->source).toStdString()},
            {"standing", standingText(row.state.standing)},
            {"blocks", row.requirement->blocks == Blocks::Flight ? "flight" : "filling"}};
}

Json reportJson(const ToldEvent& told) {
    Json made = Json::array();
    for (const auto& report : told.reports) {
        const auto& said = std::get<EventNotified>(report.body);
        made.push_back({{"on", report.on.iso()}, {"to", informedName(said.to)}, {"ref", said.ref}});
    }
    if (!told.reportUntil && made.empty())
        return {};
    return {{"until", told.reportUntil ? Json(words::momentSaid(*told.reportUntil).toStdString()) : Json()},
            {"rule", reportRule},
            {"holder_rule", holderRule},
            {"made", std::move(made)}};
}

Json eventJson(const ToldEvent& told) {
    const auto& event = std::get<EventReported>(told.entry.body);
    const auto* balloon = balloonOf(event);
    const auto* item = itemOf(event);
    Json made = Json::array();
    for (const auto* row : told.rows)
        made.push_back(madeDueJson(*row));
    Json answered = Json::array();
    for (const auto& each : told.answered)
        answered.push_back({{"item", each.row->item->id.text()},
                            {"requirement", each.row->requirement->id.text()},
                            {"done", each.by->stamp.at.on().iso()},
                            {"evidence", evidenceName(each.by->evidence)}});
    return {{"entry", told.entry.id.text()},
            {"on", told.entry.on.iso()},
            {"time", told.entry.time ? Json(told.entry.time->iso()) : Json()},
            {"balloon", balloon ? Json(balloon->text()) : Json()},
            {"item", item ? Json(item->text()) : Json()},
            {"event", event.event},
            {"temp_c", valueOrNull(event.hottest)},
            {"minutes", valueOrNull(event.lasted)},
            {"altitude_m", valueOrNull(event.altitude)},
            {"made_due", std::move(made)},
            {"answered", std::move(answered)},
            {"report", reportJson(told)}};
}

void printEvent(const ToldEvent& told, const words::Titles& titles) {
    std::cout << told.entry.on.iso() << "  " << plainly(words::Sentences::of(told.entry, titles)) << "\n";
    for (const auto* row : told.rows)
        std::cout << "  due: " << row->item->id.text() << ", " << plainly(words::said(row->requirement->title)) << " ("
                  << plainly(words::said(row->requirement->source)) << ")\n";
    for (const auto& report : told.reports)
        std::cout << "  " << report.on.iso() << "  " << plainly(words::Sentences::of(report, titles)) << "\n";
    if (told.reportUntil && !told.isTold(Informed::Authority))
        std::cout << "  if it is to be reported: by " << words::momentSaid(*told.reportUntil).toStdString() << ", "
                  << reportRule << "; no report is in the record\n";
}

template <class Range>
auto pointersTo(const Range& range) {
    std::vector<decltype(&*range.begin())> pointers;
    for (const auto& each : range)
        pointers.push_back(&each);
    return pointers;
}

}

int run(const EventsOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto since = addDays(record.on, -options.days);
    if (!options.paper.to.empty())
        return writePaper(print::eventStatusOf(*record, *record, Registration(options.balloon), since, record.on),
                          options.paper);
    const auto list = due(*record, scopeOf(options.balloon), record.on);
    if (!list)
        return refuse(list.error());
    const auto events = toldEvents(*record, *record, pointersTo(list->items), pointersTo(list->rows), since, record.on);
    if (!events)
        return refuse(events.error());
    if (options.json) {
        Json rows = Json::array();
        for (const auto& each : *events)
            rows.push_back(eventJson(each));
        Json answer{{"on", record.on.iso()}, {"rows", std::move(rows)}};
        if (const auto added = addUnread(answer, *record); !added)
            return refuse(added.error());
        print(answer);
        return Done;
    }
    const auto titles = titlesIn(*record);
    for (const auto& each : *events)
        printEvent(each, titles);
    if (events->empty())
        std::cout << "No event is reported.\n";
    return Done;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/status/status_papers.h"

#include "answers/directives/told.h"
#include "answers/due.h"
#include "answers/events/told_events.h"
#include "measure/duration_text.h"
#include "sheets/directive_status.h"
#include "sheets/event_status.h"
#include "words/sentences.h"
#include "words/spoken.h"

#include <algorithm>

namespace crownring::print {

namespace {

Argument nextOf(const std::optional<LimitState>& next) {
    if (!next)
        return {};
    if (const auto* reach = next->calendar())
        return reach->due;
    const auto* use = next->usage();
    if (!use)
        return {};
    return next->clock == ClockName::Minutes ? Argument(hoursAndMinutes(Minutes(use->due.value())) + " h")
                                             : Argument(use->due.value());
}

DirectiveStatusLine directiveLine(const DirectiveRow& row) {
    const auto& issued = row.directive;
    DirectiveStatusLine line{issued.directive,
                             issued.revision,
                             issued.title,
                             issued.issuer,
                             issued.effective,
                             issued.recommended,
                             row.item->id,
                             std::string(standingOf(row)),
                             row.atOnce,
                             whyOf(row),
                             {},
                             {},
                             {},
                             {},
                             nextOf(row.state.next)};
    if (!row.done.empty()) {
        const auto& done = row.done.back();
        line.method = done.said.body.method;
        line.by = done.said.body.amoc;
        line.on = done.said.stamp.at.on();
        line.hours = done.clock.minutes;
    }
    return line;
}

template <class Each>
std::vector<const Each*> pointersTo(const std::vector<Each>& all) {
    std::vector<const Each*> pointers;
    for (const auto& each : all)
        pointers.push_back(&each);
    return pointers;
}

MadeDueLine madeDue(const DueRow& row, std::optional<CivilDate> done) {
    return {row.item->id, row.requirement->title, row.requirement->source, done};
}

EventStatusLine eventLine(const ToldEvent& told) {
    const auto& event = std::get<EventReported>(told.entry.body);
    EventStatusLine line;
    line.event = {event.event, stampOf(told.entry), event.hottest, event.lasted};
    line.subject = std::visit([](const auto& name) { return name.text(); }, event.subject);
    for (const auto* row : told.rows)
        line.madeDue.push_back(madeDue(*row, std::nullopt));
    for (const auto& each : told.answered)
        line.madeDue.push_back(madeDue(*each.row, each.by->stamp.at.on()));
    for (const auto& report : told.reports)
        line.reports.push_back(report.on.iso() + ": " + words::Sentences::of(report, {}).toStdString());
    if (!told.isTold(Informed::Authority))
        line.reportUntil = told.reportUntil;
    return line;
}

const words::Spoken& language() {
    static const words::Spoken spoken;
    return spoken;
}

}

Result<paper::Document> directiveStatusOf(Books& books, const Registration& balloon, CivilDate on) {
    auto facts = books.facts({balloon, {}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    std::erase_if(*facts, [](const ItemFacts& item) { return item.out.has_value(); });
    auto rows = directiveRows(books, *facts, {on, {}, {}, true});
    if (!rows)
        return tl::unexpected(rows.error());
    std::ranges::stable_sort(*rows, {}, directivePlace);
    std::vector<DirectiveStatusLine> lines;
    for (const auto& row : *rows)
        lines.push_back(directiveLine(row));
    return directiveStatus(balloon, on, lines, language());
}

Result<paper::Document> eventStatusOf(Books& books, Journal& journal, const Registration& balloon, CivilDate since,
                                      CivilDate on) {
    const auto list = due(books, {balloon, {}}, on);
    if (!list)
        return tl::unexpected(list.error());
    const auto events = toldEvents(books, journal, pointersTo(list->items), pointersTo(list->rows), since, on);
    if (!events)
        return tl::unexpected(events.error());
    std::vector<EventStatusLine> lines;
    for (const auto& each : *events)
        lines.push_back(eventLine(each));
    return eventStatus(balloon, since, on, lines, language());
}

}

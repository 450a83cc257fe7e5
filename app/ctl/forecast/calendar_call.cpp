// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/due.h"
#include "answers/forecast/projected.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "exchange/calendar/calendar_text.h"
#include "problem/faults/use_fault.h"
#include "rules/due/reckoned.h"
#include "words/bench_words.h"
#include "words/sentence.h"
#include "words/words.h"
#include "writing/write_out.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <tuple>

namespace crownring::ctl {

namespace {

std::string itemText(const ItemFacts& item) {
    auto text = words::Words::kind(item.kind).toStdString() + " " + item.id.text();
    return item.balloon ? item.balloon->text() + ", " + text : text;
}

/// The day on which it stands: the one that is foretold with even chance, or where it lapsed already the day that it
/// was due; what has no day of its own, and will not wait, stands on the day asked.
std::optional<CivilDate> dayOf(const DueRow& row, const std::optional<DateBand>& band, CivilDate on) {
    if (band)
        return band->p50;
    switch (reckonedAs(row.state)) {
    case Reckoned::Spent:
    case Reckoned::Lapsed:
    case Reckoned::Tolerance:
        return std::min(words::calendarDue(row.state).value_or(on), on);
    case Reckoned::Unproven:
        return on;
    default:
        return words::calendarDue(row.state);
    }
}

std::string descriptionOf(const DueRow& row, const std::optional<DateBand>& band) {
    auto text =
        words::said(row.requirement->source).toStdString() + "\n" + words::Words::standing(row.state).toStdString();
    for (const auto& limit : row.state.limits)
        if (limit.isProven())
            text += "\n" + plainly(words::Words::due(limit)) + ": " + plainly(words::Words::left(limit));
    if (band && isLimitedByUse(row.state) && band->p10 != band->p90)
        text += "\nForetold: between " + (band->p10 ? band->p10->iso() : "later than is foretold") + " and " +
                (band->p90 ? band->p90->iso() : "later than is foretold") + ", in eight cases of ten.";
    return text + "\nCrownring keeps records and computes: it is no release to service.";
}

void addDues(std::vector<CalendarEvent>& events, const DueList& list, const std::vector<std::optional<DateBand>>& bands,
             CivilDate until) {
    for (std::size_t i = 0; i < list.rows.size(); ++i) {
        const auto& row = list.rows[i];
        const auto reckoned = reckonedAs(row.state);
        if (reckoned == Reckoned::Closed || reckoned == Reckoned::NotRequired)
            continue;
        const auto day = dayOf(row, bands[i], list.on);
        if (!day || *day > until)
            continue;
        const std::array<std::string_view, 3> parts{"due", row.item->id.text(), row.requirement->id.text()};
        CalendarEvent event{calendarUid(parts), *day, *day,
                            words::said(row.requirement->title).toStdString() + " (" + itemText(*row.item) + ")"};
        event.description = descriptionOf(row, bands[i]);
        event.categories = {"due"};
        if (row.requirement->force != Force::Mandatory)
            event.categories.emplace_back("recommended");
        events.push_back(std::move(event));
    }
}

Result<void> addVisits(std::vector<CalendarEvent>& events, Books& books, const std::string& balloon, CivilDate on) {
    const auto cards = inspectionsOn(books, on);
    if (!cards)
        return tl::unexpected(cards.error());
    for (const auto& card : *cards) {
        if (card.outcome || (!balloon.empty() && (!card.balloon || card.balloon->text() != balloon)))
            continue;
        const std::array<std::string_view, 2> parts{"visit", card.inspection.text()};
        std::string of;
        for (const auto& item : card.items)
            of += (of.empty() ? "" : ", ") + item.text();
        events.push_back({calendarUid(parts),
                          card.opened,
                          on,
                          words::BenchWords::visit(card.visit).toStdString() + " " + card.inspection.text() +
                              (card.balloon ? " (" + card.balloon->text() + ")" : std::string()),
                          "Open since " + card.opened.iso() + ": " + of,
                          {"visit"},
                          true});
    }
    return {};
}

}

int run(const CalendarOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto until = addMonths(record.on, options.months, DayRule::Same);
    if (until.year() > lastCalendarYear)
        return refuse(Problem{UseFault::DaysNotAhead, {record.on, until, UseAhead::horizonYears}});
    const auto scope = scopeOf(options.balloon);
    const auto list = due(*record, scope, record.on);
    if (!list)
        return refuse(list.error());
    const auto bands = projected(*record, *list, std::min(record.on, today()));
    if (!bands)
        return refuse(bands.error());
    std::vector<CalendarEvent> events;
    addDues(events, *list, *bands, until);
    if (const auto added = addVisits(events, *record, options.balloon, record.on); !added)
        return refuse(added.error());
    std::ranges::sort(events, {}, [](const CalendarEvent& event) { return std::tie(event.first, event.uid); });
    const auto name = options.balloon.empty() ? std::string("Crownring") : "Crownring " + options.balloon;
    const auto written =
        writeOut(options.out, calendarText(events, name, record.on), options.force ? Replace::Asked : Replace::Never);
    if (!written)
        return refuse(written.error());
    print({{"events", events.size()}, {"out", options.out}});
    return Done;
}

}

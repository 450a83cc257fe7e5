// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/due.h"
#include "answers/forecast/fabric_ahead.h"
#include "answers/forecast/planned.h"
#include "answers/forecast/projected.h"
#include "answers/forecast/wear_ahead.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "exchange/calendar/calendar_text.h"
#include "measure/duration_text.h"
#include "paper/csv.h"
#include "print/ahead/ahead_papers.h"
#include "print/pdf.h"
#include "problem/faults/use_fault.h"
#include "registry/reading_said.h"
#include "rules/due/reckoned.h"
#include "words/bench_words.h"
#include "words/sentence.h"
#include "words/words.h"
#include "writing/write_out.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace crownring::ctl {

namespace {

std::string itemText(const ItemFacts& item) {
    auto text = words::Words::kind(item.kind).toStdString() + " " + item.id.text();
    return item.balloon ? item.balloon->text() + ", " + text : text;
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
        const auto day = print::dayOfDue(row, bands[i], list.on);
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

std::string foretold(const std::string& by, const DateBand& met) {
    const auto dayOf = [](const std::optional<CivilDate>& day) {
        return day ? day->iso() : std::string("later than is foretold");
    };
    return "Foretold by " + by + " and how it is flown: met between " + dayOf(met.p10) + " and " + dayOf(met.p90) +
           ", in eight cases of ten, about " + dayOf(met.p50) + ".";
}

/// On the first day that its limit may be met.
void addWear(std::vector<CalendarEvent>& events, const std::vector<WearAhead>& worn) {
    for (const auto& each : worn) {
        const auto& series = each.series;
        const auto name = series.quantity + "/" + placeSlug(series.place);
        const std::array<std::string_view, 3> parts{"wear", each.item->id.text(), name};
        events.push_back({calendarUid(parts),
                          *each.met.p10,
                          *each.met.p10,
                          words::said(inPlace(quantityTerm(series.quantity), series.place)).toStdString() +
                              " may meet its limit (" + itemText(*each.item) + ")",
                          series.source + "\n" + foretold("its readings", each.met) +
                              "\nA forecast plans work; what counts is a reading beyond the limit.",
                          {"forecast", "wear"},
                          false});
    }
}

/// On the first day that its limit may be met.
void addFabric(std::vector<CalendarEvent>& events, const std::vector<FabricAhead>& fabrics) {
    for (const auto& each : fabrics) {
        const std::array<std::string_view, 3> parts{"fabric", each.item->id.text(), each.quantity};
        events.push_back({calendarUid(parts),
                          *each.met.p10,
                          *each.met.p10,
                          words::said(quantityTerm(each.quantity)).toStdString() + " may meet its limit (" +
                              itemText(*each.item) + ")",
                          each.source + "\n" + foretold("the readings of the fleet", each.met) +
                              " That its mean is beyond it now has a chance of " +
                              std::to_string(std::lround(100 * each.already)) +
                              " %; the days are those where it is not.\nA forecast plans tests and takes the place of "
                              "none.",
                          {"forecast", "fabric"},
                          false});
    }
}

/// By the fits of all that is followed of fabric, where an envelope is asked for.
Result<std::vector<FabricAhead>> fabricsAhead(Books& books, const DueList& list, CivilDate known) {
    const auto isFollowed = [](const DueRow& row) { return row.item->kind == ItemKind::Envelope; };
    if (std::ranges::none_of(list.rows, isFollowed))
        return std::vector<FabricAhead>{};
    const auto book = typeBook(books, list.on);
    if (!book)
        return tl::unexpected(book.error());
    std::vector<SharedFit> fits;
    for (const auto& channel : channelsOf(*book)) {
        auto record = fabricRecord(books, channel, list.on);
        if (!record)
            return tl::unexpected(record.error());
        if (record->readings.empty())
            continue;
        auto fit = fitOf(std::make_shared<const FabricRecord>(std::move(*record)));
        if (!fit)
            return tl::unexpected(fit.error());
        fits.push_back(std::make_shared<const FabricFit>(std::move(**fit)));
    }
    return fabricAhead(books, list, fits, known);
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

void addPlanned(std::vector<CalendarEvent>& events, const Planned& planned, const std::string& balloon) {
    const auto isOf = [&](const Registration& of) { return balloon.empty() || of.text() == balloon; };
    for (const auto& ahead : planned.visits) {
        const auto& visit = ahead.visit;
        if (!isOf(visit.balloon))
            continue;
        std::string covers = "Planned";
        for (const auto& work : visit.covers)
            covers += "\n" + work.requirement.text() + " of " + work.item.text();
        const std::array<std::string_view, 2> parts{"visit-planned", ahead.stated.id.text()};
        events.push_back({calendarUid(parts),
                          visit.from,
                          visit.to,
                          visit.balloon.text() + " at " + visit.station,
                          std::move(covers),
                          {"visit", "planned"},
                          true});
    }
    for (const auto& ahead : planned.flights) {
        if (!isOf(ahead.flight.balloon))
            continue;
        const std::array<std::string_view, 2> parts{"flight-planned", ahead.at.id.text()};
        const auto on = ahead.at.at.on();
        events.push_back({calendarUid(parts),
                          on,
                          on,
                          ahead.flight.balloon.text() + " flies " + hoursAndMinutes(ahead.flight.use.minutes) + " h",
                          "Planned",
                          {"flight", "planned"},
                          false});
    }
}

/// What is asked for, by the ending of the file's name.
bool endsIn(const std::string& file, std::string_view ending) { return file.ends_with(ending); }

/// The months' sheet or table, where that is asked for.
std::optional<Result<void>> writtenAsPaper(const CalendarOptions& options, const DueList& list,
                                           const std::vector<std::optional<DateBand>>& bands, Planned planned) {
    const bool isTable = endsIn(options.out, ".csv");
    if (!isTable && !endsIn(options.out, ".pdf"))
        return std::nullopt;
    print::MonthsAhead ahead;
    ahead.on = list.on;
    ahead.first = addDays(list.on, 1 - list.on.day());
    ahead.months = options.months;
    if (!options.balloon.empty())
        ahead.balloon = Registration(options.balloon);
    for (std::size_t i = 0; i < list.rows.size(); ++i) {
        const auto reckoned = reckonedAs(list.rows[i].state);
        if (reckoned != Reckoned::Closed && reckoned != Reckoned::NotRequired)
            ahead.dues.push_back({&list.rows[i], bands[i]});
    }
    ahead.visits = std::move(planned.visits);
    ahead.flights = std::move(planned.flights);
    const auto replace = options.force ? Replace::Asked : Replace::Never;
    if (isTable)
        return writeOut(options.out, paper::csv(print::aheadTable(ahead)), replace);
    return print::writePdf(print::monthSheet(ahead),
                           options.paper == "letter" ? print::PageFormat::Letter : print::PageFormat::A4, options.out,
                           replace);
}

}

int run(const CalendarOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto until = addMonths(record.on, options.months, DayRule::Same);
    if (until.year() > lastCalendarYear)
        return refuse(Problem{UseFault::DaysNotAhead, {record.on, until, UseAhead::horizonYears}});
    const auto known = std::min(record.on, today());
    const auto scope = scopeOf(options.balloon);
    const auto list = due(*record, scope, record.on);
    if (!list)
        return refuse(list.error());
    const auto bands = projected(*record, *list, known);
    if (!bands)
        return refuse(bands.error());
    auto planned = plannedFrom(*record, record.on, known);
    if (!planned)
        return refuse(planned.error());
    if (const auto paper = writtenAsPaper(options, *list, *bands, *planned)) {
        if (!*paper)
            return refuse(paper->error());
        print({{"out", options.out}});
        return Done;
    }
    std::vector<CalendarEvent> events;
    addDues(events, *list, *bands, until);
    const auto worn = wearAhead(*record, *list, known);
    if (!worn)
        return refuse(worn.error());
    addWear(events, *worn);
    if (!options.withoutFabric) {
        const auto fabrics = fabricsAhead(*record, *list, known);
        if (!fabrics)
            return refuse(fabrics.error());
        addFabric(events, *fabrics);
    }
    if (const auto added = addVisits(events, *record, options.balloon, record.on); !added)
        return refuse(added.error());
    addPlanned(events, *planned, options.balloon);
    std::erase_if(events, [&](const CalendarEvent& event) { return until < event.first; });
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

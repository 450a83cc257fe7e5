// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/ahead/ahead_papers.h"

#include "measure/duration_text.h"
#include "rules/due/reckoned.h"
#include "words/ahead/visit_words.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDate>
#include <QtCore/QLocale>

#include <algorithm>
#include <iterator>
#include <utility>

namespace crownring::print {

using namespace words;

namespace {

constexpr int daysOfWeek = 7;

/// Whose words these are.
struct AheadPapers {
    Q_DECLARE_TR_FUNCTIONS(AheadPapers)
};
std::string text(const QString& words) { return words.toStdString(); }
QString asText(const std::string& text) { return QString::fromStdString(text); }
QDate dateOf(CivilDate day) { return {day.year(), day.month(), day.day()}; }
std::string monthName(CivilDate month) {
    return QLocale().toString(dateOf(month), QStringLiteral("MMMM yyyy")).toStdString();
}

/// One thing on its days.
struct Event {
    CivilDate first, last;
    QString sort, balloon, item, what;
    QString days;   ///< in words
    QString source; ///< where it comes from
};

Event eventOf(const VisitAhead& ahead) {
    const auto& visit = ahead.visit;
    QStringList works;
    for (const auto& work : visit.covers)
        works += AheadPapers::tr("%1 of %2").arg(asText(work.requirement.text()), asText(work.item.text()));
    return {visit.from,
            visit.to,
            AheadPapers::tr("visit"),
            asText(visit.balloon.text()),
            {},
            AheadPapers::tr("Visit to %1").arg(asText(visit.station)),
            asText(visit.from.iso() + (visit.from == visit.to ? "" : " – " + visit.to.iso())),
            works.join(QStringLiteral(", "))};
}

Event eventOf(const FlightAhead& ahead) {
    const auto on = ahead.at.at.on();
    return {on,
            on,
            AheadPapers::tr("flight"),
            asText(ahead.flight.balloon.text()),
            {},
            AheadPapers::tr("Flight, %1").arg(Words::hours(ahead.flight.use.minutes.value())),
            asText(on.iso()),
            {}};
}

Event eventOf(const DueAhead& due, CivilDate day) {
    const auto& row = *due.row;
    const auto days = VisitWords::band(due.band);
    return {day,
            day,
            AheadPapers::tr("due"),
            row.item->balloon ? asText(row.item->balloon->text()) : AheadPapers::tr("pool"),
            asText(row.item->id.text()),
            said(row.requirement->title),
            days.isEmpty() ? Words::standing(row.state) : days,
            said(row.requirement->source)};
}

/// By day, what was due before these months and is not done.
std::vector<Event> dueBefore(const MonthsAhead& ahead) {
    std::vector<Event> events;
    for (const auto& due : ahead.dues)
        if (const auto day = dayOfDue(*due.row, due.band, ahead.on);
            day && *day < ahead.first && (!ahead.balloon || due.row->item->balloon == ahead.balloon))
            events.push_back(eventOf(due, *day));
    std::ranges::stable_sort(events, {}, &Event::first);
    return events;
}

/// By day, visits before flights before dues.
std::vector<Event> eventsOf(const MonthsAhead& ahead) {
    const auto end = addMonths(ahead.first, ahead.months, DayRule::Same);
    const auto isOf = [&](const std::optional<Registration>& balloon) {
        return !ahead.balloon || balloon == ahead.balloon;
    };
    std::vector<Event> events;
    const auto add = [&](Event event) {
        if (event.first < end && ahead.first <= event.last)
            events.push_back(std::move(event));
    };
    for (const auto& visit : ahead.visits)
        if (isOf(visit.visit.balloon))
            add(eventOf(visit));
    for (const auto& flight : ahead.flights)
        if (isOf(flight.flight.balloon))
            add(eventOf(flight));
    for (const auto& due : ahead.dues)
        if (const auto day = dayOfDue(*due.row, due.band, ahead.on); day && isOf(due.row->item->balloon))
            add(eventOf(due, *day));
    std::ranges::stable_sort(events, {}, &Event::first);
    return events;
}

/// What is due of several items of one balloon alike, on one line.
std::vector<Event> merged(const std::vector<Event>& events) {
    std::vector<Event> lines;
    for (const auto& event : events) {
        const auto same = std::ranges::find_if(lines, [&](const Event& line) {
            return !event.item.isEmpty() && line.first == event.first && line.balloon == event.balloon &&
                   line.what == event.what && line.days == event.days;
        });
        if (same == lines.end())
            lines.push_back(event);
        else
            same->item += QStringLiteral(", ") + event.item;
    }
    return lines;
}

/// What stands in the cell of a day: visits and flights each, dues by their balloon.
QStringList inCell(CivilDate day, const std::vector<Event>& events) {
    QStringList lines;
    std::vector<std::pair<QString, int>> due;
    for (const auto& event : events) {
        if (day < event.first || event.last < day)
            continue;
        if (event.item.isEmpty()) {
            lines += event.balloon + QStringLiteral(": ") + event.what;
            continue;
        }
        const auto known = std::ranges::find(due, event.balloon, &std::pair<QString, int>::first);
        if (known == due.end())
            due.emplace_back(event.balloon, 1);
        else
            ++known->second;
    }
    for (const auto& [balloon, count] : due)
        lines += AheadPapers::tr("%1: %2 due").arg(balloon).arg(count);
    return lines;
}

paper::Table listOf(const std::vector<Event>& events) {
    paper::Table list;
    list.columns = {{text(AheadPapers::tr("Days")), paper::Align::Left, 2},
                    {text(AheadPapers::tr("Balloon")), paper::Align::Left, 1},
                    {text(AheadPapers::tr("What")), paper::Align::Left, 2.4},
                    {text(AheadPapers::tr("Items")), paper::Align::Left, 2.2}};
    for (const auto& event : merged(events))
        list.rows.push_back({event.days.toStdString(), event.balloon.toStdString(), event.what.toStdString(),
                             event.item.toStdString()});
    return list;
}

/// Weeks of the month, a day a cell; what stands on more than a few things says how many more there are.
paper::Table weeksOf(CivilDate month, const std::vector<Event>& events) {
    constexpr qsizetype mostInCell = 6;
    paper::Table table;
    const QLocale locale;
    for (int day = 1; day <= daysOfWeek; ++day)
        table.columns.push_back({locale.dayName(day, QLocale::ShortFormat).toStdString()});
    const auto last = endOfMonth(month);
    auto monday = addDays(month, 1 - dateOf(month).dayOfWeek());
    for (; monday <= last; monday = addDays(monday, daysOfWeek)) {
        std::vector<std::string> row;
        for (int at = 0; at < daysOfWeek; ++at) {
            const auto day = addDays(monday, at);
            if (day < month || last < day) {
                row.emplace_back();
                continue;
            }
            auto cell = std::to_string(day.day());
            const auto lines = inCell(day, events);
            for (qsizetype nth = 0; nth < std::min(lines.size(), mostInCell); ++nth)
                cell += "\n" + text(lines[nth]);
            if (lines.size() > mostInCell)
                cell += "\n" + text(AheadPapers::tr("and %1 more").arg(lines.size() - mostInCell));
            row.push_back(std::move(cell));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::string caution() {
    return AheadPapers::AheadPapers::
        tr("Days that use decides are forecasts. Crownring keeps records and computes: it is no release to service; "
           "the licensed person, the competent authority and the manufacturer's current instructions decide.")
            .toStdString();
}

std::string hoursOf(const Figures& clock) { return clock.minutes ? hoursAndMinutes(*clock.minutes) : "?"; }

}

std::optional<CivilDate> dayOfDue(const DueRow& row, const std::optional<DateBand>& band, CivilDate on) {
    if (band)
        return band->p50;
    switch (reckonedAs(row.state)) {
    case Reckoned::Spent:
    case Reckoned::Lapsed:
    case Reckoned::Tolerance:
        return std::min(calendarDue(row.state).value_or(on), on);
    case Reckoned::Unproven:
        return on;
    default:
        return calendarDue(row.state);
    }
}

paper::Table aheadTable(const MonthsAhead& ahead) {
    paper::Table table;
    for (const auto* column :
         {QT_TRANSLATE_NOOP("AheadPapers", "First day"), QT_TRANSLATE_NOOP("AheadPapers", "Last day"),
          QT_TRANSLATE_NOOP("AheadPapers", "Sort"), QT_TRANSLATE_NOOP("AheadPapers", "Balloon"),
          QT_TRANSLATE_NOOP("AheadPapers", "Item"), QT_TRANSLATE_NOOP("AheadPapers", "What"),
          QT_TRANSLATE_NOOP("AheadPapers", "Days"), QT_TRANSLATE_NOOP("AheadPapers", "From")})
        table.columns.push_back({text(AheadPapers::tr(column))});
    auto events = dueBefore(ahead);
    std::ranges::move(eventsOf(ahead), std::back_inserter(events));
    for (const auto& event : events)
        table.rows.push_back({event.first.iso(), event.last.iso(), event.sort.toStdString(),
                              event.balloon.toStdString(), event.item.toStdString(), event.what.toStdString(),
                              event.days.toStdString(), event.source.toStdString()});
    return table;
}

paper::Document monthSheet(const MonthsAhead& ahead) {
    paper::Document document;
    document.title = ahead.months == 1
                         ? monthName(ahead.first)
                         : AheadPapers::tr("%1 to %2")
                               .arg(asText(monthName(ahead.first)),
                                    asText(monthName(addMonths(ahead.first, ahead.months - 1, DayRule::Same))))
                               .toStdString();
    document.subtitle =
        (ahead.balloon ? AheadPapers::tr("Visits, flights and dues of %1").arg(asText(ahead.balloon->text()))
                       : AheadPapers::tr("Visits, flights and dues of all balloons"))
            .toStdString();
    document.recordId = AheadPapers::tr("as of %1").arg(asText(ahead.on.iso())).toStdString();
    document.caution = caution();
    const auto before = dueBefore(ahead);
    if (!before.empty()) {
        document.blocks.emplace_back(
            paper::Heading{1, text(AheadPapers::tr("Due before %1 and not done").arg(asText(monthName(ahead.first))))});
        document.blocks.emplace_back(listOf(before));
    }
    for (int nth = 0; nth < ahead.months; ++nth) {
        auto month = ahead;
        month.first = addMonths(ahead.first, nth, DayRule::Same);
        month.months = 1;
        const auto events = eventsOf(month);
        if (nth > 0 || !before.empty())
            document.blocks.emplace_back(paper::PageBreak{});
        if (ahead.months > 1 || !before.empty())
            document.blocks.emplace_back(paper::Heading{1, monthName(month.first)});
        document.blocks.emplace_back(weeksOf(month.first, events));
        if (events.empty())
            document.blocks.emplace_back(
                paper::Paragraph{text(AheadPapers::tr("Nothing falls due and nothing is planned in this month."))});
        if (!events.empty())
            document.blocks.emplace_back(listOf(events));
    }
    return document;
}

paper::Document letter(const StationLetter& letter) {
    paper::Document document;
    const auto& visit = letter.planned;
    document.title = AheadPapers::tr("Visit of %1").arg(asText(visit.balloon.text())).toStdString();
    document.subtitle = AheadPapers::tr("to %1").arg(asText(visit.station)).toStdString();
    document.recordId = letter.visit.text();
    document.caution =
        text(AheadPapers::tr("This letter orders no work by itself and releases nothing: what is done, and whether it "
                             "suffices, the licensed person decides by the manufacturer's current instructions."));
    paper::Facts facts;
    facts.facts = {{text(AheadPapers::tr("Balloon")), visit.balloon.text()},
                   {text(AheadPapers::tr("From")), visit.from.iso()},
                   {text(AheadPapers::tr("To")), visit.to.iso()},
                   {text(AheadPapers::tr("Written")), letter.on.iso()}};
    if (!letter.owner.empty())
        facts.facts.push_back({text(AheadPapers::tr("Owner")), letter.owner});
    if (!letter.operatedBy.empty())
        facts.facts.push_back({text(AheadPapers::tr("Operated by")), letter.operatedBy});
    document.blocks.emplace_back(std::move(facts));
    document.blocks.emplace_back(paper::Heading{2, text(AheadPapers::tr("Work that is wanted"))});
    paper::Table work;
    work.columns = {{text(AheadPapers::tr("Item")), paper::Align::Left, 1.2},
                    {text(AheadPapers::tr("Work")), paper::Align::Left, 2.6},
                    {text(AheadPapers::tr("Due")), paper::Align::Left, 1.6},
                    {text(AheadPapers::tr("From")), paper::Align::Left, 2.2}};
    for (const auto& each : letter.works)
        work.rows.push_back({each.work.item.text(), said(each.title).toStdString(),
                             VisitWords::band(each.band).toStdString(), said(each.source).toStdString()});
    if (work.rows.empty())
        document.blocks.emplace_back(paper::Paragraph{text(AheadPapers::tr("None is named yet."))});
    else
        document.blocks.emplace_back(std::move(work));
    document.blocks.emplace_back(paper::Heading{2, text(AheadPapers::tr("What comes"))});
    paper::Table items;
    items.columns = {{text(AheadPapers::tr("Item")), paper::Align::Left, 1.2},
                     {text(AheadPapers::tr("Kind")), paper::Align::Left, 1},
                     {text(AheadPapers::tr("Type")), paper::Align::Left, 1.4},
                     {text(AheadPapers::tr("Serial number")), paper::Align::Left, 1.4},
                     {text(AheadPapers::tr("Hours")), paper::Align::Right, 0.8}};
    for (const auto& item : letter.items)
        items.rows.push_back({item.item.text(), Words::kind(item.kind).toStdString(), item.type.value_or(""),
                              item.serial.value_or(""), hoursOf(item.clock)});
    document.blocks.emplace_back(std::move(items));
    document.blocks.emplace_back(paper::Paragraph{
        text(AheadPapers::tr("The file beside this letter opens the same visit in the station's own Crownring.")),
        paper::Emphasis::Quiet});
    return document;
}

}

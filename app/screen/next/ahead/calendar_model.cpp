// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/ahead/calendar_model.h"

#include "registry/reading_said.h"
#include "rules/due/headline.h"
#include "rules/due/reckoned.h"
#include "screen/desk/due_model.h"
#include "screen/next/ahead/agenda_model.h"
#include "words/ahead/visit_words.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <map>

namespace crownring::screen {

using namespace words;

namespace {

QString isoOf(const std::optional<CivilDate>& day) { return day ? inward(day->iso()) : QString(); }

/// One that is past stands before all others.
CivilDate comesOf(const DueRow& row, const std::optional<DateBand>& band, CivilDate on) {
    if (row.state.standing < Standing::Nearing)
        return addDays(on, -1);
    return band && band->p50 ? *band->p50 : CivilDate::last();
}

void place(CalendarLine& line, const std::optional<DateBand>& band, const CalendarSpan& span) {
    if (!band || !band->p10)
        return;
    line.from = span.at(*band->p10);
    line.to = span.at(addDays(band->p90.value_or(span.end()), 1));
    if (band->p50)
        line.likelyAt = span.at(*band->p50);
    line.first = isoOf(band->p10);
    line.likely = isoOf(band->p50);
    line.last = isoOf(band->p90);
}

CalendarLine dueLine(const DueRow& row, const std::optional<DateBand>& band, const CalendarSpan& span) {
    CalendarLine line;
    line.key = QStringLiteral("due %1/%2").arg(inward(row.item->id.text()), inward(row.requirement->id.text()));
    line.sort = CalendarLine::Due;
    line.balloon = row.item->balloon ? inward(row.item->balloon->text()) : QString();
    line.title = CalendarModel::tr("%1, %2 %3")
                     .arg(said(row.requirement->title), Words::kind(row.item->kind), inward(row.item->id.text()));
    line.days = VisitWords::band(band);
    if (line.days.isEmpty())
        line.days = Words::standing(row.state);
    line.byUse = isLimitedByUse(row.state) && band && band->p10 != band->p90;
    line.standing = static_cast<int>(reckonedAs(row.state));
    place(line, band, span);
    return line;
}

CalendarLine wearLine(const WearAhead& worn, const CalendarSpan& span) {
    CalendarLine line;
    const auto& series = worn.series;
    line.key = QStringLiteral("wear %1/%2/%3")
                   .arg(inward(worn.item->id.text()), inward(series.quantity), inward(placeSlug(series.place)));
    line.balloon = inward(worn.item->balloon->text());
    line.title = CalendarModel::tr("%1, %2 %3: comes to its limit, going by its trend")
                     .arg(said(inPlace(quantityTerm(series.quantity), series.place)), Words::kind(worn.item->kind),
                          inward(worn.item->id.text()));
    line.days = VisitWords::band(worn.met);
    line.byUse = true;
    place(line, worn.met, span);
    return line;
}

CalendarLine fabricLine(const FabricAhead& fabric, const CalendarSpan& span) {
    CalendarLine line;
    line.key = QStringLiteral("fabric %1/%2").arg(inward(fabric.item->id.text()), inward(fabric.quantity));
    line.balloon = inward(fabric.item->balloon->text());
    line.title =
        CalendarModel::tr("%1, %2 %3: comes to its limit, going by the fleet's readings")
            .arg(said(quantityTerm(fabric.quantity)), Words::kind(fabric.item->kind), inward(fabric.item->id.text()));
    line.days = VisitWords::band(fabric.met);
    line.byUse = true;
    place(line, fabric.met, span);
    return line;
}

CalendarLine visitLine(const VisitAhead& ahead, const CalendarSpan& span, CivilDate on) {
    CalendarLine line;
    line.key = QStringLiteral("visit %1").arg(inward(ahead.stated.id.text()));
    line.sort = CalendarLine::Visit;
    line.balloon = inward(ahead.visit.balloon.text());
    line.title = CalendarModel::tr("%1 at %2").arg(line.balloon, inward(ahead.visit.station));
    line.days = daysText(ahead.visit.from, ahead.visit.to, on);
    line.entry = inward(ahead.stated.id.text());
    line.first = isoOf(ahead.visit.from);
    line.last = isoOf(ahead.visit.to);
    line.from = span.at(ahead.visit.from);
    line.to = span.at(addDays(ahead.visit.to, 1));
    return line;
}

struct Coming {
    const DueRow* row;
    std::size_t at; ///< among all
    CivilDate on;
};

}

CivilDate CalendarSpan::end() const { return addMonths(first, months, DayRule::Same); }

double CalendarSpan::at(CivilDate day) const {
    return static_cast<double>(daysBetween(first, day).value()) /
           static_cast<double>(daysBetween(first, end()).value());
}

std::vector<CalendarLine> calendarLines(const AheadSheet& sheet, std::span<const FabricAhead> fabrics,
                                        const CalendarSpan& span, const std::optional<Registration>& only) {
    std::vector<CalendarLine> lines;
    for (const auto& ahead : sheet.planned.visits)
        if (!only || ahead.visit.balloon == *only)
            lines.push_back(visitLine(ahead, span, sheet.on));
    std::map<Registration, std::vector<Coming>> byBalloon;
    for (std::size_t i = 0; i < sheet.due.rows.size(); ++i) {
        const auto& row = sheet.due.rows[i];
        const auto& balloon = row.item->balloon;
        if (!balloon || row.state.standing == Standing::Closed || (only ? *balloon != *only : !isBinding(row)))
            continue;
        byBalloon[*balloon].push_back({&row, i, comesOf(row, sheet.bands[i], sheet.on)});
    }
    std::vector<std::pair<CivilDate, Registration>> order;
    for (auto& [balloon, coming] : byBalloon) {
        std::ranges::stable_sort(coming, {}, &Coming::on);
        order.emplace_back(coming.front().on, balloon);
    }
    std::ranges::sort(order);
    for (const auto& [on, balloon] : order) {
        const auto& coming = byBalloon.at(balloon);
        if (only) {
            std::vector<std::pair<CivilDate, CalendarLine>> byDay;
            for (const auto& each : coming)
                byDay.emplace_back(each.on, dueLine(*each.row, sheet.bands[each.at], span));
            for (const auto& worn : sheet.worn)
                if (*worn.item->balloon == balloon)
                    byDay.emplace_back(*worn.met.p10, wearLine(worn, span));
            for (const auto& fabric : fabrics)
                if (*fabric.item->balloon == balloon)
                    byDay.emplace_back(*fabric.met.p10, fabricLine(fabric, span));
            std::ranges::stable_sort(byDay, {}, &std::pair<CivilDate, CalendarLine>::first);
            for (auto& [day, line] : byDay)
                lines.push_back(std::move(line));
            continue;
        }
        auto line = dueLine(*coming.front().row, sheet.bands[coming.front().at], span);
        line.key = QStringLiteral("balloon %1").arg(inward(balloon.text()));
        line.sort = CalendarLine::Balloon;
        line.title = CalendarModel::tr("%1: %2").arg(inward(balloon.text()), line.title);
        lines.push_back(std::move(line));
    }
    return lines;
}

const CalendarLine* CalendarModel::line(int row) const {
    return row < 0 || row >= static_cast<int>(m_lines.size()) ? nullptr : &m_lines[static_cast<std::size_t>(row)];
}

QVariant CalendarModel::data(const QModelIndex& index, int role) const {
    const auto* line = this->line(index.row());
    if (!line)
        return {};
    switch (role) {
    case SortRole:
        return line->sort;
    case BalloonRole:
        return line->balloon;
    case Qt::DisplayRole:
    case TitleRole:
        return line->title;
    case DaysRole:
        return line->days;
    case FirstRole:
        return line->first;
    case LikelyRole:
        return line->likely;
    case LastRole:
        return line->last;
    case EntryRole:
        return line->entry;
    case FromRole:
        return line->from;
    case ToRole:
        return line->to;
    case LikelyAtRole:
        return line->likelyAt;
    case ByUseRole:
        return line->byUse;
    case StandingRole:
        return line->standing;
    case SpokenRole:
        return line->sort == CalendarLine::Visit ? tr("Visit: %1, %2").arg(line->title, line->days)
                                                 : tr("%1, %2").arg(line->title, line->days);
    default:
        return {};
    }
}

}

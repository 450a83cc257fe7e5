// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_lines.h"

#include "screen/next/ahead/agenda_model.h"
#include "words/ahead/plan_words.h"
#include "words/border.h"

#include <QCoreApplication>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// Whose words those are.
struct PlanLineWords {
    Q_DECLARE_TR_FUNCTIONS(PlanLineWords)
};

bool isSamePlace(const PlannedStay& one, const PlannedStay& other) {
    return one.balloon == other.balloon && one.week == other.week && one.station == other.station;
}

bool has(const std::vector<PlannedStay>& visits, const PlannedStay& stay) {
    return std::ranges::any_of(visits, [&](const PlannedStay& each) { return isSamePlace(each, stay); });
}

QString notKeptText(const NotKept& kept) {
    return PlanLineWords::tr("%1, %2: %3")
        .arg(inward(kept.balloon.text()), PlanWords::named(kept.row), PlanWords::why(kept));
}

QString costText(double more) {
    if (more >= 0.005)
        return PlanLineWords::tr("Costs %1 more than the plan as it stands.").arg(PlanWords::money(more));
    return more <= -0.005 ? PlanLineWords::tr("Costs %1 less than the plan as it stands.").arg(PlanWords::money(-more))
                          : PlanLineWords::tr("Costs no more than the plan as it stands.");
}

}

QString stayText(const VisitPlace& place, CivilDate on) {
    return PlanLineWords::tr("%1 at %2, week from %3")
        .arg(inward(place.balloon.text()), inward(place.station), dayText(place.week, on));
}

std::vector<PlanLine> planLines(const PlanAnswer& answer, const PlanWishes& wishes, CivilDate on) {
    std::vector<PlanLine> lines;
    for (const auto& stay : answer.plan.visits) {
        PlanLine line;
        line.place = {stay.balloon, stay.week, stay.station};
        line.entry = entryOf(stay, answer.already);
        line.week = daysText(stay.week, addDays(stay.week, 4), on);
        line.title = PlanLineWords::tr("%1 at %2").arg(inward(stay.balloon.text()), inward(stay.station));
        line.cost = PlanWords::money(stay.cost);
        line.isHeld = wishes.isHeld(line.place);
        line.mark = line.entry    ? PlanLineWords::tr("planned in the record already")
                    : line.isHeld ? PlanLineWords::tr("held")
                                  : QString();
        line.covers = PlanWords::covers(stay.covers);
        lines.push_back(std::move(line));
    }
    return lines;
}

QStringList notKeptLines(const FleetVisits& plan) {
    QStringList lines;
    for (const auto& kept : plan.notKept)
        lines += notKeptText(kept);
    return lines;
}

QStringList leftOutLines(const FleetVisits& plan) {
    QStringList lines;
    for (const auto& row : plan.leftOut)
        lines += PlanLineWords::tr("%1: %2").arg(PlanWords::named(row.row), PlanWords::why(row));
    return lines;
}

QStringList looseLines(const AlreadyPlanned& already) {
    QStringList lines;
    for (const auto& loose : already.loose)
        if (loose.why != LooseVisit::Why::LetGo)
            lines += PlanLineWords::tr("%1: %2").arg(PlanWords::named(loose.standing.visit), PlanWords::why(loose.why));
    return lines;
}

QStringList differenceLines(const FleetVisits& now, const FleetVisits& tried, CivilDate on) {
    QStringList lines{costText(tried.cost - now.cost)};
    const double doubt = std::max(now.gap * now.cost, tried.gap * tried.cost);
    if (doubt >= 0.005)
        lines += PlanLineWords::tr("Either plan may cost up to %1 more than need be.").arg(PlanWords::money(doubt));
    for (const auto& stay : now.visits)
        if (!has(tried.visits, stay))
            lines += PlanLineWords::tr("No longer: %1").arg(stayText({stay.balloon, stay.week, stay.station}, on));
    for (const auto& stay : tried.visits)
        if (!has(now.visits, stay))
            lines += PlanLineWords::tr("Then: %1").arg(stayText({stay.balloon, stay.week, stay.station}, on));
    const auto before = notKeptLines(now);
    for (const auto& kept : notKeptLines(tried))
        if (!before.contains(kept))
            lines += PlanLineWords::tr("Not kept then: %1").arg(kept);
    return lines;
}

QStringList changeLines(const CalendarChange& change) {
    QStringList lines;
    for (const auto& visit : change.added)
        lines += PlanLineWords::tr("New: %1, covers %n requirements", nullptr, static_cast<int>(visit.covers.size()))
                     .arg(PlanWords::named(visit));
    for (const auto& wider : change.wider)
        lines += PlanLineWords::tr("Covers %n requirements more: %1", nullptr, static_cast<int>(wider.more.size()))
                     .arg(PlanWords::named(wider.standing.visit));
    for (const auto& standing : change.takenBack)
        lines += PlanLineWords::tr("Taken back: %1").arg(PlanWords::named(standing.visit));
    for (const auto& standing : change.stays)
        lines += PlanLineWords::tr("Stays: %1").arg(PlanWords::named(standing.visit));
    return lines;
}

}

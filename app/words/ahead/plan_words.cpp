// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/ahead/plan_words.h"

#include "answers/plan/proven.h"
#include "words/ahead/plan_sentences.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace crownring::words {

namespace {

QString dayText(CivilDate day) { return QString::fromStdString(day.iso()); }

/// By when it has to be done.
QString limitOf(const WorkWhy& why) {
    if (why.byUse && why.before)
        return PlanWords::tr("what may be flown is used up soon after %1").arg(dayText(*why.before));
    return why.due ? PlanWords::tr("due %1").arg(dayText(*why.due)) : PlanWords::tr("due at once");
}

QString placeOf(const WorkWhy& why) {
    switch (why.kind) {
    case WorkWhy::Kind::CannotWait:
        return PlanWords::tr("the last week for it before that");
    case WorkWhy::Kind::Bundled:
        return PlanWords::tr("with %1, which cannot wait").arg(why.with ? PlanWords::named(*why.with) : QString());
    case WorkWhy::Kind::Pinned:
        return PlanWords::tr("in the visit that is pinned");
    case WorkWhy::Kind::AtOnce:
        return PlanWords::tr("past already: in the first week that can be had");
    case WorkWhy::Kind::Late:
        return PlanWords::tr("late: no earlier week can be had");
    case WorkWhy::Kind::Rides:
        return PlanWords::tr("goes with %1").arg(why.with ? PlanWords::named(*why.with) : QString());
    }
    return {};
}

}

QString PlanWords::named(const PlannedRow& row) { return tr("%1 of %2").arg(said(row.title), inward(row.item.text())); }

QString PlanWords::named(const VisitPlanned& visit) {
    return tr("%1 at %2, %3")
        .arg(inward(visit.balloon.text()), inward(visit.station), PlanSentences::days(visit.from, visit.to));
}

QString PlanWords::money(double amount) { return QString::number(amount, 'f', 2); }

QString PlanWords::percent(double part) { return QLocale().toString(std::ceil(part * 10000 - 1e-9) / 100, 'g', 4); }

QStringList PlanWords::worth(const FleetVisits& plan, double risk) {
    if (plan.balloons == 0)
        return {tr("There is nothing to plan for: as the record has it, nothing was on a balloon then, or nothing was "
                   "adopted for it.")};
    QStringList said;
    said += tr("%n visits in %1 weeks from %2 cost %3, with what life is worth that is lost by doing things early.",
               nullptr, static_cast<int>(plan.visits.size()))
                .arg(QString::number(plan.weeks), dayText(plan.first), money(plan.cost));
    const double saved = plan.whenDue - plan.cost;
    said += saved >= 0.005 ? tr("That is %1 less than each thing done when it is due, each balloon by itself: %2.")
                                 .arg(money(saved), money(plan.whenDue))
                           : tr("It saves nothing over each thing done when it is due, each balloon by itself: %1.")
                                 .arg(money(plan.whenDue));
    said += plan.chance <= risk
                ? tr("Of no balloon is the chance that use runs out before its visit more than %1 % (asked: %2 %).")
                      .arg(percent(plan.chance), percent(risk))
                : tr("Of a balloon the chance that use runs out before its visit is %1 %, more than the %2 % asked.")
                      .arg(percent(plan.chance), percent(risk));
    said += plan.gap > 0 ? tr("No plan at all costs more than %1 % less.").arg(percent(plan.gap))
                         : tr("No plan at all costs less.");
    return said;
}

QString PlanWords::unproven() {
    return tr("No plan is told: with so many things due apart the search was ended before it could say within %1 % "
              "what the cheapest visits are. Mend: ask for fewer months, or for a first week that is nearer.")
        .arg(percent(mostGapTold));
}

QString PlanWords::why(LooseVisit::Why why) {
    switch (why) {
    case LooseVisit::Why::Begun:
        return tr("its week is before the plan's first");
    case LooseVisit::Why::Beyond:
        return tr("its week is after the plan's last");
    case LooseVisit::Why::NotBound:
        return tr("nothing on its balloon is planned for");
    case LooseVisit::Why::NoStation:
        return tr("no station of the file is called so");
    case LooseVisit::Why::Closed:
        return tr("the station is closed in that week, or days of it are kept free for flying");
    case LooseVisit::Why::Full:
        return tr("other visits take all places of the station in that week");
    case LooseVisit::Why::Elsewhere:
        return tr("another visit of the balloon is held in that week");
    case LooseVisit::Why::LetGo:
        return tr("it was let go");
    }
    return {};
}

QString PlanWords::why(const WorkWhy& why) {
    if (why.kind == WorkWhy::Kind::Rides)
        return placeOf(why);
    QStringList parts;
    if (why.kind != WorkWhy::Kind::AtOnce)
        parts += limitOf(why);
    parts += placeOf(why);
    if (why.keeps)
        parts += tr("within its window from %1, so that it keeps its date").arg(dayText(*why.window));
    else if (why.thrownAway >= 0.005)
        parts += tr("life worth %1 is lost by doing it so early").arg(money(why.thrownAway));
    return parts.join(QStringLiteral("; "));
}

QString PlanWords::why(const NotKept& kept) {
    const auto reason = [&] {
        switch (kept.why) {
        case NotKept::Why::Lapsed:
            return tr("it is %1 already").arg(Words::standing(kept.standing));
        case NotKept::Why::NoStation:
            return tr("no station carries it out");
        case NotKept::Why::NoWeek:
            return tr(
                "no station that carries it out is open, with the balloon dry and free, in any week before it is due");
        case NotKept::Why::Full:
            return tr("the stations are taken, or forbidden, in every week before it is due");
        case NotKept::Why::Outrun:
            return tr("it is flown so much that it may be used up again before the next visit can be");
        }
        return QString();
    }();
    const auto due = kept.before ? tr("what may be flown is used up soon after %1: ").arg(dayText(*kept.before))
                     : kept.due  ? tr("due %1: ").arg(dayText(*kept.due))
                                 : QString();
    if (kept.why == NotKept::Why::Lapsed && kept.standing == Standing::Tolerance && kept.until)
        return due + tr("%1, which no plan counts on; done on %2").arg(reason, dayText(*kept.until));
    return due + reason + QStringLiteral("; ") +
           (kept.until ? tr("not to be flown from then until %1").arg(dayText(*kept.until))
                       : tr("not made good within the time of the plan"));
}

QStringList PlanWords::covers(const std::vector<PlacedWork>& works) {
    struct Alike {
        QString what;
        QString why;
        QStringList items{};
    };
    std::vector<Alike> groups;
    for (const auto& work : works) {
        const auto what = said(work.row.title);
        const auto its = why(work.why);
        auto same =
            std::ranges::find_if(groups, [&](const Alike& each) { return each.what == what && each.why == its; });
        if (same == groups.end())
            same = groups.insert(groups.end(), {what, its});
        same->items += inward(work.row.item.text());
    }
    QStringList lines;
    for (const auto& group : groups)
        lines += tr("%1 of %2: %3").arg(group.what, group.items.join(QStringLiteral(", ")), group.why);
    return lines;
}

QString PlanWords::why(const LeftOutRow& row) {
    return row.isExempt ? tr("not compulsory by now: when that ends is not planned for")
                        : tr("its item is on no balloon");
}

}

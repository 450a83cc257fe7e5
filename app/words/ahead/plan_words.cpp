// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/ahead/plan_words.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

namespace crownring::words {

namespace {

QString dayText(CivilDate day) { return QString::fromStdString(day.iso()); }

QString named(const PlannedRow& row) { return PlanWords::tr("%1 of %2").arg(said(row.title), inward(row.item.text())); }

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
        return PlanWords::tr("with %1, which cannot wait").arg(why.with ? named(*why.with) : QString());
    case WorkWhy::Kind::Pinned:
        return PlanWords::tr("in the visit that is pinned");
    case WorkWhy::Kind::AtOnce:
        return PlanWords::tr("past already: in the first week that can be had");
    case WorkWhy::Kind::Late:
        return PlanWords::tr("late: no earlier week can be had");
    case WorkWhy::Kind::Rides:
        return PlanWords::tr("goes with %1").arg(why.with ? named(*why.with) : QString());
    }
    return {};
}

}

QString PlanWords::money(double amount) { return QString::number(amount, 'f', 2); }

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
        parts += tr("throws %1 of its life away").arg(money(why.thrownAway));
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
    const auto due = kept.due ? tr("due %1: ").arg(dayText(*kept.due)) : QString();
    return due + reason + QStringLiteral("; ") +
           (kept.until ? tr("not to be flown from then until %1").arg(dayText(*kept.until))
                       : tr("not made good within the time of the plan"));
}

QString PlanWords::why(const LeftOutRow& row) {
    return row.isExempt ? tr("not compulsory by now: when that ends is not planned for")
                        : tr("its item is on no balloon");
}

}

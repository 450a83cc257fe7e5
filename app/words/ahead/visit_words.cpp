// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/ahead/visit_words.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>

namespace crownring::words {

namespace {

/// Several items of which one thing is said.
struct Alike {
    QString what;
    QString when;
    LapseChance how = LapseChance::Already;
    bool isCovered = true;
    QStringList items{};
    std::vector<const VisitWork*> works{};
};

Alike& among(std::vector<Alike>& groups, const Alike& one) {
    const auto same = std::ranges::find_if(groups, [&](const Alike& each) {
        return each.what == one.what && each.when == one.when && each.how == one.how && each.isCovered == one.isCovered;
    });
    return same == groups.end() ? groups.emplace_back(one) : *same;
}

QString of(const Alike& group) {
    return VisitWords::tr("%1 of %2").arg(group.what, group.items.join(QStringLiteral(", ")));
}

/// When the first of them is due; how they stand where nobody can say.
QString dueOf(const Alike& group) {
    std::optional<CivilDate> first;
    bool isOne = true;
    const VisitWork* dated = nullptr;
    for (const auto* work : group.works) {
        if (!work->band || !work->band->p10)
            continue;
        isOne &= !dated || dated->band == work->band;
        dated = dated ? dated : work;
        first = first ? std::min(*first, *work->band->p10) : *work->band->p10;
    }
    if (!first)
        return VisitWords::tr("%1, %2").arg(of(group), Words::standing(group.works.front()->row->state));
    return isOne ? VisitWords::tr("%1, due %2").arg(of(group), VisitWords::band(dated->band))
                 : VisitWords::tr("%1, due from %2 on").arg(of(group), inward(first->iso()));
}

QString beforeText(const Alike& group) {
    switch (group.how) {
    case LapseChance::Already:
        return VisitWords::tr("stands by now as %1: %2").arg(group.when, of(group));
    case LapseChance::Surely:
        return VisitWords::tr("is due before it: %1, %2").arg(of(group), group.when);
    case LapseChance::Likely:
        return VisitWords::tr("is likely due before it: %1, %2").arg(of(group), group.when);
    case LapseChance::Perhaps:
        return VisitWords::tr("may be due before it: %1, %2").arg(of(group), group.when);
    }
    return {};
}

}

QString VisitWords::band(const std::optional<DateBand>& band) {
    if (!band || !band->p10)
        return {};
    const auto first = inward(band->p10->iso());
    if (!band->p90)
        return tr("after %1").arg(first);
    return *band->p10 == *band->p90 ? first : tr("between %1 and %2").arg(first, inward(band->p90->iso()));
}

QStringList VisitWords::works(const std::vector<VisitWork>& works) {
    std::vector<Alike> groups;
    for (const auto& work : works) {
        auto& group =
            among(groups, {work.row ? said(work.row->requirement->title)
                                    : tr("%1, which nothing asks for now").arg(inward(work.work.requirement.text())),
                           {}});
        group.items += inward(work.work.item.text());
        group.works.push_back(&work);
    }
    QStringList lines;
    for (const auto& group : groups)
        lines += group.works.front()->row ? dueOf(group) : of(group);
    return lines;
}

QStringList VisitWords::before(const std::vector<LapsesBefore>& before) {
    std::vector<Alike> groups;
    for (const auto& each : before) {
        const auto when = each.how == LapseChance::Already ? Words::standing(each.row->state) : band(each.band);
        among(groups, {said(each.row->requirement->title), when, each.how, each.isCovered}).items +=
            inward(each.row->item->id.text());
    }
    QStringList lines;
    for (const auto& group : groups)
        lines += group.isCovered ? beforeText(group) : tr("%1 (not covered by it)").arg(beforeText(group));
    return lines;
}

}

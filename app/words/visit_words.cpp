// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/visit_words.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

namespace crownring::words {

namespace {

QString rowOf(const DueRow& row) {
    return VisitWords::tr("%1 of %2").arg(said(row.requirement->title), inward(row.item->id.text()));
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

QString VisitWords::work(const VisitWork& work) {
    if (!work.row)
        return tr("%1 of %2, which nothing asks for now")
            .arg(inward(work.work.requirement.text()), inward(work.work.item.text()));
    const auto when = band(work.band);
    return when.isEmpty() ? tr("%1, %2").arg(rowOf(*work.row), Words::standing(work.row->state))
                          : tr("%1, due %2").arg(rowOf(*work.row), when);
}

QString VisitWords::before(const LapsesBefore& lapses) {
    const auto row = rowOf(*lapses.row);
    const auto when = band(lapses.band);
    QString text;
    switch (lapses.how) {
    case LapseChance::Already:
        text = tr("stands by now as %1: %2").arg(Words::standing(lapses.row->state), row);
        break;
    case LapseChance::Surely:
        text = tr("is due before it: %1, %2").arg(row, when);
        break;
    case LapseChance::Likely:
        text = tr("is likely due before it: %1, %2").arg(row, when);
        break;
    case LapseChance::Perhaps:
        text = tr("may be due before it: %1, %2").arg(row, when);
        break;
    }
    return lapses.isCovered ? text : tr("%1 (not covered by it)").arg(text);
}

}

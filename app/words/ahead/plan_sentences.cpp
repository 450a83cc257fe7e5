// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/ahead/plan_sentences.h"

#include "words/border.h"
#include "words/words.h"

#include <QLocale>

namespace crownring::words {

QString PlanSentences::days(CivilDate from, std::optional<CivilDate> to) {
    if (!to)
        return tr("from %1 on").arg(inward(from.iso()));
    return from == *to ? tr("on %1").arg(inward(from.iso()))
                       : tr("from %1 to %2").arg(inward(from.iso()), inward(to->iso()));
}

QString PlanSentences::of(const UsePlanned& e) {
    const auto* item = itemAhead(e);
    const auto whose = inward(item ? item->text() : balloonAhead(e)->text());
    const auto when = days(e.from, e.to);
    const auto pace = e.times.value_or(e.flightsAWeek.value_or(0));
    if (pace <= 0)
        return tr("%1 is planned not to fly %2").arg(whose, when);
    const auto number = QLocale().toString(pace, 'g', 4);
    return e.times ? tr("%1 is planned to fly %2 times its usual pace %3").arg(whose, number, when)
                   : tr("%1 is planned to fly %2 times a week %3").arg(whose, number, when);
}

QString PlanSentences::of(const FlightPlanned& e) {
    auto text = tr("%1 is planned to fly %2: %3, %4")
                    .arg(inward(e.balloon.text()), Words::hours(e.use.minutes.value()),
                         Words::landings(e.use.landings.value()), Words::inflations(e.use.inflations.value()));
    if (!e.kit)
        return text;
    QStringList items;
    for (const auto& item : *e.kit)
        items += inward(item.text());
    return tr("%1, with %2").arg(text, items.join(QStringLiteral(", ")));
}

QString PlanSentences::of(const VisitPlanned& e, const QStringList& works) {
    const auto text =
        tr("A visit of %1 to %2 is planned %3").arg(inward(e.balloon.text()), inward(e.station), days(e.from, e.to));
    return works.isEmpty() ? text : tr("%1: %2").arg(text, works.join(QStringLiteral(", ")));
}

}

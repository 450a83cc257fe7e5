// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench_words.h"

#include "bench/checklist/visit.h"
#include "bench/reading/quantity.h"
#include "bench_sentences.h"
#include "border.h"

#include <QDateTime>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace crownring::screen {

QString BenchWords::visit(std::string_view visit) {
    const auto known = visitFrom(visit);
    return known ? inward(visitTitle(*known)) : inward(visit);
}

QString BenchWords::outcome(Outcome outcome) {
    switch (outcome) {
    case Outcome::Released:
        return tr("released");
    case Outcome::Discrepancies:
        return tr("closed with a list of discrepancies");
    case Outcome::Abandoned:
        return tr("abandoned");
    }
    return {};
}

QString BenchWords::quantity(std::string_view slug) {
    const auto* known = quantityNamed(slug);
    auto text = inward(known ? known->title : slug);
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString BenchWords::judgement(Judgement judgement) {
    switch (judgement) {
    case Judgement::Passes:
        return tr("passes");
    case Judgement::Fails:
        return tr("fails");
    case Judgement::Undecided:
        return tr("decides nothing");
    case Judgement::NoLimit:
        return tr("no limit known");
    case Judgement::Incomparable:
        return tr("of another test");
    }
    return {};
}

QString BenchWords::value(const ReadingTaken& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    const auto* known = quantity ? unitNamed(reading.unit, quantity->dimension) : nullptr;
    const auto unit = inward(known ? known->shown : std::string_view(reading.unit));
    if (reading.below)
        return tr("at least %1, below %2 %3").arg(figure(reading.value), figure(*reading.below), unit);
    return (reading.held ? tr("held at %1 %2") : tr("%1 %2")).arg(figure(reading.value), unit);
}

QString BenchWords::subject(const std::optional<Registration>& balloon, const std::vector<ItemId>& items) {
    if (balloon)
        return inward(balloon->text());
    QStringList names;
    for (const auto& item : items)
        names += inward(item.text());
    return names.join(QStringLiteral(", "));
}

QString BenchWords::figure(double value) { return QLocale().toString(value, 'g', 6); }

TimeOfDay benchTime(const Inspection* inspection, CivilDate on) {
    const auto now = QDateTime::currentDateTimeUtc().time();
    auto minute = std::int64_t{now.hour()} * 60 + now.minute();
    const auto heed = [&](const auto& all) {
        for (const auto& said : all)
            if (said.stamp.at.on() == on)
                minute = std::max(minute, said.stamp.at.minutes() - Moment::startOf(on).minutes());
    };
    if (inspection) {
        heed(inspection->lines);
        heed(inspection->readings);
        heed(inspection->found);
        heed(inspection->deferred);
        heed(inspection->cleared);
        heed(inspection->repairs);
        heed(inspection->parts);
    }
    return {static_cast<int>(minute / 60), static_cast<int>(minute % 60)};
}

}

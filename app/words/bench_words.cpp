// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/bench_words.h"

#include "bench/checklist/visit.h"
#include "bench/reading/quantity.h"
#include "bench_sentences.h"
#include "border.h"
#include "words/bench_sentences.h"
#include "words/border.h"
#include "words/sentence.h"

#include <QLocale>
#include <QStringList>

namespace crownring::words {

QString BenchWords::visit(std::string_view visit) {
    const auto known = visitFrom(visit);
    return known ? words::said(termOf(*known)) : inward(visit);
}

QString BenchWords::outcome(Outcome outcome, bool releases) {
    switch (outcome) {
    case Outcome::Released:
        return releases ? tr("released") : tr("work signed for");
    case Outcome::Discrepancies:
        return tr("closed with a list of discrepancies");
    case Outcome::Abandoned:
        return tr("abandoned");
    case Outcome::Incomplete:
        return tr("released after incomplete maintenance");
    }
    return {};
}

QString BenchWords::quantity(std::string_view slug) {
    auto text = words::said(quantityTerm(slug));
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
        return tr("inconclusive");
    case Judgement::NoLimit:
        return tr("no limit known");
    case Judgement::Incomparable:
        return tr("not comparable");
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

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/component_words.h"

#include "registry/overhaul.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QLocale>

namespace crownring::screen {

using namespace words;

namespace {

QString dotted(const QStringList& parts) { return joined(parts, QStringLiteral(" · ")); }

QString untilText(const GoodUntil& good) {
    return !good.standing ? QString() : good.until ? inward(good.until->iso()) : Words::standing(*good.standing);
}

QString plainFigure(double figure) {
    constexpr int digits = 6;
    return QLocale().toString(figure, 'g', digits);
}

void addListed(const FittedThing& thing, int depth, QStringList& lines) {
    for (const auto& part : thing.parts) {
        lines += QString(depth * 4, u' ') +
                 dotted({inward(part.name), part.type ? inward(*part.type) : ComponentWords::tr("of unknown type"),
                         part.serial ? ComponentWords::tr("serial %1").arg(inward(*part.serial)) : QString()});
        addListed(part, depth + 1, lines);
    }
}

}

QString ComponentWords::where(const ItemFacts& facts) {
    if (facts.carrier)
        return facts.balloon ? tr("in %1, on %2").arg(inward(facts.carrier->text()), inward(facts.balloon->text()))
                             : tr("in %1").arg(inward(facts.carrier->text()));
    if (facts.balloon)
        return tr("on %1").arg(inward(facts.balloon->text()));
    return facts.out && !facts.out->to.empty() ? tr("at %1").arg(inward(facts.out->to)) : tr("in the pool");
}

QString ComponentWords::about(const ItemFacts& facts, const Component& component) {
    return dotted({facts.serial ? tr("serial %1").arg(inward(*facts.serial)) : tr("serial not recorded"),
                   facts.type ? inward(*facts.type) : QString(),
                   component.lot.empty() ? QString() : tr("lot %1").arg(inward(component.lot)), filled(component)});
}

QString ComponentWords::dates(const PoolItem& item) {
    const auto airworthy = untilText(item.airworthy);
    const auto transport = untilText(item.transport);
    const bool isLoose = !item.facts.balloon && !item.facts.carrier && !item.condemned;
    return dotted({!airworthy.isEmpty() ? tr("airworthy until: %1").arg(airworthy)
                   : isLoose            ? tr("airworthiness: bound only on a balloon")
                                        : QString(),
                   transport.isEmpty() ? QString() : tr("transport until: %1").arg(transport)});
}

QString ComponentWords::state(const PoolItem& item) {
    if (item.facts.out)
        return words::said(reasonOf(*item.facts.out));
    if (item.facts.kind != ItemKind::Cylinder)
        return {};
    return item.fillable ? tr("may be filled") : tr("not to be filled");
}

QString ComponentWords::times(const ItemFacts& facts) {
    const auto isNew = tr("since new %1").arg(Words::figures(facts.clock));
    const auto overhaul = sinceOverhaul(facts);
    return overhaul ? joined({isNew, tr("since its overhaul of %1 %2")
                                         .arg(inward(overhaul->done.iso()), Words::figures(overhaul->use))},
                             QStringLiteral("\n"))
                    : isNew;
}

QString ComponentWords::release(const PartRelease& release) {
    return tr("%1 %2").arg(Words::releaseForm(release.form), inward(release.number));
}

QString ComponentWords::vessel(const VesselStamped& vessel) {
    return dotted({vessel.material ? Words::vesselMaterial(*vessel.material) : tr("material not recorded"),
                   inward(vessel.specification),
                   vessel.litres ? tr("%1 l of water").arg(plainFigure(*vessel.litres)) : QString(),
                   vessel.kilograms ? tr("tare %1 kg").arg(plainFigure(*vessel.kilograms)) : QString()});
}

QString ComponentWords::filled(const Component& component) {
    if (!component.filled)
        return {};
    const auto day = inward(component.filled->iso());
    return component.percent ? tr("filled %1 to %2 %").arg(day, plainFigure(*component.percent))
                             : tr("filled %1").arg(day);
}

QStringList ComponentWords::listed(const FittedThing& thing) {
    QStringList lines;
    addListed(thing, 0, lines);
    return lines;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/instrument.h"

#include "problem/faults/reading_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// The unit in which it is stated, of its first quantity.
const Unit* unitOfRange(const TesterCalibrated& stated) {
    const auto* quantity = stated.measures.empty() ? nullptr : quantityNamed(stated.measures.front());
    return quantity ? unitNamed(stated.unit, quantity->dimension) : nullptr;
}

}

bool Instrument::mayMeasure(std::string_view quantity) const {
    return measures.empty() || std::ranges::find(measures, quantity) != measures.end();
}

Instrument instrumentFrom(const TesterCalibrated& stated) {
    Instrument instrument;
    instrument.tester = stated.tester;
    instrument.measures = stated.measures;
    instrument.station = stated.station;
    const auto* unit = unitOfRange(stated);
    const auto own = [&](const std::optional<double>& figure) {
        return unit && figure ? std::optional(Figure(*figure, *unit)) : std::nullopt;
    };
    instrument.from = own(stated.from);
    instrument.to = own(stated.to);
    return instrument;
}

std::optional<Problem> misstated(const TesterCalibrated& stated) {
    const bool ranged = stated.from || stated.to || !stated.unit.empty();
    if (ranged && stated.measures.empty())
        return Problem{ReadingFault::RangeOfNothing, {}, atKey("measures")};
    if (ranged && stated.unit.empty())
        return Problem{ReadingFault::RangeWithoutUnit, {}, atKey("unit")};
    for (const auto& slug : stated.measures) {
        const auto quantity = quantityFor(slug);
        if (!quantity)
            return Problem{quantity.error().fault, quantity.error().arguments, atKey("measures")};
        if (!ranged)
            continue;
        if (const auto unit = unitFor(**quantity, stated.unit); !unit)
            return unit.error();
    }
    if (stated.from && stated.to && *stated.from >= *stated.to)
        return Problem{ReadingFault::RangeTurnedRound, {}, atKey("from")};
    return std::nullopt;
}

InstrumentFit fitOf(const Instrument& instrument, const Measured& reading) {
    if (!instrument.saysWhat())
        return InstrumentFit::NotSaid;
    if (!instrument.mayMeasure(reading.quantity))
        return InstrumentFit::OtherQuantity;
    const auto* quantity = quantityNamed(reading.quantity);
    const auto within = [&](const Figure& figure) {
        const auto inOwn = [&](const Figure& bound) { return bound.as(unitOf(*quantity)); };
        return (!instrument.from || reaches(figure, inOwn(*instrument.from))) &&
               (!instrument.to || reaches(inOwn(*instrument.to), figure));
    };
    const bool isSame = quantity && (!instrument.from || instrument.from->dimension() == quantity->dimension);
    return isSame && within(reading.value) ? InstrumentFit::Fits : InstrumentFit::BeyondRange;
}

Argument whatItMeasures(const Instrument& instrument) {
    Listed all;
    for (const auto& slug : instrument.measures)
        all.list.emplace_back(quantityTerm(slug));
    return all;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
/// With what a reading begins: the manual's load and sizes, the tester that serves.

#include "measure/unit.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "words/border.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

void ReadingDesk::setUnit(const QString& unit) {
    const auto* known = quantity();
    const auto* from = known ? unitNamed(outward(m_unit), known->dimension) : nullptr;
    const auto* to = known ? unitNamed(outward(unit), known->dimension) : nullptr;
    bool figure = false;
    const double proof = m_proof.toDouble(&figure);
    // A figure and its unit are one value: the same load in the other unit, never the same digits.
    if (from && to && figure)
        m_proof = QString::number(convert(proof, *from, *to), 'g', 6);
    set(m_unit, unit);
}

/// What the type's manual states, and the tester that serves this quantity.
void ReadingDesk::chooseDefaults() {
    const auto* known = quantity();
    m_units.show({});
    if (!known)
        return;
    m_unit = inward(known->unit);
    m_held = known->traits.held;
    m_direction = known->traits.direction ? QStringLiteral("warp") : QString();
    m_proof.clear();
    m_pressure.clear();
    m_area.clear();
    m_jaw.clear();
    const auto plain = [](double value) { return QString::number(value, 'g', 8); };
    for (const auto& limit : limits()) {
        if (m_proof.isEmpty() && (limit.proof || limit.least))
            m_proof = plain((limit.proof ? *limit.proof : *limit.least).value());
        if (limit.conditions.pressure)
            m_pressure = plain(limit.conditions.pressure->value());
        if (limit.conditions.area)
            m_area = plain(limit.conditions.area->value());
        if (limit.conditions.jaw)
            m_jaw = plain(limit.conditions.jaw->value());
    }
    std::vector<Choice> units;
    for (const auto& unit : unitsOf(known->dimension))
        units.push_back({inward(unit.symbol), inward(unit.shown), {}, -1, -1, unit.symbol == known->unit});
    m_units.show(std::move(units));
    m_tester.clear();
    if (!known->traits.tester || !m_desk)
        return;
    const auto word =
        inward(known->slug).section(u'-', -1); // "grab-strength": strength; "air-permeability": permeability
    const auto first = inward(known->slug).section(u'-', 0, 0);
    for (const auto& tester : m_desk->testers()->choices())
        if (tester.label.contains(word, Qt::CaseInsensitive) || tester.label.contains(first, Qt::CaseInsensitive)) {
            m_tester = tester.value;
            break;
        }
    // The one that was used last for this quantity; where none serves it by name, the last one on this item.
    const bool named = !m_tester.isEmpty();
    for (const auto& reading : m_desk->file()->inspection.readings)
        if (reading.body.tester &&
            (reading.body.quantity == known->slug || (!named && reading.body.item == m_reads.item)))
            m_tester = inward(reading.body.tester->text());
}

}

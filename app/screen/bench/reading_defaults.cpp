// SPDX-License-Identifier: GPL-3.0-or-later
/// With what a reading begins: the manual's load and sizes, the tester that serves.

#include "measure/unit.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "words/border.h"
#include "words/sentence.h"

#include <algorithm>
#include <set>

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
    m_withoutTester = false;
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
        if (const auto* stated = limit.unit(); stated && m_proof.isEmpty())
            m_unit = inward(stated->symbol); // the manual's
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
        units.push_back({inward(unit.symbol), inward(unit.shown), {}, -1, -1, inward(unit.symbol) == m_unit});
    m_units.show(std::move(units));
    m_zone = inward(zoneName(Zone::Envelope));
    std::vector<Choice> zones;
    for (int at = 0; known->traits.placed && at < zoneCount; ++at) {
        const auto name = std::string(zoneName(static_cast<Zone>(at)));
        zones.push_back({inward(name), words::said(Term{Term::Of::Zone, name}), {}, -1, -1, at == 0});
    }
    m_zones.show(std::move(zones));
    showSpots();
    m_panel.clear();
    m_seconds.clear();
    m_way.clear();
    if (known->traits.fuelled)
        m_warmth.clear(); // of the shed before
    showTesters();
    chooseTester();
    aim();
}

/// In calibration on the day, and for this quantity as far as the record says.
void ReadingDesk::showTesters() {
    std::vector<Choice> fitting;
    if (m_desk && m_desk->file())
        for (const auto& choice : m_desk->testers()->choices()) {
            const auto* instrument = m_desk->file()->instrument(TesterId(outward(choice.value)), m_desk->file()->on);
            if (instrument && !instrument->mayMeasure(m_reads.quantity))
                continue;
            auto offered = choice;
            if (!instrument || !instrument->saysWhat())
                offered.detail = joined({offered.detail, tr("what it measures is not said")}, QStringLiteral(" · "));
            else if (!instrument->station.empty())
                offered.detail = joined({offered.detail, inward(instrument->station)}, QStringLiteral(" · "));
            fitting.push_back(std::move(offered));
        }
    m_testers.show(std::move(fitting));
}

QString ReadingDesk::testerRemark() const {
    if (m_tester.isEmpty() || !m_desk || !m_desk->file())
        return {};
    const auto* instrument = m_desk->file()->instrument(TesterId(outward(m_tester)), m_desk->file()->on);
    return instrument && instrument->saysWhat() ? QString()
                                                : tr("The record does not say what %1 measures.").arg(m_tester);
}

/// One that fits and is the station's own: the one that was used here before, else one of the station whose
/// instruments are used here, else the only station's. Another station's is chosen by nobody but who reads.
void ReadingDesk::chooseTester() {
    m_tester.clear();
    const auto* known = quantity();
    if (!known || !asksTester() || !m_desk || !m_desk->file())
        return;
    const auto& file = *m_desk->file();
    const auto offered = [&](const QString& name) { return m_testers.indexOf(name) >= 0; };
    const auto stationOf = [&](const QString& name) {
        const auto* instrument = file.instrument(TesterId(outward(name)), file.on);
        return instrument ? instrument->station : std::string();
    };
    const auto& readings = file.inspection.readings;
    const auto usedLast = [&](const auto& of) {
        const auto last = std::find_if(readings.rbegin(), readings.rend(), [&](const auto& reading) {
            return reading.body.tester && of(reading.body) && offered(inward(reading.body.tester->text()));
        });
        return last == readings.rend() ? QString() : inward(last->body.tester->text());
    };
    m_tester = usedLast([&](const ReadingTaken& body) { return body.quantity == known->slug; });
    if (!m_tester.isEmpty())
        return;
    if (!known->traits.tester) { // a gauge: where one alone says that it fits
        std::vector<QString> fitting;
        for (const auto& choice : m_testers.choices())
            if (const auto* instrument = file.instrument(TesterId(outward(choice.value)), file.on);
                instrument && instrument->saysWhat())
                fitting.push_back(choice.value);
        if (fitting.size() == 1)
            m_tester = fitting.front();
        return;
    }
    auto here = outward(m_desk->station()); // whose instruments are used: on this visit, else at this bench
    for (const auto& reading : readings)
        if (reading.body.tester)
            if (auto station = stationOf(inward(reading.body.tester->text())); !station.empty())
                here = std::move(station);
    std::set<std::string> stations;
    std::vector<QString> says; // what it measures
    for (const auto& choice : m_testers.choices())
        if (const auto* instrument = file.instrument(TesterId(outward(choice.value)), file.on);
            instrument && instrument->saysWhat()) {
            stations.insert(instrument->station);
            says.push_back(choice.value);
        }
    const auto own = std::ranges::find_if(says, [&](const QString& name) {
        return here.empty() ? stations.size() == 1 : stationOf(name) == here || stationOf(name).empty();
    });
    if (own != says.end())
        m_tester = *own;
    if (!says.empty())
        return;
    // None says what it measures: by its name.
    const auto word =
        inward(known->slug).section(u'-', -1); // "grab-strength": strength; "air-permeability": permeability
    const auto first = inward(known->slug).section(u'-', 0, 0);
    for (const auto& tester : m_testers.choices())
        if (tester.label.contains(word, Qt::CaseInsensitive) || tester.label.contains(first, Qt::CaseInsensitive)) {
            m_tester = tester.value;
            break;
        }
    if (m_tester.isEmpty())
        m_tester = usedLast([&](const ReadingTaken& body) { return body.item == m_reads.item; });
}

}

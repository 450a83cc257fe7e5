// SPDX-License-Identifier: GPL-3.0-or-later

/// Back to a reading: to its place, where what it found is read again, and to the equipment that it names.

#include "bench/release/reading_refusals.h"
#include "screen/bench/reading_desk.h"
#include "words/border.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

/// The reading by which a defect was found; nothing where none was.
std::optional<ReadingTaken> foundBy(const BenchFile& file, const QString& defect) {
    for (const auto& [open, reading] : file.foundBy)
        if (inward(open.text()) == defect)
            return reading;
    for (const auto& found : file.inspection.found)
        if (found.body.reading && inward(found.body.defect.text()) == defect)
            for (const auto& reading : file.inspection.readings)
                if (reading.id == *found.body.reading)
                    return reading.body;
    return std::nullopt;
}

QString sizeText(double size) { return QString::number(size, 'g', 8); }

}

void ReadingDesk::readAgain(const QString& defect) {
    const auto failed = m_desk && m_desk->file() ? foundBy(*m_desk->file(), defect) : std::nullopt;
    if (!failed)
        return;
    const auto asks = [&](const AskedSeries& series) {
        return series.of.item == failed->item && series.of.quantity == failed->quantity;
    };
    auto asked = std::ranges::find_if(
        m_asked, [&](const AskedSeries& series) { return asks(series) && series.of.line == failed->line; });
    if (asked == m_asked.end())
        asked = std::ranges::find_if(m_asked, asks);
    if (asked == m_asked.end())
        return;
    read(AskedFor(asked->of));
    aimAt(*failed);
    emit changed();
}

void ReadingDesk::aimAt(const ReadingTaken& reading) {
    m_spot = reading.place.basket ? inward(basketPlaceName(*reading.place.basket)) : QString();
    m_zone = inward(zoneName(reading.place.zone));
    const bool inBody = reading.place.zone == Zone::Envelope;
    m_gore = inBody ? reading.place.gore.value_or(0) : 0;
    m_row = inBody ? reading.place.row.value_or(0) : 0;
    m_panel = inBody || !reading.place.gore ? QString() : QString::number(*reading.place.gore);
    if (reading.conditions.direction)
        m_direction = inward(*reading.conditions.direction);
    if (reading.conditions.jaw)
        m_jaw = sizeText(reading.conditions.jaw->value());
    if (reading.conditions.pressure)
        m_pressure = sizeText(reading.conditions.pressure->value());
    if (reading.conditions.area)
        m_area = sizeText(reading.conditions.area->value());
}

std::vector<const ReadingTaken*> ReadingDesk::again() const {
    return m_desk && m_desk->file() && m_reads.line.empty() && m_reads != AskedFor{}
               ? toReadAgain(*m_desk->file(), m_reads)
               : std::vector<const ReadingTaken*>{};
}

bool ReadingDesk::showReading(const QString& entry) {
    if (!m_desk || !m_desk->file())
        return false;
    const auto& readings = m_desk->file()->inspection.readings;
    const auto reading =
        std::ranges::find_if(readings, [&](const auto& each) { return inward(each.id.text()) == entry; });
    if (reading == readings.end())
        return false;
    const auto& body = reading->body;
    const auto asked = std::ranges::find_if(m_asked, [&](const AskedSeries& series) {
        return series.of.item == body.item && series.of.quantity == body.quantity;
    });
    if (asked == m_asked.end())
        return false;
    read(AskedFor(asked->of));
    return true;
}

void ReadingDesk::setTester(const QString& tester) {
    m_withoutTester = m_withoutTester && tester.isEmpty();
    if (m_equipmentAsked && !tester.isEmpty())
        letGo(); // the figure stands in its field and is handed over with it
    set(m_tester, tester);
}

std::vector<EntryId> ReadingDesk::misnamedReadings() const {
    std::vector<EntryId> readings;
    if (!m_desk || !m_desk->isOpen() || m_tester.isEmpty())
        return readings;
    for (const auto& refusal : refusalsOfReadings(*m_desk->file())) {
        if (refusal.kind != Refusal::Kind::Tester || !refusal.entry)
            continue;
        for (const auto& reading : m_desk->file()->inspection.readings)
            if (reading.id == *refusal.entry && reading.body.item == m_reads.item &&
                reading.body.quantity == m_reads.quantity &&
                inward(reading.body.tester.value_or(TesterId()).text()) != m_tester)
                readings.push_back(reading.id);
    }
    return readings;
}

void ReadingDesk::nameTester() {
    std::vector<Body> bodies;
    for (const auto& reading : misnamedReadings())
        bodies.emplace_back(EntryCorrected{reading, nlohmann::json{{"tester", outward(m_tester)}}.dump()});
    if (m_desk)
        m_desk->post(std::move(bodies));
}

}

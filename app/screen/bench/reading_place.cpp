// SPDX-License-Identifier: GPL-3.0-or-later
/// Where the next reading is taken: the panel that a limit of the manual still asks for, zone by direction by number.

#include "bench/reading/place_plan.h"
#include "bench/release/not_asked.h"
#include "measure/decimal_text.h"
#include "parts/propane.h"
#include "screen/bench/bench_rows.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/reading_rows.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <algorithm>
#include <set>

namespace crownring::screen {

using namespace words;

namespace {

constexpr int fewestGores = 8;
constexpr int fewestRows = 8;
constexpr int mostPanels = 1000; // as entries may name them

std::optional<double> writtenFigure(const QString& text) {
    return text.trimmed().isEmpty() ? std::nullopt : parseDecimal(outward(text));
}

}

int ReadingDesk::gores() const {
    const auto* of = item();
    const auto* type = of ? m_desk->file()->type(*of) : nullptr;
    int most = type && type->gores ? *type->gores : fewestGores;
    for (const auto& mark : m_panels.marks())
        most = std::max(most, mark.gore);
    return most;
}

int ReadingDesk::rows() const {
    const auto* of = item();
    const auto* type = of ? m_desk->file()->type(*of) : nullptr;
    int most = type && type->rows ? *type->rows : fewestRows;
    for (const auto& mark : m_panels.marks())
        most = std::max(most, mark.row);
    return most;
}

bool ReadingDesk::inZone() const {
    const auto zone = zoneFrom(outward(m_zone));
    return quantity() && quantity()->traits.placed && zone && *zone != Zone::Envelope;
}

void ReadingDesk::setZone(const QString& zone) {
    if (m_zone == zone || !zoneFrom(outward(zone)))
        return;
    m_zone = zone;
    m_gore = m_row = 0;
    m_panel.clear();
    showPanels();
    emit changed();
}

/// Of a basket the same place is read again and again: without it there is no trend.
void ReadingDesk::showSpots() {
    m_spot.clear();
    std::vector<Choice> spots;
    const auto* of = item();
    if (of && of->kind == ItemKind::Basket && quantity() && quantity()->traits.onBasket) {
        spots.push_back({{}, tr("not said"), {}, -1, -1, true});
        for (int at = 0; at < basketPlaceCount; ++at) {
            const auto name = std::string(basketPlaceName(static_cast<BasketPlace>(at)));
            spots.push_back({inward(name), words::said(Term{Term::Of::Zone, name}), {}, -1, -1, false});
        }
    }
    m_spots.show(std::move(spots));
}

void ReadingDesk::setSpot(const QString& spot) {
    if (spot == m_spot || (!spot.isEmpty() && !basketPlaceFrom(outward(spot))))
        return;
    m_spot = spot;
    emit changed();
}

PanelPlace ReadingDesk::place() const {
    if (const auto spot = basketPlaceFrom(outward(m_spot)); spot && m_spots.count() > 0)
        return {{}, {}, Zone::Envelope, *spot};
    if (inZone())
        return {m_panel.trimmed().toInt(), {}, *zoneFrom(outward(m_zone))};
    return placed() ? PanelPlace{m_gore, m_row} : PanelPlace{};
}

QString ReadingDesk::placeMissing() const {
    if (placed() && m_gore == 0)
        return tr("Choose first on the map where it was taken.");
    const int panel = m_panel.trimmed().toInt();
    return inZone() && (panel < 1 || panel > mostPanels) ? tr("Say at which panel, counted around.") : QString();
}

bool ReadingDesk::asksWay() const { return quantity() && quantity()->traits.held && quantity()->traits.gauge; }
bool ReadingDesk::asksSeconds() const { return quantity() && (quantity()->traits.placed || asksWay()); }
bool ReadingDesk::asksWarmth() const { return quantity() && (quantity()->traits.placed || quantity()->traits.fuelled); }

TestCircumstances ReadingDesk::circumstances() const {
    TestCircumstances circumstances;
    if (asksSeconds())
        circumstances.seconds = writtenFigure(m_seconds);
    if (const auto celsius = asksWarmth() ? writtenFigure(m_warmth) : std::nullopt)
        circumstances.temperature = Celsius(*celsius);
    if (!quantity() || !quantity()->traits.placed)
        return circumstances;
    if (!m_dry.isEmpty())
        circumstances.dry = m_dry == QLatin1String("yes");
    circumstances.side = sideFrom(outward(m_side));
    return circumstances;
}

QString ReadingDesk::pressed() const {
    const auto celsius = quantity() && quantity()->traits.fuelled ? writtenFigure(m_warmth) : std::nullopt;
    const auto* unit = unitNamed(outward(m_unit), Dimension::Pressure);
    const auto* pascals = unitNamed("Pa", Dimension::Pressure);
    if (!celsius || !unit || !pascals)
        return {};
    const auto pressure = saturationPressure(Celsius(*celsius));
    if (!pressure)
        return Words::problem(pressure.error());
    return tr("At %1 °C propane at rest presses %2 by gauge, fuel with butane in it less: what reads lower on a cold "
              "morning is no fault by itself.")
        .arg(m_warmth.trimmed(),
             words::said(Argument(Figure((*pressure - standardAtmosphere).value(), *pascals).as(*unit))));
}

std::vector<LimitCount> ReadingDesk::limitCounts() const {
    const auto* of = item();
    if (!of || !quantity())
        return {};
    return crownring::limitCounts(*m_desk->file(), *of, {m_reads.quantity, false, quantity()->traits.placed});
}

std::optional<LimitCount> ReadingDesk::aimed() const {
    const auto counts = limitCounts();
    const auto wanting = std::ranges::find_if(counts, [&](const LimitCount& each) {
        return !each.enough() && (!each.limit || (each.limit->asksIn() == zoneFrom(outward(m_zone)) &&
                                                  (!each.limit->conditions.direction || m_direction.isEmpty() ||
                                                   *each.limit->conditions.direction == outward(m_direction))));
    });
    return wanting == counts.end() ? std::nullopt : std::optional(*wanting);
}

void ReadingDesk::aim() {
    if (const auto wanting = again(); !wanting.empty() && m_gore == 0 && m_panel.isEmpty())
        aimAt(*wanting.front());
    if (m_reads.line.empty() || aimed() || !m_desk || !m_desk->isOpen())
        return;
    const auto counts = limitCounts();
    const auto wanting =
        std::ranges::find_if(counts, [](const LimitCount& each) { return each.limit && !each.enough(); });
    if (wanting == counts.end())
        return;
    const auto zone = inward(zoneName(wanting->limit->asksIn()));
    if (zone != m_zone)
        m_gore = m_row = 0;
    m_zone = zone;
    if (const auto& direction = wanting->limit->conditions.direction)
        m_direction = inward(*direction);
}

void ReadingDesk::forgetWritten() {
    if (!m_desk || !m_desk->file())
        return m_justTaken.clear();
    std::erase_if(m_justTaken, [&](const PanelPlace& place) {
        return std::ranges::any_of(m_desk->file()->inspection.readings, [&](const auto& reading) {
            const auto& body = reading.body;
            return body.item == m_reads.item && body.quantity == m_reads.quantity && body.place == place &&
                   (m_direction.isEmpty() || !body.conditions.direction ||
                    *body.conditions.direction == outward(m_direction));
        });
    });
}

/// What was read, and where the limit at hand still asks; the first such place is chosen unless another is.
void ReadingDesk::showPanels() {
    const auto* of = item();
    if (!of || !placed()) {
        m_panels.show({});
        return;
    }
    const auto& file = *m_desk->file();
    auto marks = panelMarks(file, of->id, m_reads.quantity);
    const auto limit = aimed();
    const auto* type = file.type(*of);
    const auto serves = [&](const ReadingTaken& body) {
        const auto measured = measuredFrom(body);
        if (body.item != of->id || body.quantity != m_reads.quantity || !measured || !limit || !limit->limit)
            return false;
        const auto judgement = decide(*measured, {limit->limit, 1}).judgement;
        return judgement != Judgement::NoLimit && judgement != Judgement::Incomparable;
    };
    std::set<std::pair<int, int>> read;
    for (const auto& reading : file.inspection.readings)
        if (const auto& at = reading.body.place; at.gore && at.row && at.zone == Zone::Envelope && serves(reading.body))
            read.emplace(*at.gore, *at.row);
    for (const auto& place : m_justTaken)
        read.emplace(place.gore.value_or(0), place.row.value_or(0));
    std::vector<SuggestedPlace> taken;
    for (const auto& [gore, row] : read)
        taken.push_back({gore, row});
    const int gores = type && type->gores ? *type->gores : fewestGores;
    const int rows = type && type->rows ? *type->rows : fewestRows;
    auto asked = m_reads.line.empty()
                     ? std::vector<SuggestedPlace>{}
                     : stillAsked(suggestedPlaces(limit ? limit->wanted : 0, gores, rows), std::move(taken), gores);
    for (const auto* each : again())
        if (const auto& at = each->place;
            at.gore && at.row && at.zone == Zone::Envelope && std::ranges::find(m_justTaken, at) == m_justTaken.end())
            asked.push_back({*at.gore, *at.row});
    for (const auto& place : asked) {
        const auto known = std::ranges::find_if(
            marks, [&](const PanelMark& mark) { return mark.gore == place.gore && mark.row == place.row; });
        if (known == marks.end()) {
            marks.push_back({});
            marks.back().gore = place.gore;
            marks.back().row = place.row;
            marks.back().asked = true;
        } else {
            known->asked = true;
        }
        if (m_gore == 0 && m_desk->isOpen()) {
            m_gore = place.gore;
            m_row = place.row;
        }
    }
    m_panels.show(std::move(marks));
}

QString ReadingDesk::notAsked() const { return m_desk && m_desk->file() ? notAskedText(*m_desk->file()) : QString(); }

}

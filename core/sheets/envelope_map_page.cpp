// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/unit.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

using namespace paper;

constexpr int fewestGores = 8;
constexpr int fewestRows = 8;

PanelVerdict verdictOf(Judgement judgement) {
    return judgement == Judgement::Fails    ? PanelVerdict::Failed
           : judgement == Judgement::Passes ? PanelVerdict::Passed
                                            : PanelVerdict::Unjudged;
}

/// One figure: one series in one direction, so that no panel has two readings.
using Drawn = std::pair<SeriesKey, std::string>;

/// In the quantity's own unit, whatever each was read in.
Panel panelOf(const ReadingTaken& body, const ReadingState& state) {
    Panel panel;
    panel.gore = *body.place.gore;
    panel.row = *body.place.row;
    panel.text = figureText(state.measured->value.value());
    panel.verdict = verdictOf(state.judgement);
    panel.bound = body.held;
    panel.shade = state.share ? std::clamp(*state.share - 1.0, 0.0, 1.0) : 0;
    return panel;
}

EnvelopeMapFigure mapOf(const BenchFile& file, const ItemFacts& envelope, const Drawn& drawn,
                        const std::vector<const Said<ReadingTaken>*>& readings) {
    EnvelopeMapFigure map;
    const auto* type = file.type(envelope);
    std::string limit;
    int gores = fewestGores;
    int rows = fewestRows;
    for (const auto* reading : readings) {
        const auto state = stateOf(file, reading->body);
        map.panels.push_back(panelOf(reading->body, state));
        gores = std::max(gores, *reading->body.place.gore);
        rows = std::max(rows, *reading->body.place.row);
        if (!state.limit.empty())
            limit = state.limit;
    }
    map.gores = type && type->gores ? *type->gores : gores;
    map.rows = type && type->rows ? *type->rows : rows;
    const auto* quantity = quantityNamed(drawn.first.quantity);
    const auto title = seriesText(drawn.first) + (drawn.second.empty() ? "" : ", " + drawn.second);
    map.caption = "Envelope " + envelope.id.text() + ": " + title;
    map.legend.push_back(title + ", in " + std::string(unitOf(*quantity).shown) +
                         (limit.empty() ? "" : "; limit " + limit));
    map.legend.emplace_back("Mouth at the foot, crown at the head, gores as on the data plate");
    if (!type || !type->gores || !type->rows)
        map.legend.emplace_back("The record does not state the number of gores and rows of the type");
    return map;
}

}

paper::Document envelopeMapPage(const BenchFile& file) {
    auto document = blankSheet(file, "Envelope map");
    addDraftNote(document, file);
    std::map<Drawn, std::vector<const Said<ReadingTaken>*>> series;
    const auto* envelope = file.envelope();
    if (envelope)
        for (const auto* reading : speakingReadings(file.inspection)) {
            const auto& body = reading->body;
            if (body.item == envelope->id && body.place.gore && body.place.row && measuredFrom(body))
                series[{seriesOf(body.quantity, body.conditions), body.conditions.direction.value_or("")}].push_back(
                    reading);
        }
    if (series.empty())
        document.blocks.emplace_back(Paragraph{"No reading was taken at a place of the envelope.", Emphasis::Plain});
    for (const auto& [drawn, readings] : series)
        document.blocks.emplace_back(mapOf(file, *envelope, drawn, readings));
    return document;
}

}

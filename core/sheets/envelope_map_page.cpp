// SPDX-License-Identifier: GPL-3.0-or-later
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

EnvelopeMapFigure mapOf(const BenchFile& file, const ItemFacts& envelope,
                        const std::vector<const Said<ReadingTaken>*>& readings) {
    EnvelopeMapFigure map;
    const auto* type = file.type(envelope);
    map.gores = type && type->gores ? *type->gores : fewestGores;
    map.rows = type && type->rows ? *type->rows : fewestRows;
    std::string limit;
    for (const auto* reading : readings) {
        const auto& body = reading->body;
        const auto state = stateOf(file, body);
        Panel panel;
        panel.gore = *body.place.gore;
        panel.row = *body.place.row;
        panel.text = figureText(body.value);
        panel.verdict = verdictOf(state.judgement);
        panel.bound = body.held;
        panel.shade = state.share ? std::clamp(*state.share - 1.0, 0.0, 1.0) : 0;
        map.panels.push_back(std::move(panel));
        if (!state.limit.empty())
            limit = state.limit;
    }
    const auto& first = readings.front()->body;
    const auto* quantity = quantityNamed(first.quantity);
    map.legend.push_back(std::string(quantity ? quantity->title : first.quantity) + " in " + first.unit +
                         (limit.empty() ? "" : "; limit " + limit));
    if (const auto conditions = conditionsText(first.conditions); !conditions.empty())
        map.legend.push_back(conditions);
    map.caption =
        "Envelope " + envelope.id.text() + ": mouth at the foot, crown at the head, gores as on the data plate";
    return map;
}

}

paper::Document envelopeMapPage(const BenchFile& file) {
    auto document = blankSheet(file, "Envelope map");
    std::map<SeriesKey, std::vector<const Said<ReadingTaken>*>> series;
    const auto* envelope = file.envelope();
    if (envelope)
        for (const auto* reading : speakingReadings(file.inspection))
            if (reading->body.item == envelope->id && reading->body.place.gore && reading->body.place.row)
                series[seriesOf(reading->body.quantity, reading->body.conditions)].push_back(reading);
    if (series.empty())
        document.blocks.emplace_back(Paragraph{"No reading was taken at a place of the envelope.", Emphasis::Plain});
    for (const auto& [key, readings] : series) {
        document.blocks.emplace_back(Heading{2, seriesText(key)});
        document.blocks.emplace_back(mapOf(file, *envelope, readings));
    }
    return document;
}

}

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

/// @param unit whatever each was read in
Panel panelOf(const ReadingTaken& body, const ReadingState& state, const Unit& unit) {
    Panel panel;
    panel.gore = *body.place.gore;
    panel.row = *body.place.row;
    panel.text = figureText(state.measured->value.in(unit));
    panel.verdict = verdictOf(state.judgement);
    panel.bound = body.held;
    panel.shade = state.share ? std::clamp(*state.share - 1.0, 0.0, 1.0) : 0;
    return panel;
}

EnvelopeMapFigure mapOf(const BenchFile& file, const ItemFacts& envelope, const Drawn& drawn,
                        const std::vector<const Said<ReadingTaken>*>& readings, const Speech& in) {
    EnvelopeMapFigure map;
    const auto* type = file.type(envelope);
    std::optional<Phrase> limit;
    int gores = fewestGores;
    int rows = fewestRows;
    const auto* unit = &unitOf(*quantityNamed(drawn.first.quantity));
    for (const auto* reading : readings) // the manual's
        if (const auto* stated = stateOf(file, reading->body).unit)
            unit = stated;
    for (const auto* reading : readings) {
        const auto state = stateOf(file, reading->body);
        map.panels.push_back(panelOf(reading->body, state, *unit));
        gores = std::max(gores, *reading->body.place.gore);
        rows = std::max(rows, *reading->body.place.row);
        if (state.limit)
            limit = state.limit;
    }
    map.gores = type && type->gores ? *type->gores : gores;
    map.rows = type && type->rows ? *type->rows : rows;
    Listed parts{{testedAs(drawn.first)}};
    if (!drawn.second.empty())
        parts.list.emplace_back(Term{Term::Of::Direction, drawn.second});
    const auto title = in.say(parts);
    const auto shown = unit->shown;
    map.caption = in.say(SheetPhrase::MapCaption, {envelope.id, title});
    map.legend.push_back(limit ? in.say(SheetPhrase::MapUnitAndLimit, {title, shown, *limit})
                               : in.say(SheetPhrase::MapUnit, {title, shown}));
    map.legend.push_back(in.say(SheetPhrase::MapOrientation));
    if (!type || !type->gores || !type->rows)
        map.legend.push_back(in.say(SheetPhrase::MapSizeUnknown));
    return map;
}

}

paper::Document envelopeMapPage(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::Map, in);
    addWhatItIs(document, file, in);
    std::map<Drawn, std::vector<const Said<ReadingTaken>*>> series;
    const auto* envelope = file.envelope();
    if (envelope)
        for (const auto* reading : speakingReadings(file.inspection)) {
            const auto& body = reading->body;
            if (body.item == envelope->id && body.place.gore && body.place.row && body.place.zone == Zone::Envelope &&
                measuredFrom(body))
                series[{seriesOf(body.quantity, body.conditions), body.conditions.direction.value_or("")}].push_back(
                    reading);
        }
    if (series.empty())
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::NoReadingAtAPlace), Emphasis::Plain});
    for (const auto& [drawn, readings] : series)
        document.blocks.emplace_back(mapOf(file, *envelope, drawn, readings, in));
    return document;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/document.h"

#include <algorithm>

namespace crownring::paper {

std::string checkMarkText(CheckMark mark) {
    switch (mark) {
    case CheckMark::Open:
        return "open";
    case CheckMark::Done:
        return "done";
    case CheckMark::NotApplicable:
        return "n.a.";
    }
    return {};
}

std::string verdictText(PanelVerdict verdict) {
    switch (verdict) {
    case PanelVerdict::Unjudged:
        return {};
    case PanelVerdict::Passed:
        return "passed";
    case PanelVerdict::Failed:
        return "failed";
    }
    return {};
}

std::string readingText(const Panel& panel) { return panel.bound ? "\u2265\u00a0" + panel.text : panel.text; }

bool isOnMap(const EnvelopeMapFigure& map, const Panel& panel) {
    return panel.gore >= 1 && panel.gore <= map.gores && panel.row >= 1 && panel.row <= map.rows;
}

std::size_t width(const Table& table) {
    std::size_t most = table.columns.size();
    for (const auto& row : table.rows)
        most = std::max(most, row.size());
    return most;
}

Table asTable(const EnvelopeMapFigure& map) {
    Table table;
    table.columns = {
        {"Gore", Align::Right, 1}, {"Row", Align::Right, 1}, {"Reading", Align::Right, 2}, {"Verdict", Align::Left, 2}};
    for (const Panel& panel : map.panels)
        table.rows.push_back(
            {std::to_string(panel.gore), std::to_string(panel.row), readingText(panel), verdictText(panel.verdict)});
    return table;
}

Table asTable(const Checks& checks) {
    Table table;
    table.columns = {{"Line", Align::Left, 4},
                     {"Source", Align::Left, 3},
                     {"Mark", Align::Left, 1},
                     {"Finding", Align::Left, 4},
                     {"By", Align::Left, 2}};
    for (const CheckLine& line : checks.lines)
        table.rows.push_back({line.text, line.source, checkMarkText(line.mark), line.finding, line.by});
    return table;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "paper/document.h"

#include "paper/paper_phrase.h"

#include <algorithm>

namespace crownring::paper {

std::string_view checkMarkName(CheckMark mark) {
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

std::string_view verdictName(PanelVerdict verdict) {
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

std::string checkMarkText(CheckMark mark, const Speech& in) {
    return in.say(mark == CheckMark::Open   ? PaperPhrase::Open
                  : mark == CheckMark::Done ? PaperPhrase::Done
                                            : PaperPhrase::NotApplicable);
}

std::string verdictText(PanelVerdict verdict, const Speech& in) {
    if (verdict == PanelVerdict::Unjudged)
        return {};
    return in.say(verdict == PanelVerdict::Passed ? PaperPhrase::Passed : PaperPhrase::Failed);
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

Table asTable(const EnvelopeMapFigure& map, const Speech& in) {
    Table table;
    table.columns = {
        {in.say(PaperPhrase::Gore), Align::Right, 1},
        {in.say(PaperPhrase::Row), Align::Right, 1},
        {in.say(PaperPhrase::Reading), Align::Right, 2},
        {in.say(PaperPhrase::Verdict), Align::Left, 2},
    };
    for (const Panel& panel : map.panels)
        table.rows.push_back({std::to_string(panel.gore), std::to_string(panel.row), readingText(panel),
                              verdictText(panel.verdict, in)});
    return table;
}

bool namesItems(const Checks& checks) {
    return std::ranges::any_of(checks.lines, [](const CheckLine& line) { return !line.items.empty(); });
}

Table asTable(const Checks& checks, const Speech& in) {
    const bool items = namesItems(checks);
    Table table;
    table.columns = {{in.say(PaperPhrase::Line), Align::Left, 4},
                     {in.say(PaperPhrase::Source), Align::Left, 3},
                     {in.say(PaperPhrase::Mark), Align::Left, 1},
                     {in.say(PaperPhrase::Finding), Align::Left, 4},
                     {in.say(PaperPhrase::By), Align::Left, 2}};
    if (items)
        table.columns.insert(table.columns.begin() + 1, {in.say(PaperPhrase::Items), Align::Left, 2});
    for (const CheckLine& line : checks.lines) {
        table.rows.push_back({line.text, line.source, checkMarkText(line.mark, in), line.finding, line.by});
        if (items)
            table.rows.back().insert(table.rows.back().begin() + 1, line.items);
    }
    return table;
}

}

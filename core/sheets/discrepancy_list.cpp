// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

namespace crownring {

namespace {

using namespace paper;

/// What is open and not deferred, and what stands against flight beside the work.
Table openTable(const BenchFile& file, const std::vector<DefectLine>& lines, const Speech& in) {
    Table table;
    table.columns = {{in.say(SheetPhrase::Number), Align::Right, 0.5},
                     {in.say(SheetPhrase::Item), Align::Left, 1.2},
                     {in.say(SheetPhrase::Discrepancy), Align::Left, 4},
                     {in.say(SheetPhrase::Severity), Align::Left, 1.2},
                     {in.say(SheetPhrase::State), Align::Left, 2.4}};
    for (const auto& line : lines)
        if (line.open && !line.deferred)
            table.rows.push_back({std::to_string(table.rows.size() + 1), line.item, line.what,
                                  severityText(line.severity, in), line.state});
    for (const auto& each : listsExceptions(file) ? file.excepted : std::vector<Excepted>{})
        table.rows.push_back(
            {std::to_string(table.rows.size() + 1), each.item.text(), in.say(each.title),
             in.say(SheetPhrase::BarsFlight),
             answeredText(file, each.item, each.requirement, std::string(standingText(each.standing)), in)});
    return table;
}

/// 14 CFR 43.11(b), read: of items that may be inoperative (91.213(d), from memory) the placard stands on the list.
Table deferredTable(const std::vector<DefectLine>& lines, std::size_t before, const Speech& in) {
    Table table;
    table.columns = {
        {in.say(SheetPhrase::Number), Align::Right, 0.5},     {in.say(SheetPhrase::Item), Align::Left, 1.2},
        {in.say(SheetPhrase::Discrepancy), Align::Left, 2.4}, {in.say(SheetPhrase::State), Align::Left, 2.6},
        {in.say(SheetPhrase::Placard), Align::Left, 2.4},     {in.say(SheetPhrase::DeferredBy), Align::Left, 1.6}};
    for (const auto& line : lines)
        if (line.open && line.deferred)
            table.rows.push_back({std::to_string(before + table.rows.size() + 1), line.item, line.what, line.state,
                                  line.placard.empty() ? in.say(SheetPhrase::NoPlacard) : line.placard,
                                  line.deferredBy});
    return table;
}

}

paper::Document discrepancyList(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::DiscrepancyList, in);
    addWhatItIs(document, file, in);
    document.blocks.emplace_back(
        Paragraph{in.say(SheetPhrase::DiscrepancyNote, {signingOf(file).on}), Emphasis::Plain});
    addSince(document, file, in);
    const auto lines = defectLines(file, in);
    auto open = openTable(file, lines, in);
    auto deferred = deferredTable(lines, open.rows.size(), in);
    if (open.rows.empty())
        document.blocks.emplace_back(
            Paragraph{in.say(deferred.rows.empty() ? SheetPhrase::NothingOpen : SheetPhrase::NothingUndeferred),
                      Emphasis::Plain});
    else
        document.blocks.emplace_back(std::move(open));
    if (!deferred.rows.empty()) {
        document.blocks.emplace_back(Heading{3, in.say(SheetPhrase::DeferredItems)});
        document.blocks.emplace_back(std::move(deferred));
    }
    if (const auto out = takenOutText(file, in); !out.empty()) {
        document.blocks.emplace_back(Heading{3, in.say(SheetPhrase::Voided)});
        document.blocks.emplace_back(Paragraph{out, Emphasis::Plain});
    }
    document.blocks.emplace_back(signatureOf(file, in));
    return document;
}

}

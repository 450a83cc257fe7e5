// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>

namespace crownring {

namespace {

using namespace paper;

SheetPhrase titleOf(const BenchFile& file) {
    const auto outcome = file.inspection.closed ? file.inspection.closed->body.outcome : Outcome::Released;
    if (outcome == Outcome::Abandoned)
        return SheetPhrase::Abandoned;
    if (!file.inspection.opened.body.balloon)
        return SheetPhrase::WorkOnItems;
    if (file.inspection.approved)
        return SheetPhrase::ApprovedSince;
    if (regimeOf(file.visit()) == Regime::PartMl)
        return outcome == Outcome::Released ? SheetPhrase::ReleaseToService : SheetPhrase::WithoutRelease;
    return outcome == Outcome::Released ? SheetPhrase::ReturnToService : SheetPhrase::NoReturnToService;
}

/// As it was signed; while it is open, as it would be.
void addStatement(Document& document, const BenchFile& file, const ReleaseFacts& facts, const Speech& in) {
    const auto prescribed = statementOf(facts);
    const auto text = file.inspection.closed ? file.inspection.closed->body.statement : prescribed.text;
    if (!text.empty())
        document.blocks.emplace_back(Statement{text, prescribed.source});
    else if (prescribed.because)
        document.blocks.emplace_back(Paragraph{in.say(*prescribed.because), Emphasis::Quiet});
}

/// A release may leave minor defects open; it names them.
void addOpenMinor(Document& document, const BenchFile& file, const ReleaseFacts& facts, const Speech& in) {
    if (facts.outcome != Outcome::Released)
        return;
    bool any = false;
    for (const auto& line : defectLines(file, in)) {
        if (!line.open || line.deferred)
            continue;
        if (!any)
            document.blocks.emplace_back(Heading{3, in.say(SheetPhrase::OpenDefects)});
        any = true;
        document.blocks.emplace_back(Paragraph{
            in.say(SheetPhrase::OpenDefect, {line.item, line.what, severityText(line.severity, in)}), Emphasis::Plain});
    }
}

/// Who signed stands in the signature below, and nowhere else.
void addSections(Document& document, ReleaseFacts facts, const Speech& in) {
    facts.person.clear();
    facts.capacity.reset();
    facts.licence.clear();
    auto sections = sectionsOf(facts);
    if (!sections.empty())
        sections.pop_back(); // the caution, which stands on every page
    for (const auto& section : sections) {
        document.blocks.emplace_back(Heading{3, in.say(section.heading)});
        std::string lines;
        for (const auto& paragraph : section.paragraphs)
            lines += (lines.empty() ? "" : "\n") + in.say(paragraph);
        if (!lines.empty())
            document.blocks.emplace_back(Paragraph{lines, Emphasis::Plain});
    }
}

/// A release of less than was taken in says so.
void addNotDone(Document& document, const BenchFile& file, const ReleaseFacts& facts, const Speech& in) {
    const auto lacking = facts.outcome == Outcome::Abandoned ? std::vector<Work>() : workNotDone(file);
    if (!lacking.empty())
        document.blocks.emplace_back(
            Paragraph{in.say(SheetPhrase::NotDone, {workText(file, lacking, in)}), Emphasis::Strong});
}

void addSeal(Document& document, const BenchFile& file, const Speech& in) {
    if (file.inspection.closed && file.inspection.closed->body.seal) {
        const auto& seal = *file.inspection.closed->body.seal;
        document.blocks.emplace_back(
            Paragraph{in.say(SheetPhrase::SealOver, {seal.entries.size(), seal.digest}), Emphasis::Quiet});
    }
    if (!correctionsTable(file, in).rows.empty())
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::CorrectedSinceSee), Emphasis::Strong});
}

}

paper::Document releasePaper(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, titleOf(file), in);
    const auto facts = factsOf(file);
    addDraftNote(document, file, in);
    addSince(document, file, in);
    addSections(document, facts, in);
    addNotDone(document, file, facts, in);
    addOpenMinor(document, file, facts, in);
    addStatement(document, file, facts, in);
    document.blocks.emplace_back(signatureOf(file, in));
    addSeal(document, file, in);
    return document;
}

paper::Document logbookPage(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::LogbookEntry, in);
    const auto facts = factsOf(file);
    addDraftNote(document, file, in);
    addSince(document, file, in);
    Facts head;
    head.facts = {{in.say(SheetPhrase::Date), facts.date ? in.say(*facts.date) : in.say(SheetPhrase::NotSigned)},
                  {in.say(SheetPhrase::Inspection), in.say(titleOfVisit(file))},
                  {in.say(SheetPhrase::TotalTime), hoursText(facts.totalTime, in)},
                  {in.say(SheetPhrase::HighestTemperature),
                   facts.highestTemperature ? in.say(*facts.highestTemperature) : in.say(SheetPhrase::NotRead)}};
    document.blocks.emplace_back(std::move(head));
    for (const auto& each : facts.extent)
        document.blocks.emplace_back(Paragraph{in.say(each), Emphasis::Plain});
    std::string manuals;
    for (const auto& manual : facts.manuals)
        manuals += (manuals.empty() ? "" : "; ") + manual;
    if (!manuals.empty())
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::DataUsed, {manuals}), Emphasis::Plain});
    addNotDone(document, file, facts, in);
    addOpenMinor(document, file, facts, in);
    for (const auto& each : facts.excepted)
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::Excepted, {each}), Emphasis::Strong});
    for (const auto& each : facts.deferred)
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::Deferred, {each}), Emphasis::Plain});
    if (!facts.limitations.empty())
        document.blocks.emplace_back(
            Paragraph{in.say(SheetPhrase::Limitations, {facts.limitations}), Emphasis::Strong});
    addStatement(document, file, facts, in);
    document.blocks.emplace_back(signatureOf(file, in));
    return document;
}

paper::Document discrepancyList(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::DiscrepancyList, in);
    addDraftNote(document, file, in);
    document.blocks.emplace_back(
        Paragraph{in.say(SheetPhrase::DiscrepancyNote, {signingOf(file).on}), Emphasis::Plain});
    Table table;
    table.columns = {{in.say(SheetPhrase::Number), Align::Right, 0.5},
                     {in.say(SheetPhrase::Item), Align::Left, 1.2},
                     {in.say(SheetPhrase::Discrepancy), Align::Left, 4},
                     {in.say(SheetPhrase::Severity), Align::Left, 1},
                     {in.say(SheetPhrase::State), Align::Left, 2.4}};
    for (const auto& line : defectLines(file, in))
        if (line.open)
            table.rows.push_back({std::to_string(table.rows.size() + 1), line.item, line.what,
                                  severityText(line.severity, in), line.state});
    for (const auto& each : listsExceptions(file) ? file.excepted : std::vector<Excepted>{})
        table.rows.push_back(
            {std::to_string(table.rows.size() + 1), each.item.text(), in.say(each.title),
             in.say(SheetPhrase::BarsFlight),
             answeredText(file, each.item, each.requirement, std::string(standingText(each.standing)), in)});
    if (table.rows.empty())
        document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::NothingOpen), Emphasis::Plain});
    else
        document.blocks.emplace_back(std::move(table));
    document.blocks.emplace_back(signatureOf(file, in));
    return document;
}

}

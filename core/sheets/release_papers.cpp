// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <algorithm>

namespace crownring {

namespace {

using namespace paper;

std::string titleOf(const BenchFile& file) {
    const auto outcome = file.inspection.closed ? file.inspection.closed->body.outcome : Outcome::Released;
    if (outcome == Outcome::Abandoned)
        return "Inspection abandoned";
    if (!file.inspection.opened.body.balloon)
        return "Record of work on items";
    if (regimeOf(file.visit()) == Regime::PartMl)
        return outcome == Outcome::Released ? "Certificate of release to service" : "Inspection without release";
    return outcome == Outcome::Released ? "Maintenance record entry: approval for return to service"
                                        : "Maintenance record entry: not approved for return to service";
}

/// As it was signed; while it is open, as it would be.
void addStatement(Document& document, const BenchFile& file, const ReleaseFacts& facts) {
    const auto prescribed = statementOf(facts);
    const auto text = file.inspection.closed ? file.inspection.closed->body.statement : prescribed.text;
    if (!text.empty())
        document.blocks.emplace_back(Statement{text, prescribed.source});
    else if (!prescribed.because.empty())
        document.blocks.emplace_back(Paragraph{prescribed.because, Emphasis::Quiet});
}

/// A release may leave minor defects open; it names them.
void addOpenMinor(Document& document, const BenchFile& file, const ReleaseFacts& facts) {
    if (facts.outcome != Outcome::Released)
        return;
    bool any = false;
    for (const auto& line : defectLines(file)) {
        if (!line.open || line.deferred)
            continue;
        if (!any)
            document.blocks.emplace_back(Heading{3, "Open defects"});
        any = true;
        document.blocks.emplace_back(
            Paragraph{line.item + ": " + line.what + " (" + severityText(line.severity) + ")"});
    }
}

/// Who signed stands in the signature below, and nowhere else.
void addSections(Document& document, ReleaseFacts facts) {
    facts.person.clear();
    facts.capacity.reset();
    facts.licence.clear();
    auto sections = sectionsOf(facts);
    if (!sections.empty())
        sections.pop_back(); // the caution, which stands on every page
    for (const auto& section : sections) {
        document.blocks.emplace_back(Heading{3, section.heading});
        std::string lines;
        for (const auto& paragraph : section.paragraphs)
            lines += (lines.empty() ? "" : "\n") + paragraph;
        if (!lines.empty())
            document.blocks.emplace_back(Paragraph{lines, Emphasis::Plain});
    }
}

void addSeal(Document& document, const BenchFile& file) {
    if (file.inspection.closed && file.inspection.closed->body.seal) {
        const auto& seal = *file.inspection.closed->body.seal;
        document.blocks.emplace_back(Paragraph{"The signature covers " + std::to_string(seal.entries.size()) +
                                                   " entries of the record; digest " + seal.digest + ".",
                                               Emphasis::Quiet});
    }
    if (!correctionsTable(file).rows.empty())
        document.blocks.emplace_back(
            Paragraph{"Entries of this inspection were corrected since they were written; the inspection report shows "
                      "both wordings.",
                      Emphasis::Strong});
}

}

paper::Document releasePaper(const BenchFile& file) {
    auto document = blankSheet(file, titleOf(file));
    const auto facts = factsOf(file);
    addDraftNote(document, file);
    addSections(document, facts);
    addOpenMinor(document, file, facts);
    addStatement(document, file, facts);
    document.blocks.emplace_back(signatureOf(file));
    addSeal(document, file);
    return document;
}

paper::Document logbookPage(const BenchFile& file) {
    auto document = blankSheet(file, "Logbook entry");
    const auto facts = factsOf(file);
    addDraftNote(document, file);
    Facts head;
    head.facts = {{"Date", facts.date ? facts.date->iso() : "not signed"},
                  {"Inspection", std::string(visitTitle(file.visit()))},
                  {"Total time in service", facts.totalTime ? hoursAndMinutes(*facts.totalTime) + " h" : "not known"},
                  {"Highest temperature of the tell-tale",
                   facts.highestTemperature.empty() ? "not read" : facts.highestTemperature}};
    document.blocks.emplace_back(std::move(head));
    for (const auto& each : facts.extent)
        document.blocks.emplace_back(Paragraph{each, Emphasis::Plain});
    std::string manuals;
    for (const auto& manual : facts.manuals)
        manuals += (manuals.empty() ? "" : "; ") + manual;
    if (!manuals.empty())
        document.blocks.emplace_back(Paragraph{"Data used: " + manuals, Emphasis::Plain});
    addOpenMinor(document, file, facts);
    for (const auto& each : facts.deferred)
        document.blocks.emplace_back(Paragraph{"Deferred: " + each, Emphasis::Plain});
    if (!facts.limitations.empty())
        document.blocks.emplace_back(Paragraph{"Limitations: " + facts.limitations, Emphasis::Strong});
    addStatement(document, file, facts);
    document.blocks.emplace_back(signatureOf(file));
    return document;
}

paper::Document discrepancyList(const BenchFile& file) {
    auto document = blankSheet(file, "List of discrepancies and unairworthy items");
    addDraftNote(document, file);
    document.blocks.emplace_back(
        Paragraph{"Dated " + signingOf(file).on.iso() +
                      ", for the owner or operator. What is listed here is open; an item that bars "
                      "flight is put right, or deferred by who is entitled to, before the next flight.",
                  Emphasis::Plain});
    Table table;
    table.columns = {{"No.", Align::Right, 0.5},
                     {"Item", Align::Left, 1.2},
                     {"Discrepancy", Align::Left, 4},
                     {"Severity", Align::Left, 1},
                     {"State", Align::Left, 2.4}};
    for (const auto& line : defectLines(file))
        if (line.open)
            table.rows.push_back(
                {std::to_string(table.rows.size() + 1), line.item, line.what, severityText(line.severity), line.state});
    if (table.rows.empty())
        document.blocks.emplace_back(Paragraph{"Nothing is open.", Emphasis::Plain});
    else
        document.blocks.emplace_back(std::move(table));
    document.blocks.emplace_back(signatureOf(file));
    return document;
}

}

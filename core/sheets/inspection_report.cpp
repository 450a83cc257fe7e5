// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <set>

namespace crownring {

namespace {

using namespace paper;

std::string titleOf(const WorkLine& work) { return work.line ? work.line->title : work.settled->body.line; }

std::string outcomeText(Outcome outcome) {
    switch (outcome) {
    case Outcome::Released:
        return "released";
    case Outcome::Discrepancies:
        return "not released; a list of discrepancies was given";
    case Outcome::Abandoned:
        return "abandoned; nothing is released";
    }
    return {};
}

Facts headFacts(const BenchFile& file) {
    const auto& opened = file.inspection.opened;
    Facts facts;
    facts.columns = 2;
    facts.facts = {
        {"Visit", std::string(visitTitle(file.visit()))},
        {"Opened", who(opened.by, opened.stamp.at.on())},
        {"Closed", file.inspection.closed ? file.inspection.closed->stamp.at.on().iso() : "not yet"},
        {"Outcome", file.inspection.closed ? outcomeText(file.inspection.closed->body.outcome) : "none yet"},
        {"Checklist", file.inspection.checklist.title.empty()
                          ? "none in the record; the lines are the shop's own"
                          : file.inspection.checklist.title + ", revision " + file.inspection.checklist.revision}};
    std::set<std::string> people;
    for (const auto& line : file.inspection.lines)
        people.insert(line.by);
    for (const auto& reading : file.inspection.readings)
        people.insert(reading.by);
    people.erase("");
    std::string names;
    for (const auto& person : people)
        names += (names.empty() ? "" : ", ") + person;
    if (!names.empty())
        facts.facts.push_back({"Inspectors", names});
    std::string work;
    for (const auto& each : file.inspection.opened.body.work)
        work += (work.empty() ? "" : "; ") + each.item.text() + ": " + each.requirement.text();
    if (!work.empty())
        facts.facts.push_back({"To be done", work});
    if (const auto highest = highestTemperature(file); !highest.empty())
        facts.facts.push_back({"Highest temperature of the tell-tale", highest});
    return facts;
}

Table itemsTable(const BenchFile& file) {
    Table table;
    table.columns = {{"Item", Align::Left, 2},
                     {"Kind", Align::Left, 1.5},
                     {"Type", Align::Left, 2},
                     {"Serial no.", Align::Left, 1.5},
                     {"Time in service", Align::Right, 1.5}};
    for (const auto& item : file.items)
        table.rows.push_back({item.id.text(), std::string(itemKindName(item.kind)), item.type.value_or("not recorded"),
                              item.serial.value_or("not recorded"),
                              item.clock.minutes ? hoursAndMinutes(*item.clock.minutes) + " h" : "not known"});
    return table;
}

CheckMark markOf(LineState state) {
    return state == LineState::Done            ? CheckMark::Done
           : state == LineState::NotApplicable ? CheckMark::NotApplicable
                                               : CheckMark::Open;
}

void addChecks(Document& document, const BenchFile& file) {
    std::string part;
    for (const auto& work : workLines(file.inspection, file.items)) {
        std::string title = "Other lines";
        for (const auto& section : file.inspection.checklist.sections)
            if (work.line && section.id == work.line->section)
                title = section.title;
        if (work.item)
            title += ": " + work.item->id.text();
        if (title != part) {
            document.blocks.emplace_back(Heading{2, title});
            document.blocks.emplace_back(Checks{});
            part = title;
        }
        CheckLine line{
            titleOf(work), std::string(work.clauseUnder(regimeOf(file.visit()))), markOf(work.state()), {}, {}};
        if (work.settled) {
            line.finding = work.settled->body.finding;
            if (work.settled->body.tester)
                line.finding += (line.finding.empty() ? "tester " : "; tester ") + work.settled->body.tester->text();
            if (!work.settled->body.photographs.empty())
                line.finding += (line.finding.empty() ? "" : "; ") +
                                std::to_string(work.settled->body.photographs.size()) + " photograph(s) in the record";
            line.by = who(work.settled->by, work.settled->stamp.at.on());
        }
        std::get<Checks>(document.blocks.back()).lines.push_back(std::move(line));
    }
}

/// Both wordings stay legible.
void addCorrections(Document& document, const BenchFile& file) {
    auto table = correctionsTable(file);
    if (table.rows.empty())
        return;
    table.note = "The rest of this report says what these entries say now; the record keeps both.";
    document.blocks.emplace_back(Heading{2, "Corrected since"});
    document.blocks.emplace_back(std::move(table));
}

void addWork(Document& document, const BenchFile& file) {
    Table table;
    table.columns = {{"Item", Align::Left, 1.2},
                     {"Repair or part", Align::Left, 3},
                     {"Where, size, serial numbers", Align::Left, 3},
                     {"Material lot or release document", Align::Left, 2.4},
                     {"By", Align::Left, 1.6}};
    for (const auto& repair : file.inspection.repairs) {
        std::string where = placeText(repair.body.place);
        if (repair.body.width && repair.body.height)
            where += (where.empty() ? "" : ", ") + figureText(repair.body.width->value()) + " × " +
                     figureText(repair.body.height->value()) + " mm";
        table.rows.push_back({repair.body.item.text(), repair.body.method, where, repair.body.lot,
                              who(repair.by, repair.stamp.at.on())});
    }
    for (const auto& part : file.inspection.parts)
        table.rows.push_back({part.body.item.text(), part.body.part,
                              "off " + (part.body.removedSerial.empty() ? "not stated" : part.body.removedSerial) +
                                  ", on " + (part.body.fittedSerial.empty() ? "not stated" : part.body.fittedSerial),
                              part.body.releaseDocument, who(part.by, part.stamp.at.on())});
    if (table.rows.empty())
        return;
    document.blocks.emplace_back(Heading{2, "Repairs and parts"});
    document.blocks.emplace_back(std::move(table));
}

void addDefects(Document& document, const BenchFile& file) {
    Table table;
    table.columns = {{"Item", Align::Left, 1.2},
                     {"Defect", Align::Left, 3},
                     {"Severity", Align::Left, 1},
                     {"What became of it", Align::Left, 3.4}};
    for (const auto& line : defectLines(file))
        table.rows.push_back({line.item, line.what, severityText(line.severity), line.state});
    if (table.rows.empty())
        return;
    document.blocks.emplace_back(Heading{2, "Defects"});
    document.blocks.emplace_back(std::move(table));
}

}

paper::Table linesTable(const BenchFile& file) {
    Table table;
    table.columns = {{"line"}, {"item"}, {"title"}, {"state"}, {"finding"}, {"by"}, {"on"}, {"source"}};
    for (const auto& work : workLines(file.inspection, file.items))
        table.rows.push_back(
            {work.line ? work.line->id : work.settled->body.line, work.item ? work.item->id.text() : "", titleOf(work),
             std::string(lineStateName(work.state())), work.settled ? work.settled->body.finding : "",
             work.settled ? work.settled->by : "", work.settled ? work.settled->stamp.at.on().iso() : "",
             std::string(work.clauseUnder(regimeOf(file.visit())))});
    return table;
}

paper::Document inspectionReport(const BenchFile& file) {
    auto document = blankSheet(file, "Inspection report");
    addDraftNote(document, file);
    document.blocks.emplace_back(headFacts(file));
    document.blocks.emplace_back(Heading{2, "Items"});
    document.blocks.emplace_back(itemsTable(file));
    addDefects(document, file);
    addWork(document, file);
    if (!file.inspection.readings.empty()) {
        document.blocks.emplace_back(Heading{2, "Readings"});
        document.blocks.emplace_back(readingsToRead(file));
    }
    if (auto testers = testersTable(file); !testers.rows.empty()) {
        document.blocks.emplace_back(Heading{2, "Testers"});
        document.blocks.emplace_back(std::move(testers));
    }
    addChecks(document, file);
    addCorrections(document, file);
    return document;
}

}

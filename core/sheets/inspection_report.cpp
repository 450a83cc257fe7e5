// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/accomplished.h"
#include "bench/release/extent.h"
#include "measure/duration_text.h"
#include "sheets/report_lines.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <set>

namespace crownring {

namespace {

using namespace paper;

/// Nothing is released by what is on no balloon, unless it came as a component.
SheetPhrase outcomePhrase(Outcome outcome, bool releases) {
    switch (outcome) {
    case Outcome::Released:
        return releases ? SheetPhrase::OutcomeReleased : SheetPhrase::OutcomeSigned;
    case Outcome::Discrepancies:
        return SheetPhrase::OutcomeDiscrepancies;
    case Outcome::Abandoned:
        return SheetPhrase::OutcomeAbandoned;
    case Outcome::Incomplete:
        return SheetPhrase::OutcomeIncomplete;
    }
    return SheetPhrase::NoneYet;
}

/// What is to be done; once it is signed, what of it was.
std::vector<std::pair<std::string, std::string>> workOf(const BenchFile& file, const Speech& in) {
    const auto& work = file.inspection.opened.body.work;
    const auto& closed = file.inspection.closed;
    std::vector<std::pair<std::string, std::string>> facts;
    const auto add = [&](SheetPhrase title, const std::vector<Work>& of) {
        if (!of.empty())
            facts.emplace_back(in.say(title), workText(file, of, in));
    };
    if (!closed || closed->body.outcome == Outcome::Abandoned) {
        add(SheetPhrase::ToBeDone, work);
    } else {
        add(SheetPhrase::WorkDone, accomplishments(file));
        add(SheetPhrase::WorkNotDone, workNotDone(file));
    }
    return facts;
}

Facts headFacts(const BenchFile& file, const Speech& in) {
    const auto& opened = file.inspection.opened;
    const auto& closed = file.inspection.closed;
    const auto& checklist = file.inspection.checklist;
    Facts facts;
    facts.columns = 2;
    facts.labelShare = 0.3;
    const auto add = [&](SheetPhrase label, const std::string& value) {
        if (!value.empty())
            facts.facts.push_back({in.say(label), value});
    };
    facts.facts = {{in.say(SheetPhrase::Visit), in.say(titleOfVisit(file))},
                   {in.say(SheetPhrase::Opened), who(opened.by, opened.stamp.at.on())},
                   {in.say(SheetPhrase::Closed), closed ? in.say(closed->stamp.at.on()) : in.say(SheetPhrase::NotYet)},
                   {in.say(SheetPhrase::Outcome),
                    in.say(closed ? outcomePhrase(closed->body.outcome, file.releases()) : SheetPhrase::NoneYet)},
                   {in.say(SheetPhrase::Checklist),
                    checklist.title.empty() ? in.say(SheetPhrase::NoChecklist)
                                            : in.say(SheetPhrase::Revision, {checklist.title, checklist.revision})}};
    add(SheetPhrase::OrderNumber, opened.body.order);
    add(SheetPhrase::OwnerOf, file.owner);
    add(SheetPhrase::OperatorOf, file.operatedBy);
    std::set<std::string> people;
    for (const auto& line : file.inspection.lines)
        people.insert(line.by);
    for (const auto& reading : file.inspection.readings)
        people.insert(reading.by);
    people.erase("");
    std::string names;
    for (const auto& person : people)
        names += (names.empty() ? "" : ", ") + person;
    add(SheetPhrase::Inspectors, names);
    for (const auto& [title, work] : workOf(file, in))
        facts.facts.push_back({title, work});
    if (const auto highest = highestTemperature(file))
        facts.facts.push_back({in.say(SheetPhrase::HighestTemperature), in.say(*highest)});
    return facts;
}

Table itemsTable(const BenchFile& file, const Speech& in) {
    Table table;
    table.columns = {{in.say(SheetPhrase::Item), Align::Left, 2},
                     {in.say(SheetPhrase::Kind), Align::Left, 1.5},
                     {in.say(SheetPhrase::Type), Align::Left, 2},
                     {in.say(SheetPhrase::SerialNumber), Align::Left, 1.5},
                     {in.say(SheetPhrase::TimeInService), Align::Right, 1.5}};
    const auto orNotRecorded = [&](const std::optional<std::string>& text) {
        return text ? *text : in.say(SheetPhrase::NotRecorded);
    };
    for (const auto& item : file.items)
        table.rows.push_back({item.id.text(), in.say(termOf(item.kind)), orNotRecorded(item.type),
                              orNotRecorded(item.serial), hoursText(item.clock.minutes, in)});
    return table;
}

/// Both wordings stay legible.
void addCorrections(Document& document, const BenchFile& file, const Speech& in) {
    auto table = correctionsTable(file, in);
    if (table.rows.empty())
        return;
    table.note = in.say(SheetPhrase::CorrectionsNote);
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::CorrectedSince)});
    document.blocks.emplace_back(std::move(table));
}

void addWork(Document& document, const BenchFile& file, const Speech& in) {
    Table table;
    table.columns = {{in.say(SheetPhrase::Item), Align::Left, 1.2},
                     {in.say(SheetPhrase::RepairOrPart), Align::Left, 3},
                     {in.say(SheetPhrase::WhereSizeSerials), Align::Left, 3},
                     {in.say(SheetPhrase::LotOrDocument), Align::Left, 2.4},
                     {in.say(SheetPhrase::By), Align::Left, 1.6}};
    for (const auto& repair : file.inspection.repairs) {
        std::string where = placeText(repair.body.place, in);
        if (repair.body.width && repair.body.height)
            where += (where.empty() ? "" : ", ") + figureText(repair.body.width->value()) + " × " +
                     figureText(repair.body.height->value()) + " mm";
        table.rows.push_back({repair.body.item.text(), repair.body.method, where, repair.body.lot,
                              who(repair.by, repair.stamp.at.on())});
    }
    const auto orNotStated = [&](const std::string& text) {
        return text.empty() ? in.say(SheetPhrase::NotStated) : text;
    };
    for (const auto& part : file.inspection.parts)
        table.rows.push_back(
            {part.body.item.text(), part.body.part,
             in.say(SheetPhrase::OffAndOn, {orNotStated(part.body.removedSerial), orNotStated(part.body.fittedSerial)}),
             part.body.releaseDocument, who(part.by, part.stamp.at.on())});
    if (table.rows.empty())
        return;
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::RepairsAndParts)});
    document.blocks.emplace_back(std::move(table));
}

/// 14 CFR 43.9(a)(1), (3) (from memory): what was done, to which data, by whom where that is another.
void addPerformed(Document& document, const BenchFile& file, const Speech& in) {
    Table table;
    table.columns = {
        {in.say(SheetPhrase::Item), Align::Left, 1.4}, {in.say(SheetPhrase::WorkOf), Align::Left, 2.6},
        {in.say(SheetPhrase::Data), Align::Left, 2},   {in.say(SheetPhrase::GradeOf), Align::Left, 1.5},
        {in.say(SheetPhrase::Form), Align::Left, 1.3}, {in.say(SheetPhrase::PerformedBy), Align::Left, 1.2},
        {in.say(SheetPhrase::By), Align::Left, 1.8}};
    for (const auto& said : file.inspection.performed) {
        const auto& work = said.body;
        table.rows.push_back({work.item.text(), work.what, work.data,
                              work.grade ? in.say(Argument(phraseOf(*work.grade, regimeOf(file.visit())))) : "",
                              work.approval, work.performed ? work.performed->text() : "",
                              who(said.by, said.stamp.at.on())});
    }
    for (const auto& said : file.inspection.answered)
        if (const auto& answer = said.body; answer.answer == DirectiveAnswer::Done)
            table.rows.push_back({answer.item ? answer.item->text() : answer.balloon.value_or(Registration()).text(),
                                  answer.method, dataOf(answer), "", answer.amoc, "",
                                  who(said.by, said.stamp.at.on())});
    if (table.rows.empty())
        return;
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::WorkPerformed)});
    document.blocks.emplace_back(std::move(table));
}

void addDefects(Document& document, const BenchFile& file, const Speech& in) {
    Table table;
    table.columns = {{in.say(SheetPhrase::Item), Align::Left, 1.2},
                     {in.say(SheetPhrase::Defect), Align::Left, 3},
                     {in.say(SheetPhrase::Severity), Align::Left, 1},
                     {in.say(SheetPhrase::WhatBecameOfIt), Align::Left, 3.4}};
    for (const auto& line : defectLines(file, in)) {
        const auto shown = line.photographs.empty()
                               ? std::string()
                               : "; " + in.say(SheetPhrase::Photographs, {line.photographs.size()});
        table.rows.push_back({line.item, line.what + shown, severityText(line.severity, in), line.state});
    }
    if (table.rows.empty())
        return;
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Defects)});
    document.blocks.emplace_back(std::move(table));
}

}

paper::Document inspectionReport(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, isInspection(file.visit()) ? SheetPhrase::Report : SheetPhrase::WorkReport, in);
    addWhatItIs(document, file, in);
    addSince(document, file, in);
    addEarlierRelease(document, file, in);
    document.blocks.emplace_back(headFacts(file, in));
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Items)});
    document.blocks.emplace_back(itemsTable(file, in));
    addEvents(document, file, in);
    addDefects(document, file, in);
    addPerformed(document, file, in);
    addWork(document, file, in);
    Marks clauses(Marks::By::Numbers);
    Marks people(Marks::By::Letters);
    if (!file.inspection.readings.empty()) {
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Readings)});
        addReadings(document, file, people, in);
    }
    if (auto testers = testersTable(file, in); !testers.rows.empty()) {
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Testers)});
        document.blocks.emplace_back(std::move(testers));
    }
    addChecks(document, file, clauses, people, in);
    addKey(document, clauses, people, in);
    addCorrections(document, file, in);
    return document;
}

}

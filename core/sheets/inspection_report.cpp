// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/accomplished.h"
#include "measure/duration_text.h"
#include "sheets/sheet_parts.h"
#include "sheets/sheets.h"

#include <set>

namespace crownring {

namespace {

using namespace paper;

std::string titleOf(const WorkLine& work) { return work.line ? work.line->title : work.settled->body.line; }

SheetPhrase outcomePhrase(Outcome outcome, bool onBalloon) {
    switch (outcome) {
    case Outcome::Released:
        return onBalloon ? SheetPhrase::OutcomeReleased : SheetPhrase::OutcomeSigned;
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
    facts.facts = {
        {in.say(SheetPhrase::Visit), in.say(titleOfVisit(file))},
        {in.say(SheetPhrase::Opened), who(opened.by, opened.stamp.at.on())},
        {in.say(SheetPhrase::Closed), closed ? in.say(closed->stamp.at.on()) : in.say(SheetPhrase::NotYet)},
        {in.say(SheetPhrase::Outcome),
         in.say(closed ? outcomePhrase(closed->body.outcome, opened.body.balloon.has_value()) : SheetPhrase::NoneYet)},
        {in.say(SheetPhrase::Checklist), checklist.title.empty()
                                             ? in.say(SheetPhrase::NoChecklist)
                                             : in.say(SheetPhrase::Revision, {checklist.title, checklist.revision})}};
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
        facts.facts.push_back({in.say(SheetPhrase::Inspectors), names});
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

CheckMark markOf(LineState state) {
    return state == LineState::Done            ? CheckMark::Done
           : state == LineState::NotApplicable ? CheckMark::NotApplicable
                                               : CheckMark::Open;
}

void addChecks(Document& document, const BenchFile& file, const Speech& in) {
    std::string part;
    for (const auto& work : workLines(file.inspection, file.items)) {
        std::string title = in.say(SheetPhrase::OtherLines);
        for (const auto& section : file.inspection.checklist.sections)
            if (work.line && section.id == work.line->section)
                title = in.say(titleOf(section));
        if (work.item)
            title = in.say(SheetPhrase::OnItem, {title, work.item->id});
        if (title != part) {
            document.blocks.emplace_back(Heading{2, title});
            document.blocks.emplace_back(Checks{});
            part = title;
        }
        CheckLine line{
            titleOf(work), std::string(work.clauseUnder(regimeOf(file.visit()))), markOf(work.state()), {}, {}};
        if (work.settled) {
            const auto& body = work.settled->body;
            line.finding = body.finding;
            const auto add = [&](SheetPhrase what, Argument which) {
                line.finding += (line.finding.empty() ? "" : "; ") + in.say(what, {std::move(which)});
            };
            if (body.why == WhyNot::NotFitted)
                add(SheetPhrase::NotFitted, "");
            if (body.why == WhyNot::NotAsked)
                add(SheetPhrase::NotAsked, body.page);
            if (body.tester)
                add(SheetPhrase::WithTester, *body.tester);
            if (!body.photographs.empty())
                add(SheetPhrase::Photographs, body.photographs.size());
            line.by = who(work.settled->by, work.settled->stamp.at.on());
        }
        std::get<Checks>(document.blocks.back()).lines.push_back(std::move(line));
    }
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

paper::Table linesTable(const BenchFile& file) {
    Table table;
    table.columns = {{"line"}, {"item"}, {"title"},  {"state"}, {"finding"},
                     {"by"},   {"on"},   {"source"}, {"why"},   {"page"}};
    for (const auto& work : workLines(file.inspection, file.items)) {
        const auto* body = work.settled ? &work.settled->body : nullptr;
        table.rows.push_back({work.line ? work.line->id : body->line, work.item ? work.item->id.text() : "",
                              titleOf(work), std::string(lineStateName(work.state())), body ? body->finding : "",
                              body ? work.settled->by : "", body ? work.settled->stamp.at.on().iso() : "",
                              std::string(work.clauseUnder(regimeOf(file.visit()))),
                              body && body->why ? std::string(whyNotName(*body->why)) : "", body ? body->page : ""});
    }
    return table;
}

paper::Document inspectionReport(const BenchFile& file, const Speech& in) {
    auto document = blankSheet(file, SheetPhrase::Report, in);
    addDraftNote(document, file, in);
    addSince(document, file, in);
    document.blocks.emplace_back(headFacts(file, in));
    document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Items)});
    document.blocks.emplace_back(itemsTable(file, in));
    addDefects(document, file, in);
    addWork(document, file, in);
    if (!file.inspection.readings.empty()) {
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Readings)});
        document.blocks.emplace_back(readingsToRead(file, in));
    }
    if (auto testers = testersTable(file, in); !testers.rows.empty()) {
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Testers)});
        document.blocks.emplace_back(std::move(testers));
    }
    addChecks(document, file, in);
    addCorrections(document, file, in);
    return document;
}

}

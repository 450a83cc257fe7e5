// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/report_lines.h"

#include "sheets/sheets.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

using namespace paper;

std::string idOf(const WorkLine& work) { return work.line ? work.line->id : work.settled->body.line; }
std::string titleOf(const WorkLine& work) { return work.line ? work.line->title : work.settled->body.line; }

CheckMark markOf(LineState state) {
    return state == LineState::Done            ? CheckMark::Done
           : state == LineState::NotApplicable ? CheckMark::NotApplicable
                                               : CheckMark::Open;
}

std::string findingOf(const WorkLine& work, const Speech& in) {
    if (!work.settled)
        return {};
    const auto& body = work.settled->body;
    auto finding = body.finding;
    const auto add = [&](SheetPhrase what, Argument which) {
        finding += (finding.empty() ? "" : "; ") + in.say(what, {std::move(which)});
    };
    if (body.why == WhyNot::NotFitted)
        add(SheetPhrase::NotFitted, "");
    if (body.why == WhyNot::NotAsked)
        add(SheetPhrase::NotAsked, body.page);
    if (body.tester)
        add(SheetPhrase::WithTester, *body.tester);
    if (!body.photographs.empty())
        add(SheetPhrase::Photographs, body.photographs.size());
    return finding;
}

/// The mark of what stands on our lists from memory; it is said once, in the key.
constexpr std::string_view fromMemory = "(from memory; check against the current text)";

std::string withoutMemory(std::string clause) {
    for (auto at = clause.find(fromMemory); at != std::string::npos; at = clause.find(fromMemory))
        clause.replace(at, fromMemory.size(), "*");
    return clause;
}

/// One line with those of its items on which it came out alike.
struct Row {
    std::string id;
    CheckLine line;
    std::set<std::string> items;
};

struct Section {
    std::string title;
    std::vector<Row> rows;
    std::set<std::string> items; ///< of all its rows; "" is the visit

    [[nodiscard]] std::string named() const {
        std::string names;
        for (const auto& item : items)
            if (!item.empty())
                names += (names.empty() ? "" : ", ") + item;
        return names;
    }
    /// On all items that the section is about.
    [[nodiscard]] bool isOnAll(const Row& row) const {
        auto all = items;
        all.erase("");
        return row.items == all;
    }
};

class Sections {
public:
    Sections(const BenchFile& file, Marks& clauses, Marks& people, const Speech& in)
        : m_file(file), m_clauses(clauses), m_people(people), m_in(in) {}

    std::vector<Section> take() {
        for (const auto& work : workLines(m_file.inspection, m_file.items))
            add(work);
        return std::move(m_sections);
    }

private:
    Section& sectionOf(const WorkLine& work) {
        std::string title = m_in.say(SheetPhrase::OtherLines);
        for (const auto& section : m_file.inspection.checklist.sections)
            if (work.line && section.id == work.line->section)
                title = m_in.say(crownring::titleOf(section));
        const auto there = std::ranges::find(m_sections, title, &Section::title);
        return there == m_sections.end() ? m_sections.emplace_back(Section{title, {}, {}}) : *there;
    }

    void add(const WorkLine& work) {
        auto& section = sectionOf(work);
        const auto item = work.item ? work.item->id.text() : std::string();
        section.items.insert(item);
        Row row{idOf(work),
                {titleOf(work), m_clauses.of(withoutMemory(std::string(work.clauseUnder(regimeOf(m_file.visit()))))),
                 markOf(work.state()), findingOf(work, m_in),
                 work.settled ? m_people.of(who(work.settled->by, work.settled->stamp.at.on())) : "", item},
                {item}};
        const auto isAlike = [&](const Row& other) {
            auto line = other.line;
            line.items = item;
            return other.id == row.id && !item.empty() && line == row.line;
        };
        if (const auto alike = std::ranges::find_if(section.rows, isAlike); alike != section.rows.end()) {
            alike->line.items += ", " + item;
            alike->items.insert(item);
            return;
        }
        // The same line on other items stands under it.
        const auto last = std::find_if(section.rows.rbegin(), section.rows.rend(),
                                       [&](const Row& each) { return each.id == row.id; });
        section.rows.insert(last.base() == section.rows.begin() ? section.rows.end() : last.base(), std::move(row));
    }

    const BenchFile& m_file;
    Marks& m_clauses;
    Marks& m_people;
    const Speech& m_in;
    std::vector<Section> m_sections;
};

/// What begins alike ("AMC1 ML.A.302(d), ELA2 balloons, envelope: …") stands in one row.
std::vector<Fact> byDocument(const std::vector<Fact>& clauses, const Speech& in) {
    std::vector<Fact> rows;
    std::string others;
    for (const auto& clause : clauses) {
        const auto colon = clause.value.find(": ");
        const bool divides = colon != std::string::npos && clause.value.find(';') == std::string::npos;
        const auto document = divides ? clause.value.substr(0, colon) : std::string();
        const auto text = "(" + clause.label + ") " + (divides ? clause.value.substr(colon + 2) : clause.value);
        if (!divides) {
            others += (others.empty() ? "" : "; ") + text;
            continue;
        }
        const auto there = std::ranges::find(rows, document, &Fact::label);
        if (there == rows.end())
            rows.push_back({document, text});
        else
            there->value += "; " + text;
    }
    if (!others.empty())
        rows.push_back({rows.empty() ? std::string() : in.say(SheetPhrase::OtherClauses), others});
    return rows;
}

}

void addChecks(Document& document, const BenchFile& file, Marks& clauses, Marks& people, const Speech& in) {
    for (auto& section : Sections(file, clauses, people, in).take()) {
        const auto names = section.named();
        document.blocks.emplace_back(
            Heading{2, names.empty() ? section.title : in.say(SheetPhrase::OnItem, {section.title, names})});
        Checks checks;
        for (auto& row : section.rows) {
            if (section.items.size() == 1)
                row.line.items.clear();
            else if (section.isOnAll(row))
                row.line.items = in.say(SheetPhrase::OnAll);
            checks.lines.push_back(std::move(row.line));
        }
        document.blocks.emplace_back(std::move(checks));
    }
}

void addKey(Document& document, const Marks& clauses, const Marks& people, const Speech& in) {
    if (auto listed = people.listed(); !listed.empty()) {
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::ByWhom)});
        document.blocks.emplace_back(Facts{std::move(listed), 2, 0.08});
    }
    if (auto listed = clauses.listed(); !listed.empty()) {
        const bool fromMemoryToo =
            std::ranges::any_of(listed, [](const Fact& fact) { return fact.value.find('*') != std::string::npos; });
        document.blocks.emplace_back(Heading{2, in.say(SheetPhrase::Clauses)});
        document.blocks.emplace_back(Facts{byDocument(listed, in), 1, 0.24, true});
        if (fromMemoryToo)
            document.blocks.emplace_back(Paragraph{in.say(SheetPhrase::ClausesFromMemory), Emphasis::Quiet});
    }
}

paper::Table linesTable(const BenchFile& file) {
    Table table;
    table.columns = {{"line"}, {"item"}, {"title"},  {"state"}, {"finding"},
                     {"by"},   {"on"},   {"source"}, {"why"},   {"page"}};
    for (const auto& work : workLines(file.inspection, file.items)) {
        const auto* body = work.settled ? &work.settled->body : nullptr;
        table.rows.push_back({idOf(work), work.item ? work.item->id.text() : "", titleOf(work),
                              std::string(lineStateName(work.state())), body ? body->finding : "",
                              body ? work.settled->by : "", body ? work.settled->stamp.at.on().iso() : "",
                              std::string(work.clauseUnder(regimeOf(file.visit()))),
                              body && body->why ? std::string(whyNotName(*body->why)) : "", body ? body->page : ""});
    }
    return table;
}

}

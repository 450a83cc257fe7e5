// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/told.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/due_table.h"
#include "ctl/parts/paper_output.h"
#include "print/status/status_papers.h"
#include "text/utf8.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <iostream>
#include <map>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

std::string_view appliesText(Truth applies) {
    switch (applies) {
    case Truth::No:
        return "no";
    case Truth::Unknown:
        return "unknown";
    case Truth::Yes:
        break;
    }
    return "yes";
}

Json doneJson(const ComplianceTold& done) {
    const auto& said = done.said.body;
    Json clock;
    addFigures(clock, done.clock);
    Json json{
        {"on", done.said.stamp.at.on().iso()}, {"method", said.method}, {"clock", clock},
        {"revision", said.revision},           {"by", done.said.by},    {"evidence", evidenceName(done.evidence)}};
    if (!said.amoc.empty())
        json["amoc"] = said.amoc;
    if (said.terminating)
        json["terminating"] = true;
    if (said.inspection)
        json["inspection"] = said.inspection->text();
    if (!said.ref.empty())
        json["ref"] = said.ref;
    return json;
}

/// `on` where a day is stated, `at` where a clock is.
Json nextJson(const LimitState& next) {
    Json json{{"on", Json()}, {"left", leftJson(&next)}, {"clock", clockNameText(next.clock)}};
    if (const auto* reach = next.calendar())
        json["on"] = reach->due.iso();
    else if (const auto* use = next.usage())
        json["at"] = use->due.value();
    return json;
}

Json directiveJson(const DirectiveRow& row) {
    const auto& issued = row.directive;
    return {{"balloon", row.item->balloon ? Json(row.item->balloon->text()) : Json()},
            {"item", row.item->id.text()},
            {"directive", issued.directive.text()},
            {"revision", issued.revision},
            {"applies", appliesText(row.applicability.applies)},
            {"why", plainly(words::said(whyOf(row)))},
            {"done", row.done.empty() ? Json() : doneJson(row.done.back())},
            {"next", row.state.next ? nextJson(*row.state.next) : Json()},
            {"standing", standingOf(row)},
            {"title", issued.title},
            {"issuer", issued.issuer},
            {"state", issued.state},
            {"effective", issued.effective.iso()},
            {"force", issued.recommended ? "recommended" : "mandatory"}};
}

constexpr std::size_t directiveColumns = 7;
using DirectiveLine = std::array<std::string, directiveColumns>;

DirectiveLine directiveLine(const DirectiveRow& row) {
    std::string standing(standingOf(row));
    if (row.directive.recommended)
        standing += ", advised";
    return {standing,
            row.state.next && row.state.next->isProven() ? leftText(*row.state.next) : "",
            row.item->balloon ? row.item->balloon->text() : "-",
            row.item->id.text(),
            row.directive.directive.text() + " rev. " + row.directive.revision,
            std::string(appliesText(row.applicability.applies)) + ": " + plainly(words::said(whyOf(row))),
            row.done.empty()
                ? "not done"
                : "done " + row.done.back().said.stamp.at.on().iso() + ", " + row.done.back().said.body.method};
}

void printDirectives(const std::vector<DirectiveRow>& rows) {
    std::vector<DirectiveLine> lines{{"standing", "left", "balloon", "item", "directive", "binds", "answered"}};
    for (const auto& row : rows)
        lines.push_back(directiveLine(row));
    std::array<std::size_t, directiveColumns> widths{};
    for (const auto& line : lines)
        for (std::size_t i = 0; i < directiveColumns; ++i)
            widths[i] = std::max(widths[i], characters(line[i]));
    for (const auto& line : lines) {
        std::string text;
        for (std::size_t i = 0; i + 1 < directiveColumns; ++i)
            text += line[i] + std::string(widths[i] - characters(line[i]) + 2, ' ');
        std::cout << text << line.back() << "\n";
    }
}

}

int run(const DirectivesOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    if (!options.paper.to.empty())
        return writePaper(print::directiveStatusOf(*record, Registration(options.balloon), record.on), options.paper);
    const auto scope = scopeOf(options.balloon);
    auto facts = record->facts(scope, record.on);
    if (!facts)
        return refuse(facts.error());
    std::erase_if(*facts, [](const ItemFacts& item) { return item.out.has_value(); });
    auto rows = directiveRows(*record, *facts, {record.on, {}, {}, true});
    if (!rows)
        return refuse(rows.error());
    std::ranges::stable_sort(*rows, {}, directivePlace);
    if (!options.json) {
        printDirectives(*rows);
        std::cout
            << "\n"
            << rows->size() << " rows on " << record.on.iso()
            << ", worst first. From what the record says of items and their parts; whether a balloon is airworthy "
               "is for licensed people to decide.\n";
        return Done;
    }
    Json answer{{"on", record.on.iso()}, {"rows", Json::array()}};
    for (const auto& row : *rows)
        answer["rows"].push_back(directiveJson(row));
    if (const auto added = addUnread(answer, *record); !added)
        return refuse(added.error());
    print(answer);
    return Done;
}

}

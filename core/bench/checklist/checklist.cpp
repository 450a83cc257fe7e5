// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"

#include "bench/checklist/checklist_phrase.h"
#include "problem/faults/checklist_fault.h"
#include "rules/programme/document_schema.h"
#include "rules/programme/read_once.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <set>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& checklistSchemaData();
const std::vector<std::pair<std::string_view, std::string_view>>& checklistShelfData();
const std::vector<std::pair<std::string_view, std::string_view>>& checklistFormerData();

}

namespace crownring {

namespace {

using nlohmann::json;

bool hasSource(const ChecklistLine& line, Regime regime) {
    return std::ranges::find(line.sources, regime, &std::pair<Regime, std::string>::first) != line.sources.end();
}

template <class Value>
std::vector<Value> listOf(const json& object, const char* key) {
    std::vector<Value> values;
    for (const auto& each : object.value(key, json::array()))
        values.emplace_back(each.get<std::string>());
    return values;
}

/// Of an object that the schema has found good.
ChecklistLine lineFrom(const json& object) {
    ChecklistLine line;
    line.id = object.at("id");
    line.section = object.at("section");
    for (const auto& kind : object.at("kinds"))
        line.kinds.push_back(itemKindFrom(kind.get<std::string_view>()).value());
    line.title = object.at("title");
    line.lookFor = object.at("look_for");
    for (const auto& [regime, source] : object.at("sources").items())
        line.sources.emplace_back(regimeFrom(regime).value(), source.get<std::string>());
    for (const auto& visit : object.value("visits", json::array()))
        line.visits.push_back(visitFrom(visit.get<std::string_view>()).value());
    line.onlyWith = listOf<RequirementId>(object, "only_with");
    line.serves = listOf<RequirementId>(object, "serves");
    line.after = listOf<std::string>(object, "after");
    for (const auto& reading : object.value("readings", json::array()))
        line.readings.push_back(
            {reading.at("quantity"), reading.value("required", false), reading.value("placed", false)});
    line.photograph = object.value("photograph", false);
    line.tester = object.value("tester", false);
    line.ownerRule = object.value("owner_rule", std::string());
    if (const auto work = object.find("owner_work"); work != object.end())
        line.ownerWork = OwnerWork{std::ranges::find(*work, "repair") != work->end(),
                                   std::ranges::find(*work, "part") != work->end()};
    line.required = object.value("required", true);
    line.ownLook = object.value("own_look", false);
    line.asks = object.value("asks", std::string());
    return line;
}

Checklist checklistOf(const json& document) {
    Checklist checklist;
    checklist.id = document.at("checklist");
    checklist.revision = document.at("revision");
    checklist.title = document.at("title");
    checklist.source = document.at("source");
    checklist.note = document.value("note", std::string());
    for (const auto& section : document.at("sections"))
        checklist.sections.push_back({section.at("id"), section.at("title")});
    for (const auto& line : document.at("lines"))
        checklist.lines.push_back(lineFrom(line));
    return checklist;
}

std::optional<Problem> contradictionInVisits(const ChecklistLine& line, const std::string& path) {
    for (std::size_t i = 0; i < line.visits.size(); ++i)
        if (!hasSource(line, regimeOf(line.visits[i])))
            return Problem{ChecklistFault::VisitWithoutSource, {}, atKey(path + "/visits/" + std::to_string(i))};
    const bool ownersTask = std::ranges::any_of(line.visits, isOfOwnersTasks);
    if (ownersTask && line.ownerRule.empty())
        return Problem{ChecklistFault::OwnersTaskWithoutRule, {}, atKey(path + "/owner_rule")};
    if (!ownersTask && !line.ownerRule.empty())
        return Problem{ChecklistFault::RuleWithoutOwnersTask, {}, atKey(path + "/owner_rule")};
    return std::nullopt;
}

std::optional<Problem> contradictionInReadings(const ChecklistLine& line, const std::string& path) {
    std::set<std::string_view> seen;
    const bool onEnvelope = std::ranges::find(line.kinds, ItemKind::Envelope) != line.kinds.end();
    for (std::size_t i = 0; i < line.readings.size(); ++i) {
        const auto& reading = line.readings[i];
        const auto here = path + "/readings/" + std::to_string(i);
        if (line.kinds.empty())
            return Problem{ChecklistFault::ReadingOfNothing, {}, atKey(here)};
        if (!seen.insert(reading.quantity).second)
            return Problem{ChecklistFault::AskedTwice, {}, atKey(here + "/quantity")};
        if (reading.placed && !onEnvelope)
            return Problem{ChecklistFault::PlacedOnNoEnvelope, {}, atKey(here + "/placed")};
    }
    return std::nullopt;
}

std::optional<Problem> contradictionIn(const std::vector<ChecklistSection>& sections) {
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < sections.size(); ++i)
        if (!seen.insert(sections[i].id).second)
            return Problem{ChecklistFault::SectionTwice, {}, atKey("/sections/" + std::to_string(i) + "/id")};
    return std::nullopt;
}

/// What the schema cannot say.
std::optional<Problem> contradictionIn(const Checklist& checklist) {
    if (auto found = contradictionIn(checklist.sections))
        return found;
    std::set<std::string_view> seen;
    auto section = checklist.sections.begin();
    for (std::size_t i = 0; i < checklist.lines.size(); ++i) {
        const auto& line = checklist.lines[i];
        const auto path = "/lines/" + std::to_string(i);
        if (!seen.insert(line.id).second)
            return Problem{ChecklistFault::LineTwice, {line.id}, atKey(path + "/id")};
        const auto own = std::ranges::find(checklist.sections, line.section, &ChecklistSection::id);
        if (own == checklist.sections.end())
            return Problem{ChecklistFault::NoSuchSection, {}, atKey(path + "/section")};
        if (own < section)
            return Problem{ChecklistFault::OutOfOrder, {}, atKey(path + "/section")};
        section = own;
        if (auto found = contradictionInVisits(line, path))
            return found;
        if (auto found = contradictionInReadings(line, path))
            return found;
    }
    return std::nullopt;
}

struct Checked {
    json document;
    Checklist checklist;
};

Result<Checked> checked(std::string_view text) {
    static const DocumentSchema schema("checklist", embedded::checklistSchemaData().front().second,
                                       documentFaults<ChecklistFault>());
    auto document = schema.read(text);
    if (!document)
        return tl::unexpected(std::move(document.error()));
    if (auto breach = schema.breachIn(*document))
        return tl::unexpected(*std::move(breach));
    auto checklist = checklistOf(*document);
    if (auto found = contradictionIn(checklist))
        return tl::unexpected(*std::move(found));
    return Checked{*std::move(document), std::move(checklist)};
}

/// Of what ships, which its tests hold against the schema.
std::vector<std::string> canonicalOf(const std::vector<std::pair<std::string_view, std::string_view>>& documents) {
    std::vector<std::string> canonical;
    for (const auto& [name, text] : documents)
        canonical.push_back(json::parse(text).dump());
    return canonical;
}

Result<Checklist> unchecked(std::string_view text) {
    try {
        return checklistOf(json::parse(text));
    } catch (const std::exception& thrown) {
        return problem(ChecklistFault::KeptUnreadable, {thrown.what()});
    }
}

}

bool ChecklistLine::isFor(const RequirementId& requirement) const {
    return std::ranges::find(onlyWith, requirement) != onlyWith.end() ||
           std::ranges::find(serves, requirement) != serves.end();
}

bool ChecklistLine::isTest() const {
    return !readings.empty() && (tester || std::ranges::any_of(readings, &AskedReading::placed));
}

std::string_view ChecklistLine::clauseUnder(Regime regime) const {
    for (const auto& [of, clause] : sources)
        if (of == regime)
            return clause;
    return {};
}

Argument titleOf(const ChecklistSection& section) {
    return section.id == furtherWork ? Argument(Phrase{ChecklistPhrase::FurtherWork, {}}) : Argument(section.title);
}

Result<Checklist> checklistFrom(std::string_view text) {
    return checked(text).map([](Checked&& good) { return std::move(good.checklist); });
}

Result<Checklist> keptChecklist(std::string_view text) {
    static ReadOnce<Checklist> kept(unchecked);
    const auto read = kept(text);
    if (!read)
        return tl::unexpected(read.error());
    return **read;
}

Result<std::string> canonicalChecklist(std::string_view text) {
    return checked(text).map([](const Checked& good) { return good.document.dump(); });
}

const std::vector<std::string>& checklistShelf() {
    static const auto texts = canonicalOf(embedded::checklistShelfData());
    return texts;
}

const std::vector<std::string>& formerChecklists() {
    static const auto texts = canonicalOf(embedded::checklistFormerData());
    return texts;
}

std::vector<const ChecklistLine*> linesFor(const Checklist& checklist, Visit visit) {
    std::vector<const ChecklistLine*> lines;
    for (const auto& line : checklist.lines) {
        const bool named = std::ranges::find(line.visits, visit) != line.visits.end();
        if (hasSource(line, regimeOf(visit)) && (named || (line.visits.empty() && isPeriodic(visit))))
            lines.push_back(&line);
    }
    return lines;
}

Result<Checklist> withOwnLines(Checklist base, const Checklist& own) {
    for (std::size_t i = 0; i < own.lines.size(); ++i)
        if (std::ranges::find(base.lines, own.lines[i].id, &ChecklistLine::id) != base.lines.end())
            return problem(ChecklistFault::LineOfTheOther, {own.lines[i].id, base.id},
                           atKey("/lines/" + std::to_string(i) + "/id"));
    for (const auto& section : own.sections)
        if (std::ranges::find(base.sections, section.id, &ChecklistSection::id) == base.sections.end())
            base.sections.push_back(section);
    std::vector<ChecklistLine> lines;
    for (const auto& section : base.sections)
        for (const auto* from : {&std::as_const(base.lines), &own.lines})
            std::ranges::copy_if(*from, std::back_inserter(lines),
                                 [&](const ChecklistLine& line) { return line.section == section.id; });
    base.lines = std::move(lines);
    return base;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/bench_gate.h"

#include "acts/bench_file.h"
#include "bench/release.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>

namespace crownring {

namespace {

const CivilDate endOfDays = CivilDate::fromDayNumber(2'932'896);

/// The inspection that an entry adds a word to.
struct InspectionOf {
    std::optional<InspectionId> operator()(const LineSettled& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const InspectionClosed& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const InspectionOpened& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const ReadingTaken& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const DefectFound& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const DefectDeferred& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const DefectCleared& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const RepairMade& body) const { return body.inspection; }
    std::optional<InspectionId> operator()(const PartReplaced& body) const { return body.inspection; }
    template <class Other>
    std::optional<InspectionId> operator()(const Other&) const {
        return std::nullopt;
    }
};

/// The day on which the record holds an inspection as closed.
std::optional<CivilDate> closedOn(Books& books, const InspectionId& inspection) {
    const auto closing = books.told({Subject::Inspection, inspection.text(), {"inspection.closed"}, endOfDays});
    return closing && !closing->empty() ? std::optional(closing->front().entry.on) : std::nullopt;
}

std::optional<Problem> lockedCorrection(Journal& journal, const EntryCorrected& correction) {
    const auto line = journal.line(correction.replaces);
    if (!line || !*line || !std::holds_alternative<InspectionClosed>((*line)->entry.body))
        return std::nullopt;
    const auto patch = nlohmann::json::parse(correction.with);
    for (const auto* key : {"outcome", "inspection", "signatory", "capacity", "seal", "statement"})
        if (patch.contains(key))
            return Problem{Code::CannotAmend,
                           "what was signed is not corrected into something else",
                           "void the closing with a reason, and close the inspection again",
                           {{}, 0, std::string("with/") + key}};
    return std::nullopt;
}

Problem notReleasable(std::string text, std::string mend, const std::string& rule, int line) {
    return {Code::NotReleasable,
            std::move(text),
            rule.empty() ? std::move(mend) : mend + " (" + rule + ")",
            {{}, line, {}}};
}

void judgeClosing(Books& books, const Entry& entry, const InspectionClosed& closing, int line,
                  std::vector<Problem>& problems) {
    if (closing.outcome == Outcome::Abandoned)
        return;
    auto file = benchFile(books, closing.inspection, entry.on);
    if (!file) {
        problems.push_back(file.error());
        problems.back().where.line = line;
        return;
    }
    const auto capacity = capacityFrom(closing.capacity);
    if (!capacity) {
        problems.push_back({Code::BadValue,
                            "'" + closing.capacity + "' is no capacity in which one signs",
                            "independent-certifying-staff, inspection-authorization …",
                            {{}, line, "capacity"}});
        return;
    }
    // The closing itself is in the record by now.
    if (!file->inspection.closed || file->inspection.closed->id != entry.id) {
        problems.push_back(
            notReleasable("the inspection is closed by another entry already", "close it once", "", line));
        return;
    }
    file->inspection.closed.reset();
    for (const auto& refusal : refusals(
             *file, {closing.outcome, *closing.signatory, *capacity, closing.manuals, closing.limitations, entry.on}))
        problems.push_back(notReleasable(refusal.text, refusal.mend, refusal.rule, line));
}

void judgeDeferral(Books& books, const Entry& entry, const DefectDeferred& deferral, int line,
                   std::vector<Problem>& problems) {
    const auto entitlements = entitlementsOn(books, entry.on);
    const auto facts = books.facts({std::nullopt, {deferral.item}}, entry.on);
    if (!entitlements || !facts || facts->empty())
        return;
    auto severity = Severity::Minor;
    for (const auto& mark : facts->front().defects)
        if (mark.defect == deferral.defect && mark.kind == DefectMark::Kind::Found)
            severity = mark.severity;
    std::optional<Barred> bar;
    for (const auto& each : *entitlements) {
        if (each.person != deferral.agreedBy)
            continue;
        bar = mayDefer(*entitlements,
                       {each.person, each.capacity, facts->front().balloon, facts->front().operations, entry.on},
                       severity);
        if (!bar)
            return;
    }
    if (bar)
        problems.push_back(
            notReleasable(bar->text, "have it deferred by who is entitled to, or clear it", bar->rule, line));
}

}

std::vector<Problem> lockedEntries(Journal& journal, Books& books, std::span<const NumberedEntry> entries) {
    std::vector<Problem> problems;
    std::map<InspectionId, std::optional<CivilDate>> known;
    for (const auto& [entry, line] : entries) {
        if (const auto* correction = std::get_if<EntryCorrected>(&entry.body)) {
            if (auto locked = lockedCorrection(journal, *correction)) {
                locked->where.line = line;
                problems.push_back(std::move(*locked));
            }
            continue;
        }
        const auto inspection = std::visit(InspectionOf{}, entry.body);
        if (!inspection)
            continue;
        auto place = known.find(*inspection);
        if (place == known.end())
            place = known.emplace(*inspection, closedOn(books, *inspection)).first;
        if (place->second)
            problems.push_back(
                notReleasable("the inspection '" + inspection->text() + "' is closed since " + place->second->iso(),
                              "correct what was written with entry.corrected, or open another", "", line));
    }
    return problems;
}

std::vector<Problem> barredEntries(Books& books, std::span<const NumberedEntry> entries) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : entries)
        if (const auto* closing = std::get_if<InspectionClosed>(&entry.body))
            judgeClosing(books, entry, *closing, line, problems);
        else if (const auto* deferral = std::get_if<DefectDeferred>(&entry.body))
            judgeDeferral(books, entry, *deferral, line, problems);
    return problems;
}

}

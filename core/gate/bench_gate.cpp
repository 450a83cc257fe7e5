// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/bench_gate.h"

#include "answers/bench_file.h"
#include "bench/release/release.h"
#include "record/amendment.h"

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

/// The line of the entry that an amendment is about in the end: amendments may stand on one another.
std::optional<JournalLine> rootOf(Journal& journal, EntryId id) {
    for (;;) {
        auto line = journal.line(id);
        if (!line || !*line)
            return std::nullopt;
        const auto target = amends((*line)->entry);
        if (!target)
            return std::move(*line);
        id = *target;
    }
}

/// A void takes a word away: that is one on the inspection too, but for the void of its closing, which opens it again.
std::optional<InspectionId> inspectionOf(Journal& journal, const Entry& entry) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return std::visit(InspectionOf{}, entry.body);
    const auto line = journal.line(taken->voids);
    if (!line || !*line || std::holds_alternative<InspectionClosed>((*line)->entry.body))
        return std::nullopt;
    return std::visit(InspectionOf{}, (*line)->entry.body);
}

/// The day on which the record holds an inspection as closed.
std::optional<CivilDate> closedOn(Books& books, const InspectionId& inspection) {
    const auto closing = books.told({Subject::Inspection, inspection.text(), {"inspection.closed"}, endOfDays});
    return closing && !closing->empty() ? std::optional(closing->front().entry.on) : std::nullopt;
}

/// A visit that is none, or a checklist that breaks its schema, does not come into the record.
std::optional<Problem> brokenOpening(const Body& body) {
    const auto* opened = std::get_if<InspectionOpened>(&body);
    if (opened && !visitFrom(opened->visit))
        return Problem{Code::BadValue,
                       "'" + opened->visit + "' is no kind of visit",
                       "one of part-ml-inspection, part-ml-special, part-ml-owner-tasks, us-annual, us-hundred-hour, "
                       "us-special, us-owner-tasks",
                       {{}, 0, "visit"}};
    const auto* adopted = std::get_if<ChecklistAdopted>(&body);
    const auto text = opened ? opened->checklist : adopted ? adopted->document : std::string();
    if (text.empty())
        return std::nullopt;
    const auto checklist = checklistFrom(text);
    if (checklist)
        return std::nullopt;
    auto problem = checklist.error();
    problem.where.key = (opened ? "checklist" : "document") + problem.where.key;
    return problem;
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
    if (!entitlements || !facts)
        return;
    const ItemFacts item = facts->empty() ? ItemFacts{} : facts->front();
    auto severity = Severity::Barring;
    for (const auto& mark : item.defects)
        if (mark.defect == deferral.defect && mark.kind == DefectMark::Kind::Found)
            severity = mark.severity;
    Barred bar{deferral.agreedBy.text() + " is entitled to nothing on " + entry.on.iso(), "ML.A.403(b) (from memory)"};
    for (const auto& each : *entitlements) {
        if (each.person != deferral.agreedBy)
            continue;
        auto next =
            mayDefer(*entitlements, {each.person, each.capacity, item.balloon, item.operations, entry.on}, severity);
        if (!next)
            return;
        bar = std::move(*next);
    }
    problems.push_back(notReleasable(bar.text, "have it deferred by who is entitled to, or clear it", bar.rule, line));
}

/// What a signature covers stays as it was written.
void judgeClosingNow(const InspectionClosed& written, const InspectionClosed& now, int line,
                     std::vector<Problem>& problems) {
    const auto keep = [&](bool same, const char* key) {
        if (!same)
            problems.push_back({Code::CannotAmend,
                                "what was signed is not corrected into something else",
                                "void the closing with a reason, and close the inspection again",
                                {{}, line, std::string("with/") + key}});
    };
    keep(written.outcome == now.outcome, "outcome");
    keep(written.inspection == now.inspection, "inspection");
    keep(written.signatory == now.signatory, "signatory");
    keep(written.capacity == now.capacity, "capacity");
    keep(written.statement == now.statement, "statement");
    keep(written.clocks == now.clocks, "clocks");
    keep(written.seal == now.seal, "seal");
}

/// What an entry says by now, with the correction.
void judgeCorrection(Journal& journal, Books& books, const EntryCorrected& correction, int line,
                     std::vector<Problem>& problems) {
    const auto root = rootOf(journal, correction.replaces);
    if (!root || !root->current)
        return;
    const auto* closing = std::get_if<InspectionClosed>(&root->entry.body);
    if (closing && momentOf(root->entry) != momentOf(*root->current))
        problems.push_back({Code::CannotAmend,
                            "the day and time of a signature are not corrected into others",
                            "void the closing with a reason, and close the inspection again",
                            {{}, line, "with/on"}});
    if (closing)
        judgeClosingNow(*closing, std::get<InspectionClosed>(root->current->body), line, problems);
    else if (const auto* deferral = std::get_if<DefectDeferred>(&root->current->body))
        judgeDeferral(books, *root->current, *deferral, line, problems);
}

}

std::vector<Problem> lockedEntries(Journal& journal, Books& books, std::span<const NumberedEntry> entries) {
    std::vector<Problem> problems;
    std::map<InspectionId, std::optional<CivilDate>> known;
    for (const auto& [entry, line] : entries) {
        if (auto broken = brokenOpening(entry.body)) {
            broken->where.line = line;
            problems.push_back(std::move(*broken));
        }
        const auto inspection = inspectionOf(journal, entry);
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

std::vector<Problem> barredEntries(Journal& journal, Books& books, std::span<const NumberedEntry> entries) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : entries)
        if (const auto* closing = std::get_if<InspectionClosed>(&entry.body))
            judgeClosing(books, entry, *closing, line, problems);
        else if (const auto* deferral = std::get_if<DefectDeferred>(&entry.body))
            judgeDeferral(books, entry, *deferral, line, problems);
        else if (const auto* correction = std::get_if<EntryCorrected>(&entry.body))
            judgeCorrection(journal, books, *correction, line, problems);
    return problems;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/inspection.h"

#include "bench/checklist/further_line.h"
#include "problem/faults/bench_fault.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

template <class Body>
Said<Body> said(const JournalLine& line, const Entry& now, const Body& body) {
    return {now.id, stampOf(now), now.by, now.note, body, line.current ? std::optional(line.entry) : std::nullopt};
}

/// Puts each entry where it belongs.
struct Gather {
    Inspection& into;
    const JournalLine& line;
    const Entry& now;

    void operator()(const LineSettled& body) const { into.lines.push_back(said(line, now, body)); }
    void operator()(const ReadingTaken& body) const { into.readings.push_back(said(line, now, body)); }
    void operator()(const DefectFound& body) const { into.found.push_back(said(line, now, body)); }
    void operator()(const DefectDeferred& body) const { into.deferred.push_back(said(line, now, body)); }
    void operator()(const DefectCleared& body) const { into.cleared.push_back(said(line, now, body)); }
    void operator()(const RepairMade& body) const { into.repairs.push_back(said(line, now, body)); }
    void operator()(const PartReplaced& body) const { into.parts.push_back(said(line, now, body)); }
    void operator()(const WorkPerformed& body) const { into.performed.push_back(said(line, now, body)); }
    void operator()(const DirectiveAnswered& body) const { into.answered.push_back(said(line, now, body)); }
    void operator()(const ReleaseIncomplete& body) const { into.incomplete = said(line, now, body); }
    void operator()(const InspectionClosed& body) const { into.closed = said(line, now, body); }
    void operator()(const InspectionOpened&) const {} // it is in its own place already
    template <class Said>
    requires(!OfInspection<Said>) void operator()(const Said&) const {}
};

bool appliesTo(const ChecklistLine& line, const Inspection& inspection, const ItemFacts& item) {
    return std::ranges::find(line.kinds, item.kind) != line.kinds.end() &&
           (line.onlyWith.empty() || inspection.isWorkOn(item.id, line.onlyWith));
}

bool isWorkOnAny(const Inspection& inspection, std::span<const ItemFacts> items,
                 std::span<const RequirementId> requirements) {
    return std::ranges::any_of(items,
                               [&](const ItemFacts& item) { return inspection.isWorkOn(item.id, requirements); });
}

bool isAbout(const WorkLine& work, const std::string& line, const std::optional<ItemId>& item) {
    return work.line && work.line->id == line && (work.item ? item == work.item->id : !item);
}

/// A reading that names no line belongs to the first line of its item that asks for its quantity.
WorkLine* lineOf(std::vector<WorkLine>& lines, const ReadingTaken& reading) {
    const auto fits = [&](const WorkLine& work) {
        if (!work.line || !work.item || work.item->id != reading.item)
            return false;
        return reading.line.empty()
                   ? std::ranges::any_of(work.line->readings,
                                         [&](const auto& asked) { return asked.quantity == reading.quantity; })
                   : work.line->id == reading.line;
    };
    const auto found = std::ranges::find_if(lines, fits);
    return found == lines.end() ? nullptr : &*found;
}

/// @param item nothing: of the visit
bool isSpokenOf(const Inspection& inspection, const ChecklistLine& line, const std::optional<ItemId>& item) {
    return std::ranges::any_of(inspection.lines,
                               [&](const auto& each) { return each.body.line == line.id && each.body.item == item; });
}

/// A visit that was opened for none of what such a visit accomplishes asks for the lines of its work alone.
bool isAsked(const Inspection& inspection, Visit visit, const ChecklistLine& line, const ItemFacts* item) {
    const auto& all = inspection.opened.body.work;
    return isOfItsVisit(visit, all) || std::ranges::any_of(all, [&](const Work& work) {
               return (!item || work.item == item->id) && line.isFor(work.requirement);
           });
}

/// Their tasks are a choice, and stand there to be chosen.
std::vector<ItemId> itemsAsked(const Inspection& inspection, std::span<const ItemFacts> items) {
    const auto visit = visitFrom(inspection.opened.body.visit);
    std::vector<ItemId> asked;
    for (const auto& item : items)
        if ((visit && isOfOwnersTasks(*visit)) || inspection.concerns(item.id))
            asked.push_back(item.id);
    return asked;
}

std::vector<WorkLine> listed(const Inspection& inspection, std::span<const ItemFacts> items) {
    std::vector<WorkLine> lines;
    const auto asked = itemsAsked(inspection, items);
    const auto visit = visitFrom(inspection.opened.body.visit);
    const auto ofVisit = visit ? linesFor(inspection.checklist, *visit) : std::vector<const ChecklistLine*>{};
    for (const auto& section : inspection.checklist.sections) {
        for (const auto* line : ofVisit)
            if (line->section == section.id && line->kinds.empty() &&
                (line->onlyWith.empty() || isWorkOnAny(inspection, items, line->onlyWith)) &&
                (isAsked(inspection, *visit, *line, nullptr) || isSpokenOf(inspection, *line, {})))
                lines.push_back({line, nullptr, nullptr, {}});
        for (const auto& item : items)
            for (const auto* line : ofVisit)
                if (line->section == section.id && appliesTo(*line, inspection, item) &&
                    ((std::ranges::find(asked, item.id) != asked.end() && isAsked(inspection, *visit, *line, &item)) ||
                     isSpokenOf(inspection, *line, item.id)))
                    lines.push_back({line, &item, nullptr, {}});
    }
    return lines;
}

}

bool Inspection::isWorkOn(const ItemId& item, std::span<const RequirementId> requirements) const {
    return std::ranges::any_of(opened.body.work, [&](const Work& work) {
        return work.item == item && std::ranges::find(requirements, work.requirement) != requirements.end();
    });
}

bool Inspection::concerns(const ItemId& item) const {
    return std::ranges::find(opened.body.work, item, &Work::item) != opened.body.work.end() || wasWorkedOn(item);
}

bool isOfItsVisit(Visit visit, std::span<const Work> work) {
    return !isPeriodic(visit) || work.empty() ||
           std::ranges::any_of(work, [&](const Work& each) { return accomplishes(visit, each.requirement); });
}

bool Inspection::wasWorkedOn(const ItemId& item) const {
    const auto visit = visitFrom(opened.body.visit);
    if (!visit || isOfComponents(*visit) || (isInspection(*visit) && isOfItsVisit(*visit, opened.body.work)))
        return true;
    const auto isOfIt = [&](const auto& each) { return each.body.item == item; };
    std::map<std::string_view, LineState> settled;
    for (const auto& each : lines)
        if (each.body.item == item)
            settled[each.body.line] = each.body.state;
    const auto isDone = [](const auto& each) { return each.second == LineState::Done; };
    return std::ranges::any_of(performed, isOfIt) || std::ranges::any_of(answered, isOfIt) ||
           std::ranges::any_of(repairs, isOfIt) || std::ranges::any_of(parts, isOfIt) ||
           std::ranges::any_of(cleared, isOfIt) || std::ranges::any_of(readings, isOfIt) ||
           std::ranges::any_of(settled, isDone);
}

Result<Inspection> inspectionFrom(const InspectionId& id, std::span<const JournalLine> told) {
    Inspection inspection;
    inspection.id = id;
    const auto opening = std::ranges::find_if(
        told, [](const JournalLine& line) { return std::holds_alternative<InspectionOpened>(nowOf(line).body); });
    if (opening == told.end())
        return problem(BenchFault::NoInspection, {id});
    inspection.opened = said(*opening, nowOf(*opening), std::get<InspectionOpened>(nowOf(*opening).body));
    if (!inspection.opened.body.checklist.empty()) {
        auto checklist = keptChecklist(inspection.opened.body.checklist);
        if (!checklist)
            return tl::unexpected(checklist.error());
        inspection.checklist = std::move(*checklist);
        for (auto& line : inspection.checklist.lines)
            line.readings = askedByWork(line, inspection.opened.body.work);
    }
    for (const auto& line : told) {
        const auto& now = nowOf(line);
        if (const auto* revoked = std::get_if<ReleaseRevoked>(&now.body)) {
            inspection.revoked = said(line, now, *revoked);
            inspection.approved.reset();
        } else if (const auto* approved = std::get_if<ReturnApproved>(&now.body)) {
            if (inspection.isPending())
                inspection.approved = said(line, now, *approved);
        } else if (inspection.closed) {
            inspection.late.push_back(now.id);
        } else {
            std::visit(Gather{inspection, line, now}, now.body);
        }
    }
    return inspection;
}

std::vector<WorkLine> workLines(const Inspection& inspection, std::span<const ItemFacts> items) {
    auto lines = listed(inspection, items);
    for (const auto& settled : inspection.lines) {
        const auto known = std::ranges::find_if(
            lines, [&](const WorkLine& work) { return isAbout(work, settled.body.line, settled.body.item); });
        const auto own = std::ranges::find_if(lines, [&](const WorkLine& work) {
            return !work.line && work.settled->body.line == settled.body.line &&
                   work.settled->body.item == settled.body.item;
        });
        if (known != lines.end()) {
            known->settled = &settled;
        } else if (own != lines.end()) {
            own->settled = &settled;
        } else {
            const auto item =
                std::ranges::find_if(items, [&](const ItemFacts& each) { return settled.body.item == each.id; });
            lines.push_back({nullptr, item == items.end() ? nullptr : &*item, &settled, {}});
        }
    }
    for (const auto& reading : inspection.readings)
        if (auto* line = lineOf(lines, reading.body))
            line->readings.push_back(&reading);
    return lines;
}

Inspection openAt(Inspection inspection, const Stamp& moment) {
    const auto drop = [&](auto& all) { std::erase_if(all, [&](const auto& each) { return moment < each.stamp; }); };
    drop(inspection.lines);
    drop(inspection.readings);
    drop(inspection.found);
    drop(inspection.deferred);
    drop(inspection.cleared);
    drop(inspection.repairs);
    drop(inspection.parts);
    drop(inspection.performed);
    drop(inspection.answered);
    inspection.incomplete.reset();
    inspection.closed.reset();
    inspection.revoked.reset();
    inspection.approved.reset();
    return inspection;
}

}

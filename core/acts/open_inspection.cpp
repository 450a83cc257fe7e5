// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/open_inspection.h"

#include "acts/post.h"
#include "answers/due.h"
#include "bench/checklist/further_line.h"
#include "bench/checklist/inspection.h"
#include "bench/checklist/shelf.h"
#include "bench/release/owner_rule.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/checklist_fault.h"
#include "record/kinds/programmes.h"
#include "rules/due/defects.h"
#include "rules/standing/with_inspections.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// It goes with what the visit carries out on the item, and is due with it.
bool isDueWith(const DueList& due, const DueRow& row, std::span<const RequirementId> carriedOut) {
    return row.requirement->force == Force::Mandatory && row.state.standing != Standing::Closed &&
           !isOfTheRecord(row) &&
           crownring::isDueWith(*row.requirement, row.state, due.obligations->of(row.item->id, row.item->balloon),
                                carriedOut);
}

bool isNearlyDue(const DueRow& row) { return isRequired(row.state) && row.state.standing < Standing::Clear; }

/// The visit whose own requirement stands worst among the rows.
Visit worstCallsFor(std::span<const DueRow> rows) {
    for (const auto& row : rows)
        for (const auto visit : allVisits)
            if (accomplishes(visit, row.requirement->id))
                return visit;
    return Visit::PartMlInspection;
}

std::string_view checklistOf(Visit visit) {
    return isOfOwnersTasks(visit) ? "pilot-owner-tasks"
           : isMaintenance(visit) ? "maintenance-work"
                                  : "hot-air-inspection";
}

Result<Checklist> shelfChecklist(std::string_view id) {
    for (const auto& checklist : shelfRead())
        if (checklist.id == id)
            return checklist;
    return problem(ChecklistFault::NotOnTheShelf, {id});
}

/// The shelf's list with the lines that organisations have adopted, the latest of each.
Result<Checklist> checklistOn(Books& books, Visit visit, CivilDate on) {
    auto checklist = shelfChecklist(checklistOf(visit));
    const auto adopted = books.told({Subject::Checklist, {}, {kindName<ChecklistAdopted>()}, on});
    if (!checklist || !adopted)
        return checklist ? tl::unexpected(adopted.error()) : checklist;
    std::map<ChecklistId, std::string> latest;
    for (const auto& line : *adopted) {
        const auto& body = std::get<ChecklistAdopted>(nowOf(line).body);
        latest[body.checklist] = body.document;
    }
    for (const auto& [id, document] : latest) {
        auto own = checklistFrom(document);
        if (!own)
            return own;
        checklist = withOwnLines(std::move(*checklist), *own);
        if (!checklist)
            return checklist;
    }
    return checklist;
}

/// One of the events befell the item since what is there for them was last done on it.
template <class IsFor>
bool isAfter(const std::vector<std::string>& events, const ItemFacts& item, const IsFor& isFor) {
    const Stamp* done = nullptr;
    for (const auto& each : item.done)
        if (isFor(each.requirement))
            done = &each.stamp;
    return std::ranges::any_of(item.events, [&](const Occurrence& event) {
        return (!done || *done < event.stamp) && std::ranges::find(events, event.event) != events.end();
    });
}

bool isAfterOneOf(const ChecklistLine& line, std::span<const ItemFacts> items) {
    return std::ranges::any_of(items, [&](const ItemFacts& item) {
        return std::ranges::find(line.kinds, item.kind) != line.kinds.end() &&
               isAfter(line.after, item, [&](const RequirementId& each) { return line.isFor(each); });
    });
}

/// A special inspection looks for what may come of what happened: where nothing that calls for one was reported,
/// nobody knows what to look for.
bool isEventUnknown(const Checklist& whole, Visit visit, const DueList& due) {
    const auto lines = linesFor(whole, visit);
    const auto calls = [](const DueRow& row) {
        const auto& asked = *row.requirement;
        return isAfter(asked.triggeredBy, *row.item, [&](const RequirementId& each) { return each == asked.id; });
    };
    return isSpecial(visit) && std::ranges::none_of(due.rows, calls) &&
           std::ranges::none_of(lines, [&](const auto* line) { return isAfterOneOf(*line, due.items); });
}

/// Only what the visit needs goes into the record: of the lines that follow an event those of what happened.
Checklist ofVisit(const Checklist& whole, Visit visit, std::span<const ItemFacts> items) {
    auto checklist = whole;
    checklist.lines.clear();
    for (const auto* line : linesFor(whole, visit))
        if (line->after.empty() || isAfterOneOf(*line, items))
            checklist.lines.push_back(*line);
    std::erase_if(checklist.sections, [&](const ChecklistSection& section) {
        return std::ranges::none_of(checklist.lines, [&](const auto& line) { return line.section == section.id; });
    });
    return checklist;
}

bool isServedBy(const Checklist& checklist, const RequirementId& requirement, ItemKind kind) {
    return std::ranges::any_of(checklist.lines, [&](const ChecklistLine& line) {
        return line.isFor(requirement) && std::ranges::find(line.kinds, kind) != line.kinds.end();
    });
}

/// Such a visit accomplishes it: by itself, by a line of its list that is there for it, or by a line of its own, where
/// no other visit is there for it and who may release this one may do it.
bool isCredited(const Checklist& whole, Visit visit, const Requirement& requirement, ItemKind kind) {
    if (accomplishes(visit, requirement.id))
        return true;
    const auto lines = linesFor(whole, visit);
    if (std::ranges::any_of(lines, [&](const ChecklistLine* line) {
            return line->isFor(requirement.id) &&
                   (line->kinds.empty() || std::ranges::find(line->kinds, kind) != line->kinds.end());
        }))
        return true;
    if (isOfReviews(requirement.id))
        return false; // a certificate of its own, for which only its lines of an inspection prepare
    const auto isOfAnother = [&](Visit other) { return accomplishes(other, requirement.id); };
    const auto hasItsLines = [&](const ChecklistLine& line) { return line.isFor(requirement.id); };
    if (requirement.action == Action::Retire || std::ranges::any_of(allVisits, isOfAnother) ||
        (std::ranges::any_of(whole.lines, hasItsLines)))
        return false;
    return !isOfOwnersTasks(visit) || !ownerBar(requirement, regimeOf(visit));
}

/// In a repair or a rectification nothing is done besides unless somebody says so.
bool isProposed(Visit visit) {
    return !isMaintenance(visit) || isOfComponents(visit) || visit == Visit::PartMlCompliance ||
           visit == Visit::UsCompliance;
}

/// A line for each requirement of the work that neither the visit nor a line of the list accomplishes.
void addFurtherWork(Checklist& checklist, const Opening& opening, std::span<const Work> whole, const DueList& due) {
    std::vector<ChecklistLine> further;
    for (const auto& work : whole) {
        if (accomplishes(opening.visit, work.requirement))
            continue;
        const auto row = std::ranges::find_if(due.rows, [&](const DueRow& each) {
            return each.item->id == work.item && each.requirement->id == work.requirement;
        });
        if (row == due.rows.end() || isServedBy(checklist, work.requirement, row->item->kind))
            continue;
        const auto& asked = *row->requirement;
        const auto known =
            std::ranges::find_if(further, [&](const auto& line) { return line.id == "do/" + asked.id.text(); });
        if (known == further.end()) {
            further.push_back(lineFor(asked, row->item->kind, regimeOf(opening.visit)));
            further.back().section = furtherWork;
            if (!isPeriodic(opening.visit)) // else it comes in no such visit
                further.back().visits = {opening.visit};
        } else if (std::ranges::find(known->kinds, row->item->kind) == known->kinds.end()) {
            known->kinds.push_back(row->item->kind);
        }
    }
    if (further.empty())
        return;
    const std::string id(furtherWork);
    checklist.sections.push_back({id, id}); // whoever shows it has the words
    checklist.lines.insert(checklist.lines.end(), further.begin(), further.end());
}

/// The work, and what the visit by itself accomplishes on each item that is bound to it; of loose items what was chosen
/// alone, since a cylinder that comes for its periodic test is not there for an annual.
std::vector<Work> wholeWork(const Opening& opening, const DueList& due) {
    auto work = opening.work;
    const auto add = [&](const Work& each) {
        if (std::ranges::find(work, each) == work.end())
            work.push_back(each);
    };
    if (opening.balloon || work.empty())
        for (const auto& row : due.rows)
            if (isPeriodic(opening.visit) && accomplishes(opening.visit, row.requirement->id))
                add({row.item->id, row.requirement->id});
    for (const auto& row : due.rows) { // what goes with any of that cannot be left out
        std::vector<RequirementId> carriedOut;
        for (const auto& each : work)
            if (each.item == row.item->id)
                carriedOut.push_back(each.requirement);
        if (isDueWith(due, row, carriedOut))
            add({row.item->id, row.requirement->id});
    }
    return work;
}

Result<InspectionId> freshName(Books& books, const Opening& opening) {
    const auto subject = opening.balloon ? opening.balloon->text() : opening.items.front().text();
    const auto name = opening.on.iso() + " " + subject;
    for (int turn = 1;; ++turn) {
        const auto candidate = turn == 1 ? name : name + " (" + std::to_string(turn) + ")";
        const auto known = books.told({Subject::Inspection, candidate, {kindName<InspectionOpened>()}, opening.on});
        if (!known)
            return tl::unexpected(known.error());
        if (known->empty())
            return InspectionId(candidate);
    }
}

}

Result<Offer> offerInspection(Books& books, const std::optional<Registration>& balloon,
                              const std::vector<ItemId>& items, CivilDate on, std::optional<Visit> visit) {
    if (!balloon && items.empty())
        return problem(BenchFault::NothingToInspect);
    auto list = due(books, {balloon, items}, on, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    Offer offer;
    offer.due = std::move(*list);
    offer.visit = visit.value_or(worstCallsFor(offer.due.rows));
    const auto whole = checklistOn(books, offer.visit, on);
    if (!whole)
        return tl::unexpected(whole.error());
    offer.eventUnknown = isEventUnknown(*whole, offer.visit, offer.due);
    if (offer.eventUnknown)
        return offer;
    for (const auto& row : offer.due.rows)
        if (!isOfTheRecord(row) && row.state.standing != Standing::Closed &&
            isCredited(*whole, offer.visit, *row.requirement, row.item->kind))
            offer.proposals.push_back(
                {&row, isProposed(offer.visit) && (isNearlyDue(row) || accomplishes(offer.visit, row.requirement->id) ||
                                                   isDueWith(offer.due, row, accomplishes(offer.visit)))});
    std::ranges::stable_sort(offer.proposals, {}, [](const Proposal& each) {
        return std::pair(!each.due, each.row->requirement->force == Force::Recommended);
    });
    return offer;
}

Result<Entry> openingEntry(Books& books, const Opening& opening) {
    if (opening.items.empty())
        return problem(BenchFault::NoItems, {}, atKey("items"));
    auto list = due(books, {std::nullopt, opening.items}, opening.on, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    for (const auto& id : opening.items)
        if (std::ranges::none_of(list->items, [&](const ItemFacts& item) { return item.id == id; }))
            return problem(BenchFault::ItemNotYetThere, {id, opening.on}, atKey("items"));
    auto whole = checklistOn(books, opening.visit, opening.on);
    if (!whole)
        return tl::unexpected(whole.error());
    for (const auto& work : opening.work)
        for (const auto& row : list->rows)
            if (row.item->id == work.item && row.requirement->id == work.requirement &&
                !isCredited(*whole, opening.visit, *row.requirement, row.item->kind))
                return problem(BenchFault::NotOfTheVisit, {row.requirement->title, termOf(opening.visit)},
                               atKey("work"));
    if (isEventUnknown(*whole, opening.visit, *list))
        return problem(BenchFault::NoEventReported, {termOf(opening.visit)}, atKey("visit"));
    if (isOfComponents(opening.visit) && opening.balloon)
        return problem(BenchFault::ComponentOfBalloon, {*opening.balloon}, atKey("balloon"));
    auto checklist = ofVisit(*whole, opening.visit, list->items);
    auto work = wholeWork(opening, *list);
    addFurtherWork(checklist, opening, work, *list);
    auto name = opening.inspection.empty() ? freshName(books, opening) : Result<InspectionId>(opening.inspection);
    if (!name)
        return tl::unexpected(name.error());
    Entry entry;
    entry.on = opening.on;
    entry.time = opening.time;
    entry.by = opening.by;
    entry.body = InspectionOpened{std::move(*name), std::string(visitName(opening.visit)),
                                  opening.items,    opening.balloon,
                                  std::move(work),  checklistText(checklist),
                                  opening.order};
    return entry;
}

Results<InspectionId> openInspection(Journal& journal, Books& books, const Opening& opening) {
    auto entry = openingEntry(books, opening);
    if (!entry)
        return tl::unexpected(std::vector<Problem>{entry.error()});
    auto name = std::get<InspectionOpened>(entry->body).inspection;
    const auto posted = postOne(journal, books, std::move(*entry));
    if (!posted)
        return tl::unexpected(posted.error());
    return name;
}

}

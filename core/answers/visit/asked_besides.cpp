// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/asked_besides.h"

#include "answers/directives/told.h"
#include "answers/due.h"
#include "answers/fabric_marks.h"
#include "bench/checklist/further_line.h"
#include "bench/release/accomplished.h"
#include "bench/release/release.h"
#include "rules/due/defects.h"
#include "rules/due/incomplete.h"
#include "rules/due/lists.h"
#include "rules/standing/with_inspections.h"

#include <algorithm>

namespace crownring {

namespace {

/// The items as they will be once all that the inspection accomplishes is done.
std::vector<ItemFacts> withWorkDone(const BenchFile& file) {
    auto items = file.items;
    for (const auto& work : accomplishments(file))
        if (const auto item = std::ranges::find(items, work.item, &ItemFacts::id); item != items.end())
            item->done.push_back({work.requirement,
                                  {Moment(file.on, TimeOfDay(23, 59)), EntryId()},
                                  item->clock,
                                  {},
                                  {},
                                  Evidence::Signed});
    return items;
}

bool standsAgainst(const DueRow& row) {
    return isRequired(row.state) && row.requirement->force == Force::Mandatory &&
           row.requirement->blocks == Blocks::Flight && row.state.standing <= Standing::Unproven;
}

/// Defects, and the list of this inspection, are judged by themselves; so are its readings (`fabricMarks`).
bool isAnsweredHere(const BenchFile& file, const DueRow& row) {
    if (const auto list = listOf(row.requirement->id))
        return *list == file.inspection.id;
    if (const auto work = incompleteOf(row.requirement->id))
        return *work == file.inspection.id;
    return defectOf(row.requirement->id).has_value();
}

/// What is due with the inspections of the work, as it stood before the day: what the visit brings is of that day.
void addGoesWith(BenchFile& file, const ItemFacts& item, const RequirementSet& inForce) {
    std::vector<RequirementId> carriedOut;
    for (const auto& work : file.inspection.opened.body.work)
        if (work.item == item.id)
            carriedOut.push_back(work.requirement);
    auto before = item;
    std::erase_if(before.done, [&](const Accomplishment& each) { return each.stamp.at.on() >= file.on; });
    for (const auto& held : inForce.all()) {
        const auto& asked = *held.requirement;
        if (asked.force != Force::Mandatory || !binds(asked, item) ||
            std::ranges::all_of(asked.limits, [](const Limit& limit) { return limit.with.empty(); }))
            continue;
        const auto state = assess(asked, before, inForce, file.on);
        if (state.standing != Standing::Closed && isDueWith(asked, state, inForce, carriedOut))
            file.goesWith.push_back({{item.id, asked.id}, asked.title, asked.source});
    }
}

/// @pre `excepted` is read
void addDirectives(BenchFile& file, const DirectiveMarks& marks) {
    for (const auto& item : file.items) {
        const auto its = marks.find(item.id);
        if (its == marks.end())
            continue;
        for (const auto& mark : its->second) {
            const bool isOpen = !mark.evidence || mark.standing < Standing::Clear;
            if (mark.recommended || !isOpen || mark.standing == Standing::Closed)
                continue;
            const auto id = directiveRequirementId(mark.directive);
            const bool against = std::ranges::any_of(
                file.excepted, [&](const Excepted& each) { return each.item == item.id && each.requirement == id; });
            file.directives.push_back(
                {item.id, mark.directive, mark.revision, mark.title, mark.standing, mark.isUnknown, against});
        }
    }
}

}

Result<void> readAskedBesides(Books& books, BenchFile& file) {
    auto obligations = obligationsOn(books, file.on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    for (const auto& work : file.inspection.opened.body.work)
        if (const auto* item = file.item(work.item))
            if (const auto* asked = obligations->of(item->id, item->balloon).find(work.requirement)) {
                file.titles.emplace(asked->id, asked->title);
                if (isTestOfFabric(*asked, item->kind))
                    file.tests.push_back(work);
            }
    for (const auto& item : file.items)
        addGoesWith(file, item, obligations->of(item.id, item.balloon));
    for (const auto& item : file.items)
        for (const auto& held : obligations->of(item.id, item.balloon).all())
            if (accomplishes(file.visit(), held.requirement->id) && binds(*held.requirement, item)) {
                file.owed.push_back({item.id, held.requirement->id});
                file.titles.emplace(held.requirement->id, held.requirement->title);
            }
    auto items = withWorkDone(file);
    const auto fabric =
        fabricMarks(books, {std::nullopt, file.inspection.opened.body.items}, items, file.on, file.inspection.id);
    if (!fabric)
        return tl::unexpected(fabric.error());
    const auto directives = directiveMarks(books, items, {file.on, {}, file.inspection.id});
    if (!directives)
        return tl::unexpected(directives.error());
    const auto list =
        dueList(std::move(items), *fabric, std::move(*obligations), file.on, {}, Outside::AsInService, *directives);
    for (const auto& row : list.rows)
        if (standsAgainst(row) && !isAnsweredHere(file, row))
            file.excepted.push_back({row.item->id, row.requirement->id, row.requirement->title, row.requirement->source,
                                     row.state.standing});
    for (const auto& each : leftOut(file)) // due with this inspection
        if (std::ranges::none_of(file.excepted, [&](const Excepted& known) {
                return known.item == each.work.item && known.requirement == each.work.requirement;
            }))
            file.excepted.push_back({each.work.item, each.work.requirement, each.title, each.source, Standing::Lapsed});
    addDirectives(file, *directives);
    return {};
}

}

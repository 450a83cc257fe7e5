// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/due_list.h"

#include "rules/due/defects.h"
#include "rules/due/due_order.h"
#include "rules/due/fabric_rows.h"
#include "rules/due/incomplete.h"
#include "rules/due/lists.h"

#include <algorithm>

namespace crownring {

namespace {

/// What is in force for each item, by its place in the list.
std::vector<const RequirementSet*> setsOf(const std::vector<ItemFacts>& items, const Obligations& obligations,
                                          const std::optional<Registration>& flyingAs) {
    std::vector<const RequirementSet*> sets;
    sets.reserve(items.size());
    for (const auto& item : items)
        sets.push_back(&obligations.of(item.id, flyingAs, item.balloon));
    return sets;
}

/// As many as there can be; what is reserved and not used costs nothing.
std::size_t mostRows(const std::vector<const RequirementSet*>& sets) {
    std::size_t most = 0;
    for (const auto* set : sets)
        most += set->all().size();
    return most;
}

bool isLeftOut(const ItemFacts& item, Outside outside) { return item.out && outside == Outside::LeftOut; }

void assessAll(DueList& list, const std::vector<const RequirementSet*>& sets, const std::vector<std::string>& flownFor,
               Outside outside) {
    list.rows.reserve(mostRows(sets));
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const auto& item = list.items[i];
        if (isLeftOut(item, outside))
            continue;
        for (const auto& [requirement, programme] : sets[i]->all())
            if (binds(*requirement, item))
                list.rows.push_back({&item, requirement, programme,
                                     assess(*requirement, item, *sets[i], list.on, list.memory.get(), flownFor)});
    }
}

void addWhatTheRecordAsks(DueList& list, const FabricMarks& fabric, const DirectiveMarks& directives, Outside outside) {
    for (const auto& item : list.items) {
        if (isLeftOut(item, outside))
            continue;
        for (const auto& open : openDefects(item))
            list.rows.push_back({&item, &list.own.emplace_back(defectRequirement(open, item, list.on)),
                                 &defectProgramme(), assessDefect(open, item, list.on, list.memory.get())});
        for (const auto& pending : item.lists)
            list.rows.push_back({&item, &list.own.emplace_back(listRequirement(pending)), &listProgramme(),
                                 assessList(list.memory.get())});
        for (const auto& work : item.incomplete)
            list.rows.push_back({&item, &list.own.emplace_back(incompleteRequirement(work)), &incompleteProgramme(),
                                 assessIncomplete(list.memory.get())});
        if (const auto marks = directives.find(item.id); marks != directives.end())
            for (const auto& mark : marks->second)
                list.rows.push_back({&item, &list.own.emplace_back(directiveRequirement(mark)), &directiveProgramme(),
                                     assessDirective(mark, list.memory.get())});
        if (const auto marks = fabric.find(item.id); marks != fabric.end())
            for (const auto& mark : marks->second)
                list.rows.push_back({&item, &list.own.emplace_back(fabricRequirement(mark)), &fabricProgramme(),
                                     assessFabric(mark, list.memory.get())});
    }
}

/// Sorts in place, following each cycle of moves, since a second list of all rows costs more than the sorting.
void sortRows(std::vector<DueRow>& rows, const DueOrder& order) {
    std::vector<DueKey> keys;
    keys.reserve(rows.size());
    for (const auto& row : rows)
        keys.push_back(order.keyOf(row, static_cast<std::uint32_t>(keys.size())));
    std::sort(keys.begin(), keys.end());
    for (std::uint32_t start = 0; start < keys.size(); ++start) {
        if (keys[start].row == start)
            continue;
        auto held = std::move(rows[start]);
        auto to = start;
        for (auto from = keys[to].row; from != start; from = keys[to].row) {
            rows[to] = std::move(rows[from]);
            keys[to].row = to;
            to = from;
        }
        rows[to] = std::move(held);
        keys[to].row = to;
    }
}

}

bool isOfTheRecord(const DueRow& row) {
    return row.programme == &defectProgramme() || row.programme == &fabricProgramme() ||
           row.programme == &listProgramme() || row.programme == &incompleteProgramme() ||
           row.programme == &directiveProgramme();
}

bool barsFilling(const DueRow& row) {
    if (row.requirement->blocks != Blocks::Flight || row.requirement->force != Force::Mandatory ||
        !isRequired(row.state))
        return false;
    return row.state.standing == Standing::Spent ||
           (row.state.standing == Standing::Lapsed && row.state.because != Because::Limits);
}

DueList dueList(std::vector<ItemFacts> items, const FabricMarks& fabric, Obligations obligations, CivilDate on,
                const FlyingAs& flyingAs, Outside outside, const DirectiveMarks& directives) {
    DueList list;
    list.on = on;
    list.items = std::move(items);
    list.obligations = std::make_unique<Obligations>(std::move(obligations));
    const auto sets = setsOf(list.items, *list.obligations, flyingAs.balloon);
    assessAll(list, sets, flyingAs.operations, outside);
    addWhatTheRecordAsks(list, fabric, directives, outside);
    sortRows(list.rows, DueOrder(list.items, sets, list.own));
    return list;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/due_groups.h"

#include "rules/due/defects.h"
#include "rules/due/lists.h"

#include <algorithm>
#include <map>
#include <set>

namespace crownring::screen {

namespace {

/// A name for all rows that the record itself asks of one sort.
RequirementId commonName(const DueRow& row) {
    if (!isOfTheRecord(row) || row.programme == &directiveProgramme())
        return row.requirement->id;
    return RequirementId(row.programme == &defectProgramme() ? "defect"
                         : row.programme == &listProgramme() ? "list"
                                                             : "fabric");
}

/// What governs a balloon is what its line says everywhere, as long as it is among the rows; else what comes first.
const DueRow* governingOf(const FleetSheet& sheet, const DueGroup& group, Grouping grouping) {
    if (grouping == Grouping::Balloon && group.key.balloon) {
        const auto* row = sheet.headlineOf(*group.key.balloon).row;
        if (row && std::ranges::find(group.rows, row) != group.rows.end())
            return row;
    }
    return group.rows.front();
}

}

GroupKey groupOf(const DueRow& row, Grouping grouping) {
    switch (grouping) {
    case Grouping::None:
    case Grouping::Balloon:
        return {row.item->balloon, std::nullopt, false};
    case Grouping::Visit:
        return {row.item->balloon, commonName(row), false};
    case Grouping::Requirement:
        return {std::nullopt, commonName(row), true};
    }
    return {};
}

std::vector<DueGroup> grouped(const FleetSheet& sheet, const DueRows& rows, Grouping grouping) {
    struct Placed {
        DueGroup group;
        std::vector<std::size_t> ranks; ///< of its rows in the whole list
        std::size_t rank = 0;           ///< of what governs it
    };
    std::vector<Placed> placed;
    std::map<GroupKey, std::size_t> places;
    for (std::size_t rank = 0; rank < rows.size(); ++rank) {
        const auto [place, isNew] = places.emplace(groupOf(*rows[rank], grouping), placed.size());
        if (isNew)
            placed.push_back({{place->first, {}, nullptr, 0}, {}, 0});
        placed[place->second].group.rows.push_back(rows[rank]);
        placed[place->second].ranks.push_back(rank);
    }
    for (auto& [group, ranks, rank] : placed) {
        group.governs = governingOf(sheet, group, grouping);
        rank = ranks[static_cast<std::size_t>(std::ranges::find(group.rows, group.governs) - group.rows.begin())];
        std::set<const ItemFacts*> items;
        for (const auto* row : group.rows)
            items.insert(row->item);
        group.items = items.size();
    }
    std::ranges::sort(placed, {}, &Placed::rank);
    std::vector<DueGroup> groups;
    groups.reserve(placed.size());
    for (auto& each : placed)
        groups.push_back(std::move(each.group));
    return groups;
}

}

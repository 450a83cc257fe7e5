// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/components/part_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// A row of its transport test that says no, or does not say.
std::optional<Problem> against(const DueRow& row) {
    if (row.requirement->blocks != Blocks::Filling || row.requirement->force != Force::Mandatory ||
        !isRequired(row.state))
        return std::nullopt;
    if (row.state.standing == Standing::Unproven)
        return Problem{PartFault::TestNotShown, {row.item->id, row.requirement->title}, atKey("item")};
    if (row.state.standing > Standing::Unproven)
        return std::nullopt;
    std::optional<CivilDate> due;
    for (const auto& limit : row.state.limits)
        if (const auto* reach = limit.calendar(); reach && (!due || reach->due < *due))
            due = reach->due;
    if (!due)
        return Problem{PartFault::TestNotShown, {row.item->id, row.requirement->title}, atKey("item")};
    return Problem{PartFault::TestPast, {row.item->id, row.requirement->title, *due}, atKey("item")};
}

Result<std::optional<Problem>> wrongFilling(Books& books, const ItemId& item, CivilDate on) {
    const auto list = due(books, {std::nullopt, {item}}, on, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    if (list->items.empty())
        return std::nullopt;
    const auto& facts = list->items.front();
    if (facts.kind != ItemKind::Cylinder)
        return Problem{PartFault::NoCylinder, {item}, atKey("item")};
    if (facts.out && facts.out->hottest)
        return Problem{PartFault::FilledHot, {item, facts.out->since}, atKey("item")};
    if (facts.out)
        return Problem{PartFault::FilledOut, {item, reasonOf(*facts.out)}, atKey("item")};
    for (const auto& row : list->rows)
        if (auto problem = against(row))
            return problem;
    for (const auto& row : list->rows)
        if (barsFilling(row))
            return Problem{PartFault::FilledGrounded, {item, row.requirement->title}, atKey("item")};
    return std::nullopt;
}

}

Findings askFillings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<CylinderFilled>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto wrong = wrongFilling(batch.books, std::get<CylinderFilled>((*now)->body).item, (*now)->on);
        if (!wrong)
            return tl::unexpected(atLine(wrong.error(), line));
        if (*wrong)
            problems.push_back(asAmended(atLine(**wrong, line), entry));
    }
    return problems;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"

#include "answers/discrepancies.h"
#include "answers/due.h"
#include "answers/fabric_marks.h"
#include "problem/faults/use_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// The balloon that the kit flies as is that of its envelope.
FlyingAs flyingAs(const std::vector<ItemFacts>& kit) {
    for (const auto& item : kit)
        if (item.kind == ItemKind::Envelope && item.balloon)
            return {item.balloon, item.operations};
    return {};
}

}

Result<RigUpAnswer> checkRigUp(Books& books, const std::vector<ItemId>& kit, CivilDate on,
                               const PlannedFlight& flight) {
    if (kit.empty())
        return problem(UseFault::EmptyKit);
    const Scope scope{std::nullopt, kit};
    auto facts = books.facts(scope, on);
    if (!facts)
        return tl::unexpected(facts.error());
    for (const auto& id : kit)
        if (std::none_of(facts->begin(), facts->end(), [&](const auto& item) { return item.id == id; }))
            return problem(UseFault::ItemNotYetThere, {id, on});
    auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    if (const auto counted = countLists(books, *facts, *obligations, on); !counted)
        return tl::unexpected(counted.error());
    const auto fabric = fabricMarks(books, scope, *facts, on);
    if (!fabric)
        return tl::unexpected(fabric.error());
    const auto balloon = flyingAs(*facts);
    RigUpAnswer answer;
    answer.due = dueList(std::move(*facts), *fabric, std::move(*obligations), on, balloon);
    answer.verdict = rigUp(answer.due, flight);
    auto unread = books.unreadable();
    if (!unread)
        return tl::unexpected(unread.error());
    for (auto& question : *unread)
        answer.verdict.reasons.push_back({.kind = RigUpReason::Kind::Unread, .unread = std::move(question)});
    answer.verdict.mayFly = answer.verdict.reasons.empty();
    return answer;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"

#include "answers/due.h"
#include "problem/faults/use_fault.h"
#include "rules/due/incomplete.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// The balloon that the kit flies as is that of its envelope.
FlyingAs flyingAs(const std::vector<ItemFacts>& kit) {
    for (const auto& item : kit)
        if (item.kind == ItemKind::Envelope && item.balloon)
            return {item.balloon, item.operations};
    return {};
}

/// What the releases after incomplete maintenance that stand on the kit cover, and under which limitations.
Result<std::vector<std::string>> cover(Books& books, const std::vector<ItemFacts>& kit, std::vector<Covered>& covered) {
    std::map<Stamp, std::string> limitations;
    for (const auto& item : kit)
        for (const auto& work : item.incomplete) {
            covered.push_back({item.id, incompleteRequirementId(work.inspection)});
            const auto told = books.told(
                {Subject::Inspection, work.inspection.text(), {kindName<ReleaseIncomplete>()}, CivilDate::last()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told) {
                const auto* release = std::get_if<ReleaseIncomplete>(&nowOf(line).body);
                if (!release || stampOf(nowOf(line)) != work.released)
                    continue;
                limitations[work.released] = release->limitations;
                for (const auto& each : release->covers)
                    covered.push_back({each.item, each.requirement});
            }
        }
    std::vector<std::string> texts;
    for (const auto& [stamp, text] : limitations)
        texts.push_back(text);
    return texts;
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
    const auto balloon = flyingAs(*facts);
    auto list = dueOf(books, scope, std::move(*facts), on, balloon, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    RigUpAnswer answer;
    answer.due = std::move(*list);
    auto flown = flight;
    if (flight.checkFlight) {
        auto limitations = cover(books, answer.due.items, flown.covered);
        if (!limitations)
            return tl::unexpected(limitations.error());
        answer.limitations = std::move(*limitations);
    }
    answer.verdict = rigUp(answer.due, flown);
    auto unread = books.unreadable();
    if (!unread)
        return tl::unexpected(unread.error());
    for (auto& question : *unread)
        answer.verdict.reasons.push_back({.kind = RigUpReason::Kind::Unread, .unread = std::move(question)});
    answer.verdict.mayFly = answer.verdict.reasons.empty();
    return answer;
}

}

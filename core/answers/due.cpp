// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"

#include "answers/defects/told.h"
#include "answers/defects/who_clears.h"
#include "answers/directives/told.h"
#include "answers/discrepancies.h"
#include "answers/fabric_marks.h"
#include "answers/visit/unfinished.h"
#include "rules/programme/programme.h"

#include <algorithm>
#include <map>

namespace crownring {

Bound boundAsRenamed(Bound bound, const Stamp& adopted, const std::vector<Renaming>& renamings) {
    auto* balloons = std::get_if<BoundBalloons>(&bound);
    for (const auto& renaming : renamings)
        if (balloons && adopted < renaming.stamp && std::ranges::count(balloons->balloons, renaming.from) > 0 &&
            std::ranges::count(balloons->balloons, renaming.to) == 0)
            balloons->balloons.push_back(renaming.to);
    return bound;
}

std::vector<Registration> namesOf(const Registration& balloon, const std::vector<Renaming>& renamings) {
    std::vector<Registration> names{balloon};
    for (auto renaming = renamings.rbegin(); renaming != renamings.rend(); ++renaming)
        if (renaming->to == names.back())
            names.push_back(renaming->from);
    return names;
}

Result<Obligations> obligationsOn(Books& books, CivilDate on) {
    auto adopted = books.adoptions(on);
    if (!adopted)
        return tl::unexpected(adopted.error());
    std::map<std::string, std::shared_ptr<const Programme>> programmes;
    std::vector<Adoption> adoptions;
    adoptions.reserve(adopted->size());
    for (auto& each : *adopted) {
        auto& programme = programmes[each.digest];
        if (!programme) {
            const auto known = knownProgramme(*each.document);
            if (!known)
                return tl::unexpected(known.error());
            programme = *known;
        }
        adoptions.push_back({std::move(each.stamp), std::move(each.bound), programme});
    }
    const auto renamings = books.renamings(on);
    if (!renamings)
        return tl::unexpected(renamings.error());
    for (auto& adoption : adoptions)
        adoption.bound = boundAsRenamed(std::move(adoption.bound), adoption.stamp, *renamings);
    return Obligations(std::move(adoptions));
}

Result<DueList> dueOf(Books& books, const Scope& scope, std::vector<ItemFacts> facts, CivilDate on, const FlyingAs& as,
                      Outside outside) {
    auto obligations = obligationsOn(books, on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    if (const auto left = leaveOutUntouched(books, facts); !left)
        return tl::unexpected(left.error());
    if (const auto counted = countLists(books, facts, *obligations, on); !counted)
        return tl::unexpected(counted.error());
    if (const auto barred = barDeferrals(books, facts, on, as); !barred)
        return tl::unexpected(barred.error());
    if (const auto barred = barClearings(books, facts); !barred)
        return tl::unexpected(barred.error());
    const auto fabric = fabricMarks(books, scope, facts, on);
    if (!fabric)
        return tl::unexpected(fabric.error());
    const auto directives = directiveMarks(books, facts, {on, as});
    if (!directives)
        return tl::unexpected(directives.error());
    return dueList(std::move(facts), *fabric, std::move(*obligations), on, as, outside, *directives);
}

Result<DueList> due(Books& books, const Scope& scope, CivilDate on, Outside outside) {
    auto facts = books.facts(scope, on);
    if (!facts)
        return tl::unexpected(facts.error());
    return dueOf(books, scope, std::move(*facts), on, {}, outside);
}

}

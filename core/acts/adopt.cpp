// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/adopt.h"

#include "acts/post.h"
#include "problem/faults/entry_fault.h"
#include "rules/programme/programme.h"

#include <algorithm>

namespace crownring {

namespace {

template <class What>
std::optional<Problem> namedTwice(std::vector<Name<What>> names, const char* key) {
    std::sort(names.begin(), names.end());
    const auto twice = std::adjacent_find(names.begin(), names.end());
    if (twice == names.end())
        return std::nullopt;
    return Problem{EntryFault::NamedTwice, {*twice}, atKey(key)};
}

std::optional<Problem> namedTwice(const Bound& bound) {
    if (const auto* balloons = std::get_if<BoundBalloons>(&bound))
        return namedTwice(balloons->balloons, "balloons");
    if (const auto* items = std::get_if<BoundItems>(&bound))
        return namedTwice(items->items, "items");
    return std::nullopt;
}

}

Results<Receipt> adopt(Journal& journal, Books& books, std::string_view document, const std::string& file, Bound bound,
                       CivilDate on, const std::string& by) {
    if (auto twice = namedTwice(bound))
        return tl::unexpected(std::vector<Problem>{std::move(*twice)});
    const auto programme = programmeFrom(document);
    auto canonical = canonicalProgramme(document);
    if (!programme || !canonical) {
        auto problem = programme ? canonical.error() : programme.error();
        problem.where.file = file;
        return tl::unexpected(std::vector<Problem>{std::move(problem)});
    }
    Entry entry;
    entry.on = on;
    entry.by = by;
    entry.body = ProgrammeAdopted{programme->id, std::move(bound), std::move(*canonical), {}};
    return postOne(journal, books, std::move(entry));
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/aircraft_rules.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/programme_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// Whom both bind as aircraft: a registration, or all. Items by name are of the pool and may follow both.
std::optional<Argument> boundByBoth(const Bound& one, const Bound& other) {
    const auto* named = std::get_if<BoundBalloons>(&one);
    const auto* also = std::get_if<BoundBalloons>(&other);
    const bool all = std::holds_alternative<BoundEverything>(one);
    const bool others = std::holds_alternative<BoundEverything>(other);
    if (named && also) {
        for (const auto& balloon : named->balloons)
            if (std::ranges::count(also->balloons, balloon) > 0)
                return Argument(balloon);
        return std::nullopt;
    }
    if (named && others)
        return Argument(named->balloons.front());
    if (all && also)
        return Argument(also->balloons.front());
    if (all && others)
        return Argument(Phrase{ProgrammeFault::EveryBalloon, {}});
    return std::nullopt;
}

/// The same of one registration, where it is bound by name.
std::optional<Aircraft> boundAs(const Aircraft& rules, const Registration& balloon) {
    const auto* named = std::get_if<BoundBalloons>(&rules.bound);
    if (!named || std::ranges::count(named->balloons, balloon) == 0)
        return std::nullopt;
    auto one = rules;
    one.bound = BoundBalloons{{balloon}};
    return one;
}

std::optional<Problem> secondRegime(const std::vector<Aircraft>& rules, const Aircraft& one, int line,
                                    const char* key) {
    for (const auto& other : rules)
        if (other.regime != one.regime)
            if (auto both = boundByBoth(one.bound, other.bound))
                return Problem{ProgrammeFault::TwoRegimes,
                               {std::move(*both), one.programme, other.programme},
                               {{}, line, key},
                               "Regulation (EU) 1321/2014, Art. 3; 14 CFR 91.409 (from memory)"};
    return std::nullopt;
}

}

Findings askRegimes(const Batch& batch) {
    std::vector<Problem> problems;
    Regimes regimes;
    std::optional<std::vector<Aircraft>> adopted;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ProgrammeAdopted, BalloonRenamed>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto* renamed = std::get_if<BalloonRenamed>(&(*now)->body);
        const auto* adoption = std::get_if<ProgrammeAdopted>(&(*now)->body);
        if (adoption && regimes.of(adoption->programme, adoption->digest, adoption->document).empty())
            continue;
        if (!adopted) {
            auto asked = aircraftRules(batch.books);
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            adopted = std::move(*asked);
        }
        for (const auto& one : *adopted)
            if (const auto asked = renamed                ? boundAs(one, renamed->to)
                                   : one.id == (*now)->id ? std::optional(one)
                                                          : std::nullopt)
                if (auto both = secondRegime(*adopted, *asked, line, renamed ? "to" : "programme")) {
                    problems.push_back(std::move(*both));
                    break;
                }
    }
    return problems;
}

}

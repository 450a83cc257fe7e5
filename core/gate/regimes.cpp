// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/programme_fault.h"
#include "rules/programme/programme.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// Whose aircraft rules a text is; of a revision from before texts said so, as the shelf has its programme.
class Regimes {
public:
    const std::string& of(const ProgrammeId& id, const std::string& digest, const std::string& document) {
        const auto known = m_known.find(digest);
        if (known != m_known.end())
            return known->second;
        auto regime = said(document);
        if (regime.empty())
            regime = said(shelfText(id));
        return m_known.emplace(digest, std::move(regime)).first->second;
    }

private:
    static std::string said(std::string_view document) {
        const auto programme = programmeFrom(document); // `askAdoptions` says what cannot be read
        return programme ? programme->regime : std::string();
    }
    std::map<std::string, std::string> m_known;
};

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

}

Findings askRegimes(const Batch& batch) {
    std::vector<Problem> problems;
    std::optional<std::vector<AdoptedProgramme>> adopted;
    Regimes regimes;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ProgrammeAdopted>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* adoption = *now ? std::get_if<ProgrammeAdopted>(&(*now)->body) : nullptr;
        if (!adoption)
            continue;
        const auto regime = regimes.of(adoption->programme, adoption->digest, adoption->document);
        if (regime.empty())
            continue;
        if (!adopted) {
            auto asked = batch.books.adoptions(CivilDate::last());
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            adopted = std::move(*asked);
        }
        for (const auto& other : *adopted) {
            const auto& otherRegime = regimes.of(other.programme, other.digest, *other.document);
            if (otherRegime.empty() || otherRegime == regime)
                continue;
            if (auto both = boundByBoth(adoption->bound, other.bound)) {
                problems.push_back(Problem{ProgrammeFault::TwoRegimes,
                                           {std::move(*both), adoption->programme, other.programme},
                                           {{}, line, "programme"},
                                           "Regulation (EU) 1321/2014, Art. 3; 14 CFR 91.409 (from memory)"});
                break;
            }
        }
    }
    return problems;
}

}

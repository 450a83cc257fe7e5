// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/aircraft_rules.h"

#include "answers/due.h"
#include "bench/release/barred_phrase.h"
#include "rules/programme/programme.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

std::string regimeIn(std::string_view document) {
    const auto programme = programmeFrom(document); // `askAdoptions` says what cannot be read
    return programme ? programme->regime : std::string();
}

bool isBound(const Bound& bound, const ItemFacts& item) {
    if (const auto* named = std::get_if<BoundBalloons>(&bound))
        return item.balloon && std::ranges::count(named->balloons, *item.balloon) > 0;
    if (const auto* named = std::get_if<BoundItems>(&bound))
        return !item.balloon && std::ranges::count(named->items, item.id) > 0;
    return true;
}

}

std::optional<Barred> otherRules(const std::optional<Regime>& regime, Capacity capacity) {
    if (!regime || *regime == regimeOf(capacity))
        return std::nullopt;
    return Barred{{BarredPhrase::OtherState, {termOf(capacity)}}, gradingRule};
}

const std::string& Regimes::of(const ProgrammeId& id, const std::string& digest, const std::string& document) {
    const auto known = m_known.find(digest);
    if (known != m_known.end())
        return known->second;
    auto regime = regimeIn(document);
    if (regime.empty())
        regime = regimeIn(shelfText(id));
    return m_known.emplace(digest, std::move(regime)).first->second;
}

Result<std::vector<Aircraft>> aircraftRules(Books& books) {
    const auto adopted = books.adoptions(CivilDate::last());
    const auto renamings = books.renamings(CivilDate::last());
    if (!adopted || !renamings)
        return tl::unexpected(adopted ? renamings.error() : adopted.error());
    Regimes regimes;
    std::vector<Aircraft> rules;
    for (const auto& each : *adopted) {
        const auto& regime = regimes.of(each.programme, each.digest, *each.document);
        if (!regime.empty())
            rules.push_back(
                {each.stamp.id, each.programme, regime, boundAsRenamed(each.bound, each.stamp, *renamings)});
    }
    return rules;
}

Result<std::optional<Regime>> regimeOf(Books& books, const ItemId& item, CivilDate on) {
    const auto rules = aircraftRules(books);
    if (!rules)
        return tl::unexpected(rules.error());
    return regimeOf(books, *rules, item, on);
}

Result<std::optional<Regime>> regimeOf(Books& books, const std::vector<Aircraft>& rules, const ItemId& item,
                                       CivilDate on) {
    for (const auto day : {CivilDate::last(), on}) {
        const auto facts = books.facts({{}, {item}}, day);
        if (!facts)
            return tl::unexpected(facts.error());
        std::set<std::string> regimes;
        for (const auto& each : rules)
            if (!facts->empty() && isBound(each.bound, facts->front()))
                regimes.insert(each.regime);
        if (!regimes.empty())
            return regimes.size() == 1 ? regimeFrom(*regimes.begin()) : std::nullopt;
    }
    return std::nullopt;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/directives/answering.h"

#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "gate/defects/deciding.h"

namespace crownring {

Result<Answered> answeredOn(Books& books, const DirectiveAnswered& answer, CivilDate on) {
    Answered answered;
    answered.balloon = answer.balloon;
    if (answer.item) {
        for (const auto day : {on, CivilDate::last()}) {
            auto facts = books.facts({std::nullopt, {*answer.item}}, day);
            if (!facts)
                return tl::unexpected(facts.error());
            answered.items = std::move(*facts);
            if (!answered.items.empty())
                break;
        }
        if (!answered.items.empty())
            answered.balloon = answered.items.front().balloon;
    }
    if (answered.balloon) {
        auto facts = books.facts({answered.balloon, {}}, on);
        if (!facts)
            return tl::unexpected(facts.error());
        answered.beside = std::move(*facts);
    }
    if (answered.beside.empty())
        answered.beside = answered.items;
    if (answer.balloon)
        answered.items = answered.beside;
    if (!answered.beside.empty())
        answered.operations = answered.beside.front().operations;
    return answered;
}

Result<std::optional<Regime>> Answering::regime(const Answered& answered, CivilDate on) {
    if (answered.items.empty())
        return std::nullopt;
    if (!m_rules) {
        auto rules = aircraftRules(m_books);
        if (!rules)
            return tl::unexpected(rules.error());
        m_rules = std::move(*rules);
    }
    return regimeOf(m_books, *m_rules, answered.items.front().id, on);
}

Result<std::optional<Barred>> Answering::bar(const PersonId& person, std::string_view capacity, CivilDate on,
                                             const Answered& answered) {
    const auto known = capacityFrom(capacity);
    if (!known)
        return Barred{{BarredPhrase::NotEntitled, {person, std::string(capacity)}}, complianceRule};
    const auto entitlements = entitlementsOn(m_books, on);
    const auto rules = regime(answered, on);
    if (!entitlements || !rules)
        return tl::unexpected(entitlements ? rules.error() : entitlements.error());
    auto bar = mayRelease(*entitlements, {person, *known, answered.balloon, answered.operations, on},
                          regimeOf(*known) == Regime::PartMl ? Visit::PartMlCompliance : Visit::UsCompliance);
    return bar ? bar : otherRules(*rules, *known);
}

Result<std::optional<Barred>> Answering::barInAny(const PersonId& person, CivilDate on, const Answered& answered) {
    const auto entitlements = entitlementsOn(m_books, on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    std::optional<Barred> barred = Barred{{BarredPhrase::EntitledToNothing, {person, on}}, complianceRule};
    for (const auto& each : *entitlements) {
        if (each.person != person)
            continue;
        auto found = bar(person, capacityName(each.capacity), on, answered);
        if (!found || !*found)
            return found;
        barred = std::move(*found);
    }
    return barred;
}

Result<bool> Answering::holds(const PersonId& person, std::string_view capacity, CivilDate on,
                              std::string_view licence) {
    const auto entitlements = entitlementsOn(m_books, on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    return std::ranges::any_of(*entitlements, [&](const Entitlement& each) {
        return each.person == person && capacityName(each.capacity) == capacity &&
               (each.licence == licence || licenceText(each) == licence) && each.from <= on &&
               (!each.until || on <= *each.until);
    });
}

}

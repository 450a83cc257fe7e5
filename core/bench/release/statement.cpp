// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release_phrase.h"
#include "bench/release/release_text.h"
#include "bench/wording/places.h"

#include <utility>

namespace crownring {

namespace {

PrescribedStatement noStatement(Phrase because) { return {{}, {}, std::move(because)}; }

std::string itemNames(const ReleaseFacts& facts) {
    std::string names;
    for (const auto& item : facts.items)
        names += (names.empty() ? "" : "; ") + item.named;
    return names;
}

/// 14 CFR 43.11(a)(4) says "this aircraft", Part-ML "the aircraft"; what is less than one is named.
std::string aircraftOf(const ReleaseFacts& facts) {
    const std::string aircraft = isUsInspection(facts) ? "this aircraft" : "the aircraft";
    return isAircraft(facts) ? aircraft : "of " + aircraft + " the following alone (" + itemNames(facts) + ")";
}

std::string joined(const std::vector<std::string>& texts) {
    std::string all;
    for (const auto& each : texts)
        all += (all.empty() ? "" : "; ") + each;
    return all;
}

/// Organisations work under an annex of their own, which their statement names (ML.A.402(a), read; that the statement
/// names it from memory); independent staff and pilot-owners under Part-ML.
Places placesOf(const ReleaseFacts& facts) {
    return {{"aircraft", aircraftOf(facts)},
            {"items", itemNames(facts)},
            {"registration", facts.registration},
            {"owner", facts.owner},
            {"order", facts.order},
            {"inspection", facts.visit == Visit::UsAnnual ? "annual" : "100-hour"},
            {"annex", facts.annex.empty() ? "Part-ML" : facts.annex},
            {"date", facts.date ? facts.date->iso() : ""},
            {"list_date", facts.discrepanciesDated ? facts.discrepanciesDated->iso() : ""},
            {"person", facts.person},
            {"licence", facts.licence},
            {"organisation", facts.organisation},
            {"approval", facts.approval},
            {"manuals", joined(facts.manuals)},
            {"limitations", facts.limitations}};
}

PrescribedStatement looseStatement(const ReleaseFacts& facts) {
    Listed items;
    for (const auto& item : facts.items)
        items.list.push_back(item.title);
    return noStatement(
        {regimeOf(facts.visit) == Regime::PartMl ? ReleasePhrase::LoosePartMl : ReleasePhrase::LooseUs, {items}});
}

StatementText partMlText(const ReleaseFacts& facts) {
    return facts.capacity == Capacity::PilotOwner ? StatementText::PartMlOwnerRelease : StatementText::PartMlRelease;
}

PrescribedStatement signedBy(StatementText text, const ReleaseFacts& facts) {
    return composedStatement(text, facts.texts, placesOf(facts));
}

}

PrescribedStatement composedStatement(StatementText text, const AdoptedTexts& texts, const Places& places) {
    const auto adopted = texts.find(idOf(text));
    const auto& ships = shipped(text).wording;
    PrescribedStatement statement;
    statement.adopted = adopted != texts.end();
    statement.wording = statement.adopted ? adopted->second.wording : ships;
    statement.text = filled(statement.wording->body, places);
    statement.source = statement.wording->source.empty() ? ships.source : statement.wording->source;
    statement.unfilled = emptyPlaces(statement.wording->body, places);
    return statement;
}

PrescribedStatement statementOf(const ReleaseFacts& facts) {
    if (facts.outcome == Outcome::Abandoned)
        return noStatement({ReleasePhrase::NothingReleased, {}});
    const bool partMl = regimeOf(facts.visit) == Regime::PartMl;
    if (facts.outcome == Outcome::Released && isOfComponents(facts.visit) && partMl)
        return signedBy(StatementText::PartMlComponentRelease, facts);
    if (isLoose(facts) && (isUsInspection(facts) || partMl))
        return looseStatement(facts);
    if (facts.outcome == Outcome::Incomplete && partMl)
        return signedBy(StatementText::PartMlIncompleteRelease, facts);
    if (isUsInspection(facts))
        return signedBy(
            facts.outcome == Outcome::Released ? StatementText::UsAirworthy : StatementText::UsDiscrepancies, facts);
    if (facts.outcome == Outcome::Discrepancies)
        return noStatement({ReleasePhrase::DiscrepanciesListed, {}});
    return signedBy(partMl ? partMlText(facts) : StatementText::UsReturnToService, facts);
}

PrescribedStatement returnStatementOf(const ReleaseFacts& facts) {
    if (isLoose(facts))
        return looseStatement(facts);
    const bool partMl = regimeOf(facts.visit) == Regime::PartMl;
    return signedBy(partMl ? partMlText(facts) : StatementText::UsReturnToService, facts);
}

}

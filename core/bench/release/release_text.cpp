// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release_text.h"

#include "bench/release/release_phrase.h"
#include "measure/duration_text.h"

#include <algorithm>
#include <utility>

namespace crownring {

namespace {

Argument headingOf(const ReleaseFacts& facts) {
    return facts.otherWork ? *facts.otherWork : Argument(termOf(facts.visit));
}

bool hasEnvelope(const ReleaseFacts& facts) {
    return !facts.envelopeType.empty() || std::any_of(facts.items.begin(), facts.items.end(),
                                                      [](const auto& item) { return item.kind == ItemKind::Envelope; });
}

Phrase hours(const std::optional<Minutes>& time) {
    return time ? Phrase{ReleasePhrase::Hours, {hoursAndMinutes(*time)}} : Phrase{ReleasePhrase::NotKnown, {}};
}

Argument said(ReleasePhrase phrase) { return Phrase{phrase, {}}; }
Argument said(ReleasePhrase label, Argument what) { return Phrase{label, {std::move(what)}}; }

ReleaseSection aircraft(const ReleaseFacts& facts) {
    if (isLoose(facts))
        return {said(ReleasePhrase::Items), {said(ReleasePhrase::OnNoBalloon)}};
    ReleaseSection section{said(ReleasePhrase::Aircraft), {said(ReleasePhrase::Registration, facts.registration)}};
    if (!facts.title.empty())
        section.paragraphs.push_back(facts.title);
    if (!facts.envelopeType.empty())
        section.paragraphs.push_back(said(ReleasePhrase::EnvelopeType, facts.envelopeType));
    if (!facts.envelopeSerial.empty())
        section.paragraphs.push_back(said(ReleasePhrase::EnvelopeSerial, facts.envelopeSerial));
    if (!facts.owner.empty())
        section.paragraphs.push_back(said(ReleasePhrase::Owner, facts.owner));
    if (!facts.operatedBy.empty())
        section.paragraphs.push_back(said(ReleasePhrase::OperatedBy, facts.operatedBy));
    return section;
}

ReleaseSection times(const ReleaseFacts& facts) {
    ReleaseSection section{said(ReleasePhrase::TimeInService), {}};
    if (!isLoose(facts))
        section.paragraphs.push_back(said(ReleasePhrase::AircraftTotalTime, hours(facts.totalTime)));
    for (const auto& item : facts.items)
        section.paragraphs.emplace_back(Phrase{ReleasePhrase::TimeOf, {item.title, hours(item.time)}});
    if (facts.highestTemperature)
        section.paragraphs.push_back(said(ReleasePhrase::HighestTemperature, *facts.highestTemperature));
    return section;
}

ReleaseSection signedBy(const ReleaseFacts& facts) {
    ReleaseSection section{said(facts.outcome == Outcome::Released && !isLoose(facts) ? ReleasePhrase::ReleasedBy
                                                                                      : ReleasePhrase::SignedBy),
                           {}};
    if (!facts.person.empty())
        section.paragraphs.push_back(facts.person);
    if (facts.capacity)
        section.paragraphs.push_back(said(ReleasePhrase::ActingAs, termOf(*facts.capacity)));
    if (!facts.licence.empty())
        section.paragraphs.push_back(said(ReleasePhrase::Licence, facts.licence));
    return section;
}

/// 14 CFR 43.9(a)(1), (3): what was done, to which data, by whom where that is another.
Argument described(const DescribedWork& work, Regime regime) {
    Argument text = Phrase{ReleasePhrase::WorkTo, {work.what, work.data}};
    if (work.grade)
        text = Phrase{ReleasePhrase::WorkGraded, {std::move(text), phraseOf(*work.grade, regime)}};
    if (!work.approval.empty())
        text = Phrase{ReleasePhrase::WorkApproved, {std::move(text), work.approval}};
    if (!work.performed.empty())
        text = Phrase{ReleasePhrase::WorkBy, {std::move(text), work.performed}};
    return text;
}

ReleaseSection discrepancies(const ReleaseFacts& facts) {
    ReleaseSection section{said(ReleasePhrase::Discrepancies), facts.discrepancies};
    if (facts.discrepanciesDated)
        section.paragraphs.push_back(said(ReleasePhrase::ListDated, *facts.discrepanciesDated));
    return section;
}

std::vector<Argument> withoutReadings(const ReleaseFacts& facts) {
    auto work = facts.extent;
    for (const auto& each : facts.performed)
        work.push_back(described(each, regimeOf(facts.visit)));
    if (!facts.order.empty())
        work.push_back(said(ReleasePhrase::WorkOrder, facts.order));
    return work;
}

/// Which rule asks for each of the contents that all entries have.
struct Clauses {
    std::string extent;
    std::string date;
    std::string person;
};

Clauses clausesOf(const ReleaseFacts& facts) {
    if (isUsInspection(facts))
        return {"14 CFR 43.11(a)(1)", "14 CFR 43.11(a)(2)", "14 CFR 43.11(a)(3)"};
    if (regimeOf(facts.visit) == Regime::Us14Cfr)
        return {"14 CFR 43.9(a)(1) (from memory)", "14 CFR 43.9(a)(2) (from memory)",
                "14 CFR 43.9(a)(3), (a)(4) (from memory)"};
    return {"ML.A.801(e) (from memory)", "ML.A.801(e) (from memory)", "ML.A.801(e) (from memory)"};
}

class Wanted {
public:
    void need(bool given, ContentPhrase what, std::string rule, bool law = true) {
        if (!given)
            m_missing.push_back({what, std::move(rule), law});
    }
    std::vector<MissingContent> take() { return std::move(m_missing); }

private:
    std::vector<MissingContent> m_missing;
};

}

Phrase phraseOf(Grade grade, Regime regime) {
    const bool isPartMl = regime == Regime::PartMl;
    switch (grade) {
    case Grade::Servicing:
        return {ReleasePhrase::Servicing, {}};
    case Grade::Minor:
        return {isPartMl ? ReleasePhrase::MinorChange : ReleasePhrase::MinorWork, {}};
    case Grade::Major:
        return {isPartMl ? ReleasePhrase::MajorChange : ReleasePhrase::MajorWork, {}};
    case Grade::Standard:
        return {ReleasePhrase::StandardWork, {}};
    }
    return {};
}

std::string namedInStatement(ItemKind kind, const ItemId& item, const std::optional<std::string>& serial) {
    const auto name = std::string(itemKindName(kind)) + " " + item.text();
    return serial ? name + ", serial number " + *serial : name;
}

bool isLoose(const ReleaseFacts& facts) { return facts.registration.empty(); }

bool isUsInspection(const ReleaseFacts& facts) {
    return regimeOf(facts.visit) == Regime::Us14Cfr && isPeriodic(facts.visit) && !facts.otherWork;
}

bool isAircraft(const ReleaseFacts& facts) {
    const auto has = [&](ItemKind kind) {
        return std::ranges::find(facts.items, kind, &ReleasedItem::kind) != facts.items.end();
    };
    return !isLoose(facts) && has(ItemKind::Envelope) && has(ItemKind::Basket) && has(ItemKind::Burner) &&
           has(ItemKind::Cylinder);
}

std::vector<Argument> workOf(const ReleaseFacts& facts) {
    auto work = withoutReadings(facts);
    work.insert(work.end(), facts.readings.begin(), facts.readings.end());
    return work;
}

std::vector<Argument> limitsOfFlight(const std::string& limitations, const FlownWithin& within) {
    std::vector<Argument> limits;
    if (!limitations.empty())
        limits.emplace_back(limitations);
    if (within.until)
        limits.push_back(said(ReleasePhrase::FlownUntil, *within.until));
    if (within.minutes)
        limits.push_back(said(ReleasePhrase::FlownInAll, hoursAndMinutes(*within.minutes)));
    if (within.flights)
        limits.push_back(said(ReleasePhrase::FlownAtMost, *within.flights));
    return limits;
}

std::vector<ReleaseSection> sectionsOf(const ReleaseFacts& facts) {
    std::vector<ReleaseSection> sections{aircraft(facts)};
    ReleaseSection visit{headingOf(facts), {}};
    if (facts.date)
        visit.paragraphs.push_back(said(
            facts.outcome == Outcome::Incomplete ? ReleasePhrase::SignedOn : ReleasePhrase::CompletedOn, *facts.date));
    sections.push_back(std::move(visit));
    sections.push_back({said(ReleasePhrase::WorkCarriedOut), withoutReadings(facts)});
    sections.push_back({said(ReleasePhrase::ReadingsTaken), facts.readings});
    sections.push_back({said(ReleasePhrase::NotCompleted), facts.outstanding});
    sections.push_back({said(ReleasePhrase::DataUsed), {facts.manuals.begin(), facts.manuals.end()}});
    sections.push_back(times(facts));
    sections.push_back({said(ReleasePhrase::DeferredDefects), facts.deferred});
    sections.push_back({said(ReleasePhrase::NotCovered), facts.excepted});
    sections.push_back(discrepancies(facts));
    sections.push_back({said(ReleasePhrase::NotAskedFor), facts.notAsked});
    sections.push_back({said(ReleasePhrase::Limitations), limitsOfFlight(facts.limitations, facts.within)});
    sections.push_back(signedBy(facts));
    std::erase_if(sections, [&](const auto& section) {
        return section.paragraphs.empty() && section.heading != headingOf(facts);
    });
    sections.push_back({said(ReleasePhrase::Caution), {said(ReleasePhrase::CautionText)}});
    return sections;
}

std::vector<MissingContent> missing(const ReleaseFacts& facts) {
    if (facts.outcome == Outcome::Abandoned)
        return {};
    Wanted wanted;
    const auto clauses = clausesOf(facts);
    const bool partMl = regimeOf(facts.visit) == Regime::PartMl;
    wanted.need(!facts.extent.empty() || !facts.performed.empty(), ContentPhrase::Work, clauses.extent);
    wanted.need(facts.date.has_value(), ContentPhrase::Date, clauses.date);
    wanted.need(!facts.person.empty(), ContentPhrase::Person, clauses.person);
    wanted.need(facts.capacity.has_value(), ContentPhrase::Capacity, clauses.person);
    wanted.need(!facts.licence.empty(), ContentPhrase::Licence, clauses.person);
    if (partMl)
        wanted.need(!facts.manuals.empty(), ContentPhrase::Manuals, "ML.A.401(a)");
    if (!isLoose(facts) && isUsInspection(facts))
        wanted.need(facts.totalTime.has_value(), ContentPhrase::AircraftTime, "14 CFR 43.11(a)(2)");
    else if (!isLoose(facts) && partMl && !isMaintenance(facts.visit))
        wanted.need(facts.totalTime.has_value(), ContentPhrase::Time, "ML.A.305(b) (from memory)");
    if (facts.outcome == Outcome::Discrepancies) {
        const std::string rule = partMl ? "ML.A.403 (from memory)" : "14 CFR 43.11(a)(5), (b)";
        wanted.need(!facts.discrepancies.empty(), ContentPhrase::Discrepancies, rule);
        if (isUsInspection(facts))
            wanted.need(facts.discrepanciesDated.has_value(), ContentPhrase::DiscrepanciesDate, rule);
    }
    if (isPeriodic(facts.visit) && !facts.otherWork && hasEnvelope(facts))
        wanted.need(facts.highestTemperature.has_value(), ContentPhrase::HighestTemperature,
                    "a manufacturer's checklist of the annual inspection; see that of the type", false);
    return wanted.take();
}

}

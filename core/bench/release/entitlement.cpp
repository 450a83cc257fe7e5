// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/entitlement.h"

#include "bench/release/barred_phrase.h"
#include "bench/release/owner_rule.h"
#include "problem/faults/bench_fault.h"

#include <algorithm>

namespace crownring {

namespace {

struct Known {
    std::string_view name;
    Regime regime;
};

constexpr std::array<Known, allCapacities.size()> known{{
    {"independent-certifying-staff", Regime::PartMl},
    {"organisation-certifying-staff", Regime::PartMl},
    {"pilot-owner", Regime::PartMl},
    {"mechanic", Regime::Us14Cfr},
    {"inspection-authorization", Regime::Us14Cfr},
    {"repair-station", Regime::Us14Cfr},
    {"manufacturer", Regime::Us14Cfr},
    {"private-pilot", Regime::Us14Cfr},
    {"airworthiness-review-staff", Regime::PartMl},
    {"review-authorisation", Regime::PartMl},
    {"authority", Regime::PartMl},
}};

const Known& of(Capacity capacity) { return known[static_cast<std::size_t>(capacity)]; }

bool covers(const Entitlement& entitlement, const std::optional<Registration>& balloon) {
    const auto& only = entitlement.balloons;
    return only.empty() || (balloon && std::find(only.begin(), only.end(), *balloon) != only.end());
}

/// Why one entitlement does not serve; `nearness` says how little is missing.
struct Shortfall {
    int nearness = 0;
    Phrase why;
};

std::optional<Shortfall> shortfall(const Entitlement& entitlement, const Signatory& signatory) {
    const auto& person = signatory.person;
    const auto as = termOf(entitlement.capacity);
    if (entitlement.until && *entitlement.until < signatory.on)
        return Shortfall{2, {BarredPhrase::Ended, {person, as, *entitlement.until}}};
    if (signatory.on < entitlement.from)
        return Shortfall{1, {BarredPhrase::NotYet, {person, as, entitlement.from}}};
    if (covers(entitlement, signatory.balloon))
        return std::nullopt;
    const auto only = listed(entitlement.balloons);
    if (signatory.balloon)
        return Shortfall{3, {BarredPhrase::NotFor, {person, as, only, *signatory.balloon}}};
    return Shortfall{3, {BarredPhrase::OnlyFor, {person, as, only}}};
}

std::string_view ruleOf(Regime regime) {
    return regime == Regime::PartMl ? "ML.A.801(b)" : "14 CFR 43.3, 43.7 (from memory)";
}
std::string_view ruleOf(Capacity capacity) {
    return isOfReviewers(capacity) ? "ML.A.901(b); ML.A.904" : ruleOf(regimeOf(capacity));
}

std::optional<Barred> barUnderSubpartAdd(const Signatory& signatory) {
    if (!isUnderSubpartAdd(signatory.operations))
        return std::nullopt;
    if (signatory.capacity == Capacity::PilotOwner)
        return Barred{{BarredPhrase::OwnerForHire, {}}, "ML.A.803 (from memory)"};
    if (signatory.capacity == Capacity::IndependentCertifyingStaff)
        return Barred{{BarredPhrase::IndependentForHire, {}}, "ML.A.201(e) (from memory)"};
    return std::nullopt;
}

struct MarkOfAnnex {
    std::string_view mark; ///< in the number of an approval
    Annex annex;
    std::string_view name;
};
constexpr std::array annexes{
    MarkOfAnnex{"145", Annex::Part145, "Part-145"}, MarkOfAnnex{"CAO", Annex::PartCao, "Part-CAO"},
    MarkOfAnnex{"CAMO", Annex::PartCamo, "Part-CAMO"}, MarkOfAnnex{"MF", Annex::SubpartF, "Subpart F of Part-M"},
    MarkOfAnnex{"MG", Annex::SubpartG, "Subpart G of Part-M"}};

}

std::string_view capacityName(Capacity capacity) { return of(capacity).name; }

std::optional<Capacity> capacityFrom(std::string_view name) {
    for (const auto capacity : allCapacities)
        if (capacityName(capacity) == name)
            return capacity;
    return std::nullopt;
}

Term termOf(Capacity capacity) { return {Term::Of::Capacity, std::string(capacityName(capacity))}; }

Regime regimeOf(Capacity capacity) { return of(capacity).regime; }

Result<Entitlement> entitlementFrom(const PersonEntitled& said, CivilDate from) {
    const auto capacity = capacityFrom(said.capacity);
    if (!capacity) {
        Listed names;
        for (const auto& each : known)
            names.list.emplace_back(each.name);
        return problem(BenchFault::NoCapacity, {said.capacity, std::move(names)}, atKey("capacity"));
    }
    return Entitlement{said.person,   *capacity,         said.licence,  from,           said.until,
                       said.balloons, said.organisation, said.approval, said.lastReview};
}

bool isOfReviewers(Capacity capacity) { return capacity >= Capacity::AirworthinessReviewStaff; }

std::optional<Barred> notEntitled(std::span<const Entitlement> entitlements, const Signatory& signatory) {
    if (signatory.person.empty())
        return Barred{{BarredPhrase::NobodyNamed, {}}, std::string(ruleOf(signatory.capacity))};
    Shortfall nearest{-1, {BarredPhrase::NotEntitled, {signatory.person, termOf(signatory.capacity)}}};
    for (const auto& entitlement : entitlements) {
        if (entitlement.person != signatory.person || entitlement.capacity != signatory.capacity)
            continue;
        auto lacks = shortfall(entitlement, signatory);
        if (!lacks)
            return std::nullopt;
        if (lacks->nearness > nearest.nearness)
            nearest = std::move(*lacks);
    }
    return Barred{std::move(nearest.why), std::string(ruleOf(signatory.capacity))};
}

const Entitlement* heldBy(std::span<const Entitlement> entitlements, const PersonId& person, Capacity capacity,
                          CivilDate on) {
    const Entitlement* held = nullptr;
    for (const auto& each : entitlements)
        if (each.person == person && each.capacity == capacity && each.from <= on &&
            (!each.until || on <= *each.until) && (!held || held->from <= each.from))
            held = &each;
    return held;
}

Annex annexOf(std::string_view approval) {
    const auto isWord = [](char letter) {
        return (letter >= '0' && letter <= '9') || (letter >= 'A' && letter <= 'Z') || (letter >= 'a' && letter <= 'z');
    };
    while (!approval.empty()) {
        const auto end = std::ranges::find_if_not(approval, isWord);
        const auto word = approval.substr(0, static_cast<std::size_t>(end - approval.begin()));
        if (const auto found = std::ranges::find(annexes, word, &MarkOfAnnex::mark); found != annexes.end())
            return found->annex;
        approval.remove_prefix(std::min(word.size() + 1, approval.size()));
    }
    return Annex::Unknown;
}

std::string_view annexName(Annex annex) {
    const auto found = std::ranges::find(annexes, annex, &MarkOfAnnex::annex);
    return found == annexes.end() ? std::string_view() : found->name;
}

bool isUnderSubpartAdd(std::span<const std::string> operations) {
    return std::any_of(operations.begin(), operations.end(),
                       [](const auto& operation) { return operation == "for-hire" || operation == "subpart-add"; });
}

std::optional<Barred> barOf(Capacity capacity, Visit visit) {
    if (regimeOf(capacity) != regimeOf(visit))
        return Barred{{BarredPhrase::OtherRules, {termOf(capacity)}}, std::string(ruleOf(regimeOf(visit)))};
    if (isOfReviewers(capacity))
        return Barred{{BarredPhrase::ReviewsOnly, {termOf(capacity)}}, "ML.A.801(b); ML.A.901(b)"};
    if (capacity == Capacity::PilotOwner || capacity == Capacity::PrivatePilot)
        return ownerBar(visit);
    if (capacity == Capacity::Mechanic && visit == Visit::UsAnnual)
        return Barred{{BarredPhrase::AnnualByAMechanic, {}}, "FAA-H-8083-11 ch. 2, Annual Inspection"};
    return std::nullopt;
}

std::optional<Barred> barOfMajor(Capacity capacity) {
    if (capacity == Capacity::Mechanic)
        return Barred{{BarredPhrase::MajorByAMechanic, {}}, "14 CFR 65.95(a)(1), 43.7(b) (from memory)"};
    if (capacity == Capacity::PilotOwner || capacity == Capacity::PrivatePilot)
        return ownerBarOfMajor(regimeOf(capacity));
    return std::nullopt;
}

std::optional<Barred> mayRelease(std::span<const Entitlement> entitlements, const Signatory& signatory, Visit visit) {
    if (auto barred = barOf(signatory.capacity, visit))
        return barred;
    if (auto barred = barUnderSubpartAdd(signatory))
        return barred;
    return notEntitled(entitlements, signatory);
}

std::optional<Barred> mayApproveReturn(std::span<const Entitlement> entitlements, const Signatory& signatory,
                                       Visit visit) {
    if (signatory.capacity == Capacity::Mechanic && visit == Visit::UsAnnual)
        return notEntitled(entitlements, signatory);
    return mayRelease(entitlements, signatory, visit);
}

std::string licenceText(const Entitlement& held) {
    auto text = held.licence;
    for (const auto* beside : {&held.organisation, &held.approval})
        if (!beside->empty() && *beside != held.licence)
            text += ", " + *beside;
    return text;
}

std::string licenceOf(std::span<const Entitlement> entitlements, const PersonId& person, Capacity capacity,
                      CivilDate on) {
    for (const auto& each : entitlements)
        if (each.person == person && each.capacity == capacity && each.from <= on && (!each.until || on <= *each.until))
            return licenceText(each);
    return {};
}

std::optional<Barred> mayDefer(std::span<const Entitlement> entitlements, const Signatory& signatory,
                               const Deferral& deferral) {
    if (deferral.severity == Severity::Grounding)
        return Barred{{BarredPhrase::DangerToFlight, {}}, "ML.A.403(a) (from memory); 14 CFR 91.405"};
    if (isOfReviewers(signatory.capacity))
        return Barred{{BarredPhrase::ReviewsOnly, {termOf(signatory.capacity)}}, "ML.A.403(b) (from memory)"};
    if (signatory.capacity == Capacity::PilotOwner && isUnderSubpartAdd(signatory.operations) && !deferral.notRequired)
        return Barred{{BarredPhrase::DeferredForHire, {}}, "ML.A.403(b) (from memory)"};
    if (regimeOf(signatory.capacity) == Regime::Us14Cfr && deferral.severity != Severity::Minor &&
        !(deferral.notRequired && deferral.placarded))
        return Barred{{BarredPhrase::RequiredInTheUs, {}}, "14 CFR 91.213(d), 91.405 (from memory)"};
    return notEntitled(entitlements, signatory);
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/entitlement.h"

#include "bench/release/owner_rule.h"

#include <algorithm>

namespace crownring {

namespace {

struct Known {
    std::string_view name;
    std::string_view title;
    Regime regime;
};

constexpr std::array<Known, allCapacities.size()> known{{
    {"independent-certifying-staff", "independent certifying staff", Regime::PartMl},
    {"organisation-certifying-staff", "certifying staff of an approved organisation", Regime::PartMl},
    {"pilot-owner", "pilot-owner", Regime::PartMl},
    {"mechanic", "mechanic (A&P)", Regime::Us14Cfr},
    {"inspection-authorization", "mechanic (A&P) with inspection authorization", Regime::Us14Cfr},
    {"repair-station", "repair station", Regime::Us14Cfr},
    {"manufacturer", "manufacturer", Regime::Us14Cfr},
    {"private-pilot", "owner or operator, private pilot", Regime::Us14Cfr},
}};

const Known& of(Capacity capacity) { return known[static_cast<std::size_t>(capacity)]; }

std::string titled(Capacity capacity) { return std::string(capacityTitle(capacity)); }

bool covers(const Entitlement& entitlement, const std::optional<Registration>& balloon) {
    const auto& only = entitlement.balloons;
    return only.empty() || (balloon && std::find(only.begin(), only.end(), *balloon) != only.end());
}

std::string listOf(const std::vector<Registration>& balloons) {
    std::string list;
    for (const auto& balloon : balloons)
        list += (list.empty() ? "" : ", ") + balloon.text();
    return list;
}

/// Why one entitlement does not serve; `nearness` says how little is missing.
struct Shortfall {
    int nearness = 0;
    std::string text;
};

std::optional<Shortfall> shortfall(const Entitlement& entitlement, const Signatory& signatory) {
    const auto who = signatory.person.text() + ": the entitlement as " + titled(entitlement.capacity);
    if (entitlement.until && *entitlement.until < signatory.on)
        return Shortfall{2, who + " ended on " + entitlement.until->iso()};
    if (signatory.on < entitlement.from)
        return Shortfall{1, who + " begins on " + entitlement.from.iso()};
    if (!covers(entitlement, signatory.balloon))
        return Shortfall{3, who + " is for " + listOf(entitlement.balloons) + " only" +
                                (signatory.balloon ? ", not for " + signatory.balloon->text() : "")};
    return std::nullopt;
}

std::string_view ruleOf(Regime regime) {
    return regime == Regime::PartMl ? "ML.A.801(b)" : "14 CFR 43.3, 43.7 (from memory)";
}

/// Whether the record entitles the person to the capacity at all, on that day, for that balloon.
std::optional<Barred> notEntitled(std::span<const Entitlement> entitlements, const Signatory& signatory) {
    Shortfall nearest{-1, signatory.person.text() + " is not entitled as " + titled(signatory.capacity)};
    for (const auto& entitlement : entitlements) {
        if (entitlement.person != signatory.person || entitlement.capacity != signatory.capacity)
            continue;
        auto lacks = shortfall(entitlement, signatory);
        if (!lacks)
            return std::nullopt;
        if (lacks->nearness > nearest.nearness)
            nearest = std::move(*lacks);
    }
    return Barred{nearest.text, std::string(ruleOf(regimeOf(signatory.capacity)))};
}

std::optional<Barred> barUnderSubpartAdd(const Signatory& signatory) {
    if (signatory.capacity != Capacity::PilotOwner || !isUnderSubpartAdd(signatory.operations))
        return std::nullopt;
    return Barred{"a pilot-owner releases nothing on a balloon operated for hire (Subpart-ADD)",
                  "ML.A.803 (from memory)"};
}

}

std::string_view capacityName(Capacity capacity) { return of(capacity).name; }

std::optional<Capacity> capacityFrom(std::string_view name) {
    for (const auto capacity : allCapacities)
        if (capacityName(capacity) == name)
            return capacity;
    return std::nullopt;
}

std::string_view capacityTitle(Capacity capacity) { return of(capacity).title; }

Regime regimeOf(Capacity capacity) { return of(capacity).regime; }

Result<Entitlement> entitlementFrom(const PersonEntitled& said, CivilDate from) {
    const auto capacity = capacityFrom(said.capacity);
    if (!capacity) {
        std::string list;
        for (const auto& each : known)
            list += (list.empty() ? "" : ", ") + std::string(each.name);
        return problem(Code::BadValue, "'" + said.capacity + "' is no capacity", "write one of: " + list,
                       {{}, 0, "capacity"});
    }
    return Entitlement{said.person, *capacity, said.licence, from, said.until, said.balloons};
}

bool isUnderSubpartAdd(std::span<const std::string> operations) {
    return std::any_of(operations.begin(), operations.end(),
                       [](const auto& operation) { return operation == "for-hire" || operation == "subpart-add"; });
}

std::optional<Barred> barOf(Capacity capacity, Visit visit) {
    if (regimeOf(capacity) != regimeOf(visit))
        return Barred{"the capacity of " + titled(capacity) + " is not one of the rules that this visit is under",
                      std::string(ruleOf(regimeOf(visit)))};
    if (capacity == Capacity::PilotOwner || capacity == Capacity::PrivatePilot)
        return ownerBar(visit);
    if (capacity == Capacity::Mechanic && visit == Visit::UsAnnual)
        return Barred{
            "an annual inspection is signed by a repair station, the manufacturer or a mechanic (A&P) who holds "
            "an inspection authorization",
            "FAA-H-8083-11 ch. 2, Annual Inspection"};
    return std::nullopt;
}

std::optional<Barred> mayRelease(std::span<const Entitlement> entitlements, const Signatory& signatory, Visit visit) {
    if (auto barred = barOf(signatory.capacity, visit))
        return barred;
    if (auto barred = barUnderSubpartAdd(signatory))
        return barred;
    return notEntitled(entitlements, signatory);
}

std::optional<Barred> mayDefer(std::span<const Entitlement> entitlements, const Signatory& signatory,
                               Severity severity) {
    if (signatory.capacity == Capacity::PilotOwner && isUnderSubpartAdd(signatory.operations))
        return Barred{"on a balloon operated for hire (Subpart-ADD) certifying staff agree to put off a defect",
                      "ML.A.403(b) (from memory)"};
    if (signatory.capacity == Capacity::PrivatePilot && severity == Severity::Barring)
        return Barred{"what bars flight is not put off by a pilot: it is repaired, or judged by who is rated to do so",
                      "14 CFR 91.405, 91.213(d) (from memory; interpretation)"};
    return notEntitled(entitlements, signatory);
}

}

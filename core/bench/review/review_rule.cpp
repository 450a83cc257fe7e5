// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/review/review_rule.h"

#include "bench/release/barred_phrase.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr int monthsOfAnAuthorisation = 60;
constexpr int monthsBetweenReviews = 12;

Barred barred(BarredPhrase why, std::vector<Argument> arguments, const char* rule) {
    return {{why, std::move(arguments)}, rule};
}

/// By who performs the inspection, as far as it was signed.
std::optional<Barred> outsideVisit(const Reviewing& reviewing, Argument as, const std::string& organisation) {
    const auto& visit = reviewing.visit;
    if (!visit || !visit->isPerformedOn(reviewing.on))
        return barred(BarredPhrase::ReviewOutsideVisit, {std::move(as)}, "ML.A.901(b)(3), (4)");
    if (!visit->closed)
        return std::nullopt;
    const bool same = organisation.empty() ? visit->performedFor.empty() && visit->signatory == reviewing.person
                                           : visit->performedFor == organisation;
    if (same)
        return std::nullopt;
    const auto whom = visit->performedFor.empty() && visit->signatory ? visit->signatory->text() : visit->performedFor;
    return barred(BarredPhrase::ReviewAnothersVisit, {visit->inspection, whom}, "ML.A.901(b)(3), (4)");
}

std::optional<Barred> barOfStaff(const Entitlement& held, const Reviewing& reviewing) {
    if (held.organisation.empty() || held.approval.empty())
        return barred(BarredPhrase::NoApproval, {held.person}, "ML.A.901(b)(2), (3)");
    const auto annex = annexOf(held.approval);
    switch (annex) {
    case Annex::Unknown:
        return barred(BarredPhrase::ApprovalUnknown, {held.approval}, "ML.A.901(b)(2), (3)");
    case Annex::PartCao:
    case Annex::PartCamo:
    case Annex::SubpartG:
        return std::nullopt;
    case Annex::Part145:
    case Annex::SubpartF:
        break;
    }
    const std::string name(annexName(annex));
    if (reviewing.act == ReviewAct::Extension)
        return barred(BarredPhrase::MaintenanceExtends, {name}, "ML.A.901(c)");
    return outsideVisit(reviewing, name, held.organisation);
}

/// Case F10.
std::optional<Barred> barOfAge(const Entitlement& held, const Reviewing& reviewing) {
    const auto good = addMonths(held.from, monthsOfAnAuthorisation, DayRule::Same);
    if (good < reviewing.on)
        return barred(BarredPhrase::AuthorisationOld, {held.person, held.licence, good}, "ML.A.904(d)");
    auto last = std::max(held.from, held.lastReview.value_or(held.from));
    for (const auto& day : reviewing.reviewed)
        if (day <= reviewing.on)
            last = std::max(last, day);
    if (addMonths(last, monthsBetweenReviews, DayRule::Same) < reviewing.on)
        return barred(BarredPhrase::NoReviewOfLate, {held.person, held.licence, last}, "ML.A.904(d)");
    return std::nullopt;
}

std::optional<Barred> barOfIndependent(std::span<const Entitlement> entitlements, const Entitlement& held,
                                       const Reviewing& reviewing) {
    if (isUnderSubpartAdd(reviewing.operations)) // case F9
        return barred(BarredPhrase::IndependentReviewsAdd, {}, "ML.A.901(b)(4)");
    const Signatory asStaff{reviewing.person, Capacity::IndependentCertifyingStaff, reviewing.balloon,
                            reviewing.operations, reviewing.on};
    if (notEntitled(entitlements, asStaff))
        return barred(BarredPhrase::NoLicenceBeside, {reviewing.person}, "ML.A.901(b)(4); ML.A.904(c)");
    if (auto old = barOfAge(held, reviewing))
        return old;
    return outsideVisit(reviewing, termOf(Capacity::IndependentCertifyingStaff), {});
}

}

std::optional<Barred> mayReview(std::span<const Entitlement> entitlements, const Reviewing& reviewing) {
    const auto as = reviewing.capacity;
    if (!isOfReviewers(as))
        return barred(BarredPhrase::NoReviewer, {termOf(as)}, "ML.A.901(b)");
    if (auto lacks =
            notEntitled(entitlements, {reviewing.person, as, reviewing.balloon, reviewing.operations, reviewing.on}))
        return lacks;
    if (reviewing.act == ReviewAct::Extension && as != Capacity::AirworthinessReviewStaff)
        return barred(BarredPhrase::ExtendedByOthers, {termOf(as)}, "ML.A.901(c)");
    const auto* held = heldBy(entitlements, reviewing.person, as, reviewing.on);
    if (as == Capacity::AirworthinessReviewStaff)
        return barOfStaff(*held, reviewing);
    if (as == Capacity::ReviewAuthorisation)
        return barOfIndependent(entitlements, *held, reviewing);
    return std::nullopt;
}

std::string authorisationOf(std::span<const Entitlement> entitlements, const PersonId& person, Capacity capacity,
                            CivilDate on) {
    const auto* held = heldBy(entitlements, person, capacity, on);
    return held ? licenceText(*held) : std::string();
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/entitlement.h"
#include "bench/release/owner_rule.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <set>
#include <string>
#include <vector>

namespace entitlement_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

CivilDate day(const char* text) { return *CivilDate::parse(text); }

Entitlement entitled(const char* person, Capacity capacity) {
    Entitlement entitlement;
    entitlement.person = PersonId(person);
    entitlement.capacity = capacity;
    entitlement.licence = "L-1";
    entitlement.from = day("2026-01-01");
    return entitlement;
}

Signatory acting(const char* person, Capacity capacity) {
    return {PersonId(person), capacity, Registration("QE-ABC"), {}, day("2026-06-01")};
}

/// The rule that bars one who is entitled to the capacity, "" where none does.
std::string barRule(Capacity capacity, Visit visit, std::vector<std::string> operations = {}) {
    const std::vector entitlements{entitled("ada", capacity)};
    auto signatory = acting("ada", capacity);
    signatory.operations = std::move(operations);
    const auto barred = mayRelease(entitlements, signatory, visit);
    return barred ? barred->rule : "";
}

bool may(Capacity capacity, Visit visit, std::vector<std::string> operations = {}) {
    return barRule(capacity, visit, std::move(operations)).empty();
}

bool mayPutOff(Capacity capacity, const Deferral& deferral, std::vector<std::string> operations = {}) {
    const std::vector entitlements{entitled("ada", capacity)};
    auto signatory = acting("ada", capacity);
    signatory.operations = std::move(operations);
    return !mayDefer(entitlements, signatory, deferral);
}

bool says(const std::optional<Barred>& barred, const char* words) {
    return barred && !barred->rule.empty() && spoken(barred->why).find(words) != std::string::npos;
}

}

class EntitlementTest : public QObject {
    Q_OBJECT
private slots:
    void everyNameIsReadBack() {
        std::set<std::string_view> names;
        for (const auto capacity : allCapacities) {
            QVERIFY(capacityFrom(capacityName(capacity)) == capacity);
            QVERIFY(names.insert(capacityName(capacity)).second && !spoken(termOf(capacity)).empty());
        }
        for (const auto visit : allVisits) {
            QVERIFY(visitFrom(visitName(visit)) == visit);
            QVERIFY(names.insert(visitName(visit)).second && spoken(termOf(visit)) != visitName(visit));
            QVERIFY(visitName(visit).starts_with(regimeOf(visit) == Regime::PartMl ? "part-ml-" : "us-"));
        }
        QVERIFY(!capacityFrom("captain") && !visitFrom("picnic"));
    }

    void whatAVisitAccomplishes() {
        QVERIFY(accomplishes(Visit::PartMlInspection) == std::vector{RequirementId("ml.inspection")});
        QVERIFY((accomplishes(Visit::PartMlSpecial) ==
                 std::vector{RequirementId("ml.special-inspection"), RequirementId("ml.over-temperature")}));
        QVERIFY(accomplishes(Visit::UsAnnual) == std::vector{RequirementId("us.annual")});
        QVERIFY(accomplishes(Visit::UsHundredHour) == std::vector{RequirementId("us.hundred-hour")});
        QVERIFY(accomplishes(Visit::UsSpecial) == std::vector{RequirementId("us.special-inspection")});
        QVERIFY(accomplishes(Visit::PartMlOwnerTasks).empty() && accomplishes(Visit::UsOwnerTasks).empty());
    }

    // FAA-H-8083-11 ch. 2, read: annual = rated repair station, manufacturer, or A&P with IA; 100-hour = repair
    // station, manufacturer, or A&P.
    void theAnnualAsksForMoreThanTheHundredHour() {
        for (const auto capacity :
             {Capacity::InspectionAuthorization, Capacity::RepairStation, Capacity::Manufacturer}) {
            QVERIFY(may(capacity, Visit::UsAnnual));
            QVERIFY(may(capacity, Visit::UsHundredHour));
        }
        QVERIFY(may(Capacity::Mechanic, Visit::UsHundredHour));
        QVERIFY(may(Capacity::Mechanic, Visit::UsSpecial));
        QCOMPARE(barRule(Capacity::Mechanic, Visit::UsAnnual), std::string("FAA-H-8083-11 ch. 2, Annual Inspection"));
    }

    // 14 CFR 43.3(g), 43.7(f), from memory: preventive maintenance only.
    void aPrivatePilotSignsPreventiveMaintenanceOnly() {
        QVERIFY(may(Capacity::PrivatePilot, Visit::UsOwnerTasks));
        for (const auto visit : {Visit::UsAnnual, Visit::UsHundredHour, Visit::UsSpecial})
            QVERIFY(barRule(Capacity::PrivatePilot, visit).find("43.3(g)") != std::string::npos);
    }

    // ML.A.801(b), read: certifying staff of an organisation, independent certifying staff, the pilot-owner.
    void certifyingStaffReleaseEveryVisitOfPartMl() {
        for (const auto visit : {Visit::PartMlInspection, Visit::PartMlSpecial, Visit::PartMlOwnerTasks}) {
            QVERIFY(may(Capacity::IndependentCertifyingStaff, visit));
            QVERIFY(may(Capacity::OrganisationCertifyingStaff, visit));
        }
    }

    // Part-ML Appendix II(b)(9) and (6), read.
    void aPilotOwnerReleasesNeitherTheAnnualNorASpecialInspection() {
        QVERIFY(may(Capacity::PilotOwner, Visit::PartMlOwnerTasks));
        QCOMPARE(barRule(Capacity::PilotOwner, Visit::PartMlInspection), std::string("Part-ML Appendix II(b)(9)"));
        QCOMPARE(barRule(Capacity::PilotOwner, Visit::PartMlSpecial), std::string("Part-ML Appendix II(b)(6)"));
    }

    // ML.A.803, from memory: not where the balloon is operated under Subpart-ADD.
    void aPilotOwnerReleasesNothingOfABalloonForHire() {
        QCOMPARE(barRule(Capacity::PilotOwner, Visit::PartMlOwnerTasks, {"for-hire"}),
                 std::string("ML.A.803 (from memory)"));
        QVERIFY(may(Capacity::PilotOwner, Visit::PartMlOwnerTasks, {"instruction"}));
        QVERIFY(may(Capacity::OrganisationCertifyingStaff, Visit::PartMlInspection, {"for-hire"}));
        QVERIFY(may(Capacity::PrivatePilot, Visit::UsOwnerTasks, {"for-hire"}));
    }

    void noCapacitySignsUnderTheOtherRules() {
        for (const auto capacity : allCapacities)
            for (const auto visit : allVisits)
                if (regimeOf(capacity) != regimeOf(visit))
                    QVERIFY(says(barOf(capacity, visit), "not one of the rules"));
    }

    void anEntitlementHasItsDays() {
        auto entitlement = entitled("ada", Capacity::Mechanic);
        entitlement.until = day("2026-06-30");
        const std::vector held{entitlement};
        auto signatory = acting("ada", Capacity::Mechanic);
        const auto on = [&](const char* date) {
            signatory.on = day(date);
            return mayRelease(held, signatory, Visit::UsHundredHour);
        };
        QVERIFY(says(on("2025-12-31"), "begins on 2026-01-01"));
        QVERIFY(!on("2026-01-01"));
        QVERIFY(!on("2026-06-30"));
        QVERIFY(says(on("2026-07-01"), "ended on 2026-06-30"));
    }

    void anEntitlementIsOnePersonsInOneCapacity() {
        const std::vector held{entitled("ada", Capacity::Mechanic)};
        QVERIFY(says(mayRelease(held, acting("bert", Capacity::Mechanic), Visit::UsHundredHour), "not authorised"));
        QVERIFY(says(mayRelease(held, acting("ada", Capacity::RepairStation), Visit::UsHundredHour), "not authorised"));
        QVERIFY(says(mayRelease({}, acting("ada", Capacity::Mechanic), Visit::UsHundredHour), "not authorised"));
    }

    void anOwnersEntitlementIsForHisBalloons() {
        auto entitlement = entitled("ada", Capacity::PilotOwner);
        entitlement.balloons = {Registration("QE-ABC")};
        const std::vector held{entitlement};
        auto signatory = acting("ada", Capacity::PilotOwner);
        QVERIFY(!mayRelease(held, signatory, Visit::PartMlOwnerTasks));
        signatory.balloon = Registration("QE-XYZ");
        QVERIFY(says(mayRelease(held, signatory, Visit::PartMlOwnerTasks), "QE-ABC only, not for QE-XYZ"));
        signatory.balloon.reset();
        QVERIFY(says(mayRelease(held, signatory, Visit::PartMlOwnerTasks), "QE-ABC only"));
    }

    void oneGoodEntitlementIsEnough() {
        auto old = entitled("ada", Capacity::Mechanic);
        old.until = day("2026-02-01");
        auto renewed = entitled("ada", Capacity::Mechanic);
        renewed.from = day("2026-03-01");
        const auto signatory = acting("ada", Capacity::Mechanic);
        QVERIFY(!mayRelease(std::vector{old, renewed}, signatory, Visit::UsHundredHour));
        QVERIFY(!mayRelease(std::vector{renewed, old}, signatory, Visit::UsHundredHour));
        QVERIFY(mayRelease(std::vector{old}, signatory, Visit::UsHundredHour));
    }

    void anEntryBecomesAnEntitlement() {
        PersonEntitled said;
        said.person = PersonId("ada");
        said.capacity = "inspection-authorization";
        said.licence = "IA-7";
        const auto made = entitlementFrom(said, day("2026-03-01"));
        QVERIFY(made && made->capacity == Capacity::InspectionAuthorization && made->from == day("2026-03-01"));
        said.capacity = "captain";
        QCOMPARE(entitlementFrom(said, day("2026-03-01")).error().where.key, std::string("capacity"));
    }

    // Cases F1 to F4 of the facts. ML.A.403(b), paragraph from memory, its AMC and GM read.
    void whoPutsOffADefectUnderPartMl() {
        const Deferral altimeter{Severity::Deferrable, true, false};
        const Deferral pilotLight{Severity::Deferrable, false, false};
        const Deferral tear{Severity::Grounding, false, false};
        for (const auto& operations : {std::vector<std::string>{}, {"for-hire"}}) {
            QVERIFY(mayPutOff(Capacity::PilotOwner, altimeter, operations));                       // F1
            QCOMPARE(mayPutOff(Capacity::PilotOwner, pilotLight, operations), operations.empty()); // F2, F3
            QVERIFY(mayPutOff(Capacity::IndependentCertifyingStaff, pilotLight, operations));
            for (const auto capacity : allCapacities)
                QVERIFY(!mayPutOff(capacity, tear, operations)); // F4
        }
    }

    // Case F6. 14 CFR 91.213(d), 91.405, from memory, and interpretation.
    void whoPutsOffADefectInTheUnitedStates() {
        for (const auto capacity : {Capacity::Mechanic, Capacity::PrivatePilot}) {
            QVERIFY(mayPutOff(capacity, {Severity::Deferrable, true, true}));
            QVERIFY(!mayPutOff(capacity, {Severity::Deferrable, true, false})); // not placarded
            QVERIFY(!mayPutOff(capacity, {Severity::Deferrable, false, true})); // required
            QVERIFY(!mayPutOff(capacity, {Severity::Barring, false, false}));   // as older entries say it
            QVERIFY(mayPutOff(capacity, {Severity::Minor, false, false}));
        }
        QVERIFY(
            says(mayDefer({}, acting("ada", Capacity::Mechanic), {Severity::Minor, false, false}), "not authorised"));
    }

    // Part-ML Appendix II(b)(3), (5), (6), (9), read; ML.A.901(b), read.
    void theRuleThatForbidsAnOwnerARequirement() {
        const auto clause = [](const char* id, Action action, std::vector<std::string> triggers = {}) {
            Requirement requirement;
            requirement.id = RequirementId(id);
            requirement.action = action;
            requirement.triggeredBy = std::move(triggers);
            const auto barred = ownerBar(requirement, Regime::PartMl);
            return barred ? barred->rule : "";
        };
        QCOMPARE(clause("ml.inspection", Action::Inspect), std::string("Part-ML Appendix II(b)(9)"));
        QCOMPARE(clause("ml.special-inspection", Action::Inspect, {"hard-landing"}),
                 std::string("Part-ML Appendix II(b)(6)"));
        QCOMPARE(clause("ml.arc-review", Action::Inspect), std::string("ML.A.901(b)"));
        QCOMPARE(clause("ad.2026-1", Action::Comply), std::string("Part-ML Appendix II(b)(3)"));
        QCOMPARE(clause("fabric.strength-test", Action::Test), std::string("Part-ML Appendix II(b)(5)"));
        QCOMPARE(clause("crown-line.replacement", Action::Replace), std::string());
    }

    // 14 CFR Part 43, Appendix A(c)(22): prefabricated fuel lines are on the list; an inspection is not.
    void anOwnerInTheUnitedStatesReplacesButDoesNotInspect() {
        Requirement requirement;
        requirement.id = RequirementId("hose.replacement");
        requirement.action = Action::Replace;
        QVERIFY(!ownerBar(requirement, Regime::Us14Cfr));
        requirement.action = Action::Inspect;
        QVERIFY(says(ownerBar(requirement, Regime::Us14Cfr), "preventive maintenance only"));
    }

    void theRulesAreWholeLists() {
        QCOMPARE(ownerMayNotRelease().size(), std::size_t{9});
        for (std::size_t i = 0; i < 9; ++i)
            QVERIFY(ownerMayNotRelease()[i].clause.ends_with("(b)(" + std::to_string(i + 1) + ")"));
        QCOMPARE(preventiveMaintenance().size(), std::size_t{12});
        for (const auto& rule : preventiveMaintenance())
            QVERIFY(rule.clause.find("A(c)(") != std::string_view::npos && !rule.text.empty());
    }
};

CROWNRING_TEST(EntitlementTest)

}

#include "entitlement_test.moc"

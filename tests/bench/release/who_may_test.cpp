// SPDX-License-Identifier: GPL-3.0-or-later

/// Case tables: who may release each visit, and who may put a defect off, by regime, operation and grade.

#include "bench/release/entitlement.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <map>
#include <set>
#include <string>
#include <vector>

namespace who_may_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

using enum Capacity;
using enum Visit;

bool may(Capacity capacity, Visit visit, const std::vector<std::string>& operations) {
    Entitlement held;
    held.person = PersonId("ada");
    held.capacity = capacity;
    held.licence = "L-1";
    held.from = *CivilDate::parse("2026-01-01");
    const Signatory signatory{PersonId("ada"), capacity, Registration("QE-ABC"), operations,
                              *CivilDate::parse("2026-06-01")};
    return !mayRelease(std::vector{held}, signatory, visit);
}

const std::set<Capacity> usAll{Mechanic, InspectionAuthorization, RepairStation, Manufacturer};
const std::set<Capacity> usOwners{Mechanic, InspectionAuthorization, RepairStation, Manufacturer, PrivatePilot};
const std::set<Capacity> usAnnual{InspectionAuthorization, RepairStation, Manufacturer};
const std::set<Capacity> mlStaff{IndependentCertifyingStaff, OrganisationCertifyingStaff};
const std::set<Capacity> mlAndOwner{IndependentCertifyingStaff, OrganisationCertifyingStaff, PilotOwner};

/// Who releases each visit of a private balloon. ML.A.801(b) and Appendix II(b) read, ML.A.803 from memory;
/// FAA-H-8083-11 ch. 2 read for the annual and 100-hour; 14 CFR 43.3, 43.7 from memory.
const std::map<Visit, std::set<Capacity>> whoReleases{{PartMlInspection, mlStaff},
                                                      {PartMlSpecial, mlStaff},
                                                      {PartMlOwnerTasks, mlAndOwner},
                                                      {PartMlRepair, mlStaff},
                                                      {PartMlRectification, mlStaff},
                                                      {PartMlCompliance, mlStaff},
                                                      {PartMlModification, mlStaff},
                                                      {PartMlComponent, mlStaff},
                                                      {UsAnnual, usAnnual},
                                                      {UsHundredHour, usAll},
                                                      {UsSpecial, usAll},
                                                      {UsOwnerTasks, usOwners},
                                                      {UsRepair, usAll},
                                                      {UsRectification, usAll},
                                                      {UsCompliance, usAll},
                                                      {UsAlteration, usAll},
                                                      {UsComponent, usAll}};

}

class WhoMayTest : public QObject {
    Q_OBJECT
private slots:
    void whoReleasesEachVisit_data() {
        QTest::addColumn<int>("visit");
        QTest::addColumn<QString>("operation");
        for (const auto visit : allVisits)
            for (const auto* operation : {"private", "instruction", "for-hire", "subpart-add"})
                QTest::addRow("%s, %s", std::string(visitName(visit)).c_str(), operation)
                    << static_cast<int>(visit) << operation;
    }
    void whoReleasesEachVisit() {
        QFETCH(int, visit);
        QFETCH(QString, operation);
        auto expected = whoReleases.at(static_cast<Visit>(visit));
        const auto operations =
            operation == QLatin1String("private") ? std::vector<std::string>{} : std::vector{operation.toStdString()};
        if (isUnderSubpartAdd(operations)) {
            // ML.A.803 (from memory); ML.A.201(e): its scope read, the approved organisation from memory.
            expected.erase(PilotOwner);
            expected.erase(IndependentCertifyingStaff);
        }
        for (const auto capacity : allCapacities)
            QVERIFY2(may(capacity, static_cast<Visit>(visit), operations) == expected.contains(capacity),
                     std::string(capacityName(capacity)).c_str());
    }
    void whoPutsADefectOff_data() {
        QTest::addColumn<int>("capacity");
        QTest::addColumn<int>("severity");
        QTest::addColumn<bool>("required");
        QTest::addColumn<bool>("placarded");
        QTest::addColumn<bool>("forHire");
        QTest::addColumn<bool>("may");
        const auto row = [](const char* name, Capacity capacity, Severity severity, bool required, bool placarded,
                            bool forHire, bool may) {
            QTest::newRow(name) << static_cast<int>(capacity) << static_cast<int>(severity) << required << placarded
                                << forHire << may;
        };
        using enum Severity;
        row("F1: an altimeter that its data do not require, pilot-owner", PilotOwner, Deferrable, false, false, false,
            true);
        row("F2: a second pilot light, private, pilot-owner", PilotOwner, Deferrable, true, false, false, true);
        row("F3: the same for hire, pilot-owner", PilotOwner, Deferrable, true, false, true, false);
        row("F3: the same for hire, certifying staff", OrganisationCertifyingStaff, Deferrable, true, false, true,
            true);
        row("F3: the same for hire, independent staff", IndependentCertifyingStaff, Deferrable, true, false, true,
            true);
        row("not required, for hire, pilot-owner", PilotOwner, Deferrable, false, false, true, true);
        row("F6: a variometer, placarded, pilot", PrivatePilot, Deferrable, false, true, false, true);
        row("F6: not placarded", PrivatePilot, Deferrable, false, false, false, false);
        row("F6: required", InspectionAuthorization, Deferrable, true, true, false, false);
        row("minor, mechanic", Mechanic, Minor, true, false, false, true);
        for (const auto capacity : allCapacities) { // F4: nobody defers what grounds
            const auto name = "F4: grounding, " + std::string(capacityName(capacity));
            row(name.c_str(), capacity, Grounding, false, true, false, false);
        }
        for (const auto capacity : {AirworthinessReviewStaff, ReviewAuthorisation, Authority}) {
            const auto name = "a reviewer, " + std::string(capacityName(capacity));
            row(name.c_str(), capacity, Deferrable, false, true, false, false);
        }
    }
    void whoPutsADefectOff() {
        // ML.A.403(b): its AMC and GM read, the paragraph from memory; 14 CFR 91.213(d) from memory, 91.405 its gist
        // read.
        QFETCH(int, capacity);
        QFETCH(int, severity);
        QFETCH(bool, required);
        QFETCH(bool, placarded);
        QFETCH(bool, forHire);
        QFETCH(bool, may);
        Entitlement held;
        held.person = PersonId("ada");
        held.capacity = static_cast<Capacity>(capacity);
        held.from = *CivilDate::parse("2026-01-01");
        const Signatory signatory{held.person, held.capacity, Registration("QE-ABC"),
                                  forHire ? std::vector<std::string>{"for-hire"} : std::vector<std::string>{},
                                  *CivilDate::parse("2026-06-01")};
        const auto barred =
            mayDefer(std::vector{held}, signatory, {static_cast<Severity>(severity), !required, placarded});
        QCOMPARE(!barred, may);
    }
};

CROWNRING_TEST(WhoMayTest)

}

#include "who_may_test.moc"

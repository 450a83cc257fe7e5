// SPDX-License-Identifier: GPL-3.0-or-later
#include "signing_attempt.h"
#include "test_class.h"

namespace release_signatory_test {

using namespace crownring;
using namespace crownring::testing;

/// Who may sign what on which day, and what must stand in it, through the real record.
class ReleaseSignatoryTest : public QObject {
    Q_OBJECT
private slots:
    void whoMaySign_data() {
        QTest::addColumn<int>("visit");
        QTest::addColumn<QString>("person");
        QTest::addColumn<int>("capacity");
        QTest::addColumn<QString>("rule"); ///< empty: may
        const auto row = [](const char* name, Visit visit, const char* person, Capacity capacity, const char* rule) {
            QTest::newRow(name) << static_cast<int>(visit) << person << static_cast<int>(capacity) << rule;
        };
        using enum Visit;
        using enum Capacity;
        // ML.A.801(b) (read).
        row("a stranger", PartMlInspection, "Nobody Known", IndependentCertifyingStaff, "ML.A.801(b)");
        row("in a capacity not held", PartMlInspection, "Ada Rhos", OrganisationCertifyingStaff, "ML.A.801(b)");
        row("expired the day before", PartMlInspection, "Una Past", IndependentCertifyingStaff, "ML.A.801(b)");
        row("valid from the day after", PartMlInspection, "Tom Soon", IndependentCertifyingStaff, "ML.A.801(b)");
        // Part-ML Appendix II(b)(9): part of the 100-h/annual check; (6): unscheduled special inspections (both read).
        row("pilot-owner, annual", PartMlInspection, "Ole Berg", PilotOwner, "Appendix II(b)(9)");
        row("pilot-owner, special", PartMlSpecial, "Ole Berg", PilotOwner, "Appendix II(b)(6)");
        // FAA-H-8083-11 ch. 2 (read): the annual by an IA, the 100-hour by an A&P too.
        row("mechanic, annual", UsAnnual, "Kit Moor", Mechanic, "FAA-H-8083-11 ch. 2");
        row("mechanic, 100-hour", UsHundredHour, "Kit Moor", Mechanic, "");
        row("IA, annual", UsAnnual, "Ines Holt", InspectionAuthorization, "");
        row("pilot, annual", UsAnnual, "Pia Lund", PrivatePilot, "43.3(g)");
        row("of other rules", UsAnnual, "Ada Rhos", IndependentCertifyingStaff, "43.3, 43.7");
    }
    void whoMaySign() {
        QFETCH(int, visit);
        QFETCH(QString, person);
        QFETCH(int, capacity);
        QFETCH(QString, rule);
        Shop shop;
        shop.say(R"({"entry":"requirement.done","on":"2026-05-01","item":"E1","requirement":"us.annual"})"); // for the
                                                                                                             // 100-hour
        shop.ready(static_cast<Visit>(visit));
        const auto by = Shop::signing(person.toUtf8().constData(), static_cast<Capacity>(capacity));
        if (rule.isEmpty())
            return expectReleased(shop, by);
        auto names = shop.refused(by);
        names.removeOne("content"); // a stranger has no licence to be named
        QCOMPARE(names, QStringList{"signatory"});
        const auto refusals = shop.draft(by).refusals;
        const auto refusal = std::ranges::find(refusals, Refusal::Kind::Signatory, &Refusal::kind);
        QVERIFY2(refusal->rule.find(rule.toStdString()) != std::string::npos, refusal->rule.c_str());
        QVERIFY(!shop.sign(by));
        QVERIFY(shop.now().isOpen());
    }
    void aPilotOwnerReleasesHisOwnTasks() {
        // ML.A.803 with Appendix II (from memory); under Subpart-ADD he releases nothing.
        const auto ole = Shop::signing("Ole Berg", Capacity::PilotOwner);
        Shop own;
        own.open(Visit::PartMlOwnerTasks).carriedOut();
        expectReleased(own, ole);
        Shop forHire(R"(["for-hire"])");
        forHire.open(Visit::PartMlOwnerTasks).carriedOut();
        expectRefused(forHire, ole, "signatory", "ML.A.803");
    }
    void withoutTheDataUsed() {
        // ML.A.401(a): applicable current maintenance data are used; the release names them (from memory).
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        auto by = Shop::signing();
        by.manuals.clear();
        expectRefused(shop, by, "content", "ML.A.401(a)");
        expectReleased(shop, Shop::signing());
    }
    void withoutTheTotalTime() {
        // 43.11(a)(2) (read): the date of the inspection and aircraft total time in service.
        Shop shop;
        shop.say(
            R"({"entry":"item.entered","on":"2016-05-01","item":"E2","kind":"envelope","type":"T-77","brought_forward":{"minutes":null}})");
        shop.say(
            R"({"entry":"inspection.opened","on":"2026-06-01","inspection":"untimed","visit":"us-annual","items":["E2"],"balloon":"QE-ONE"}
{"entry":"line.settled","on":"2026-06-01","inspection":"untimed","line":"all of Appendix D","state":"done"}
{"entry":"reading.taken","on":"2026-06-01","inspection":"untimed","item":"E2","quantity":"tell-tale","unit":"degC","value":110,"below":116})");
        shop.inspection = InspectionId("untimed");
        expectRefused(shop, Shop::signing("Ines Holt", Capacity::InspectionAuthorization), "content", "43.11(a)(2)");
    }
};

CROWNRING_TEST(ReleaseSignatoryTest, QCoreApplication)

}

#include "release_signatory_test.moc"

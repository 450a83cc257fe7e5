// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "graded.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace grading_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::testing::gradings;

/// Who may call a defect less than it was found to be: ML.A.403(a), (b) (from memory but for its AMC), 14 CFR 43.11(b),
/// 91.405; that a grade is such a decision is our reading.
class GradingTest : public QObject {
    Q_OBJECT

    static void refused(Shop& shop, const std::string& entry, ReleaseFault fault) {
        const auto problems = problemsOf(shop.record(), entry);
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(fault));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    }
private slots:
    void whoMayGradeDown_data() {
        QTest::addColumn<QString>("by");
        QTest::addColumn<QString>("finder");
        QTest::addColumn<QString>("operations");
        QTest::addColumn<bool>("may");
        const auto row = [](const char* name, const char* by, const char* finder, const char* operations, bool may) {
            QTest::newRow(name) << by << finder << operations << may;
        };
        row("certifying staff", "Ada Rhos", "Ole Berg", "[]", true);
        row("certifying staff, for hire", "Ada Rhos", "Ole Berg", underAdd, true);
        row("a mechanic", "Kit Moor", "Ole Berg", "[]", true);
        row("a mechanic who holds an IA", "Ines Holt", "Ole Berg", "[]", true);
        row("a pilot-owner, what he found himself", "Ole Berg", "Ole Berg", "[]", true);
        row("a pilot-owner, what another found", "Ole Berg", "Ada Rhos", "[]", false);
        row("a pilot-owner, for hire", "Ole Berg", "Ole Berg", underAdd, false);
        row("a pilot, what he found himself", "Pia Lund", "Pia Lund", "[]", true);
        row("who is not entitled yet", "Tom Soon", "Ole Berg", "[]", false);
        row("a stranger", "Nobody Known", "Nobody Known", "[]", false);
    }
    void whoMayGradeDown() {
        QFETCH(QString, by);
        QFETCH(QString, finder);
        QFETCH(QString, operations);
        QFETCH(bool, may);
        for (const bool voids : {false, true}) {
            Shop shop(operations.toStdString());
            const auto id = shop.say(found("deferrable", finder.toUtf8())).ids.front();
            shop.say(meanwhile);
            const auto entry = voids ? taken(id, by.toStdString()) : graded(id, "minor", by.toStdString());
            if (may)
                shop.say(entry);
            else
                refused(shop, entry, ReleaseFault::MayNotGradeDown);
        }
    }
    void whatIsLess_data() {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("after");
        QTest::addColumn<bool>("less");
        QTest::newRow("bars flight, minor") << "deferrable"
                                            << "minor" << true;
        QTest::newRow("as of old, minor") << "barring"
                                          << "minor" << true;
        QTest::newRow("grounding, deferrable") << "grounding"
                                               << "deferrable" << true;
        QTest::newRow("minor, grounding") << "minor"
                                          << "grounding" << false;
        QTest::newRow("as of old, deferrable") << "barring"
                                               << "deferrable" << false;
    }
    void whatIsLess() {
        QFETCH(QString, before);
        QFETCH(QString, after);
        QFETCH(bool, less);
        Shop shop;
        const auto id = shop.say(found(before.toUtf8())).ids.front();
        shop.say(meanwhile);
        const auto entry = graded(id, after.toUtf8(), "Nobody Known");
        if (less)
            refused(shop, entry, ReleaseFault::MayNotGradeDown);
        else
            shop.say(entry);
    }
    void byWhomAndWhyIsSaid() {
        Shop shop;
        const auto id = shop.say(found("deferrable")).ids.front();
        refused(shop, graded(id, "minor", "Ada Rhos", " "), ReleaseFault::GradedDownUnsaid);
        auto unnamed = graded(id, "minor", "Ada Rhos");
        unnamed.erase(unnamed.find(gradedByAda), gradedByAda.size());
        refused(shop, unnamed, ReleaseFault::GradedDownUnsaid);
        refused(shop, taken(id, ""), ReleaseFault::GradedDownUnsaid);
    }
    void nothingIsLessByMovingIt() {
        Shop shop;
        shop.wholeAircraft();
        const auto id = shop.say(found("deferrable")).ids.front();
        refused(shop, moved(id), ReleaseFault::GradedDownUnsaid);
    }
    void nobodyTakesBackThatItWasGradedUp() {
        Shop shop;
        const auto id = shop.say(found("minor")).ids.front();
        const auto up = shop.say(graded(id, "grounding", "Nobody Known")).ids.front();
        shop.say(meanwhile);
        refused(shop, taken(up, "Nobody Known"), ReleaseFault::MayNotGradeDown);
        shop.say(taken(up, "Ada Rhos"));
    }
    /// Nor by another correction, and though it was his own word before: it is not any more.
    void whatAnotherGradedUpTheFinderDoesNotMakeLess() {
        Shop shop;
        const auto id = shop.say(found("minor", "Nobody Known")).ids.front();
        shop.say(graded(id, "grounding", "Ada Rhos"));
        refused(shop, graded(id, "minor", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        shop.say(graded(id, "minor", "Ada Rhos"));
    }
    void atOnceOnesOwnWordIsTakenBack() {
        Shop shop;
        const auto id = shop.say(found("deferrable", "Sam Help")).ids.front();
        refused(shop, taken(id, "Another"), ReleaseFault::MayNotGradeDown);
        shop.say(taken(id, "Sam Help"));
    }
    void inAnOpenInspectionOnesOwnWordIsTakenBack() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        auto finding = found("deferrable", "Sam Help");
        finding.insert(finding.size() - 1, shop.about());
        finding.replace(finding.find("2026-05-20"), 10, "2026-06-01");
        const auto id = shop.say(finding).ids.front();
        shop.say(meanwhile);
        refused(shop, taken(id, "Another"), ReleaseFault::MayNotGradeDown);
        shop.say(taken(id, "Sam Help"));
    }
};

CROWNRING_TEST(GradingTest, QCoreApplication)

}

#include "grading_test.moc"

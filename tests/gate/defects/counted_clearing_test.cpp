// SPDX-License-Identifier: GPL-3.0-or-later

/// When a defect counts as put right: in a visit once a release of that stands (ML.A.801(a), (b), 14 CFR 91.407(a),
/// from memory); and only by somebody who may say so of the grade that it turned out to have (ML.A.403(a), our
/// reading).

#include "counted.h"
#include "gate/returned.h"
#include "gate/signing_attempt.h"
#include "graded.h"
#include "test_class.h"

namespace counted_clearing_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::testing::counted;
using namespace crownring::testing::gradings;

namespace {

/// How the defect stands on that day, and what is said of it; empty where it does not stand.
QString defectOn(const Shop& shop, const char* on, const char* defect = "D-1") {
    const auto list = due(shop.record(), {std::nullopt, shop.items}, day(on)).value();
    for (const auto& row : list.rows)
        if (row.requirement->id.text() == "defect/" + std::string(defect))
            return QString::fromUtf8(standingText(row.state.standing).data()) + QLatin1Char(' ') +
                   QString::fromStdString(spoken(row.requirement->source));
    return {};
}

/// A torn panel that was put right in a visit which nobody has signed yet.
struct PutRight : Shop {
    explicit PutRight(const char* severity = "deferrable") {
        ready(Visit::PartMlInspection);
        find("D-1", severity);
        say(clearing("D-1"));
    }
};

}

class CountedClearingTest : public QObject {
    Q_OBJECT
private slots:
    void inAVisitItCountsOnceThatIsSigned() {
        PutRight shop;
        QVERIFY2(defectOn(shop, "2026-06-20").startsWith(QLatin1String("lapsed Rectified: panel replaced")),
                 qPrintable(defectOn(shop, "2026-06-20")));
        QVERIFY(defectOn(shop, "2026-06-20").contains(QString::fromStdString(shop.inspection.text())));
        expectReleased(shop, Shop::signing());
        QVERIFY(defectOn(shop, "2026-06-01").startsWith(QLatin1String("lapsed"))); // it was signed on the day after
        QCOMPARE(defectOn(shop, "2026-06-02"), QString());
        QVERIFY(shop.record().verify().value().intact);
        shop.say(withdrawn(shop));
        QVERIFY(defectOn(shop, "2026-06-02").startsWith(QLatin1String("lapsed")));
        const auto before = shop.record().facts({}, day("2026-06-20")).value();
        QVERIFY(shop.record().rebuild());
        QVERIFY(shop.record().facts({}, day("2026-06-20")).value() == before);
        QVERIFY(shop.record().verify().value().intact);
    }
    void whatAnAbandonedVisitPutRightStandsOpen() {
        for (const char* severity : {"deferrable", "grounding"}) {
            PutRight shop(severity);
            shop.say(ended(shop, "abandoned"));
            QVERIFY(defectOn(shop, "2026-06-20").startsWith(QLatin1String("lapsed")));
        }
    }
    void norIsItMadeLessByFindingItAgain() {
        PutRight shop("grounding");
        shop.say(ended(shop, "abandoned"));
        auto again = found("minor");
        again.replace(again.find("2026-05-20"), 10, "2026-06-05");
        shop.say(again);
        QVERIFY2(defectOn(shop, "2026-06-20").startsWith(QLatin1String("lapsed")),
                 qPrintable(defectOn(shop, "2026-06-20")));
    }
    void ofAListItCountsFromTheApprovalOn() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual);
        shop.find("D-1", "deferrable");
        shop.find("D-2", "deferrable");
        auto putRight = shop.clearing("D-2");
        putRight.replace(putRight.find("Ada Rhos"), 8, "Ines Holt");
        shop.say(putRight);
        QVERIFY(shop.sign(ListedShop::ines()));
        QVERIFY(defectOn(shop, "2026-06-10", "D-2").startsWith(QLatin1String("lapsed")));
        shop.cleared("D-1", "2026-06-11");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-12")));
        QVERIFY(defectOn(shop, "2026-06-11", "D-2").startsWith(QLatin1String("lapsed")));
        QCOMPARE(defectOn(shop, "2026-06-12", "D-2"), QString());
        QVERIFY(shop.record().verify().value().intact);
    }
    void aReleaseAfterIncompleteMaintenanceAnswersForWhatWasDone() {
        Shop shop;
        shop.say(found("deferrable"));
        shop.open(Visit::PartMlRepair).carriedOut({"work.check-flight"});
        shop.say(reworked + shop.about() + "}");
        shop.say(shop.clearing("D-1"));
        auto by = Shop::signing();
        by.outcome = Outcome::Incomplete;
        by.limitations = "one check flight, crew only";
        const auto signedSo = shop.sign(by);
        QVERIFY2(signedSo, signedSo ? "" : text(signedSo.error().front()).c_str());
        QVERIFY(defectOn(shop, "2026-06-01").startsWith(QLatin1String("lapsed")));
        QCOMPARE(defectOn(shop, "2026-06-02"), QString());
    }
    /// What somebody else has in hand he answers for himself.
    void noOtherVisitIsSignedOverIt() {
        Shop shop;
        shop.say(found("deferrable"));
        shop.open(Visit::PartMlRectification);
        shop.say(shop.clearing("D-1"));
        shop.ready(Visit::PartMlInspection);
        QVERIFY2(shop.refused(Shop::signing()).join(QLatin1Char(' ')).contains(QLatin1String("defect")),
                 qPrintable(shop.refused(Shop::signing()).join(QLatin1Char(' '))));
        QVERIFY(!shop.sign(Shop::signing()));
        shop.say(shop.clearing("D-1"));
        expectReleased(shop, Shop::signing());
    }
    void outsideAVisitItCountsAtOnce() {
        Shop shop;
        shop.say(found("deferrable"));
        shop.say(clearedBy("Ada Rhos"));
        QCOMPARE(defectOn(shop, "2026-05-22"), QString());
    }
    /// A minor one anybody lifts; not what it turned out to be.
    void whatIsMadeGraverIsOpenAgain_data() {
        QTest::addColumn<QString>("by");
        QTest::addColumn<QString>("grade");
        QTest::addColumn<bool>("open");
        for (const char* grade : {"deferrable", "grounding"}) {
            QTest::addRow("anybody, %s", grade) << "Sam Help" << grade << true;
            QTest::addRow("nobody, %s", grade) << "" << grade << true;
            QTest::addRow("entitled later, %s", grade) << "Tom Soon" << grade << true;
            QTest::addRow("who may release it, %s", grade) << "Ada Rhos" << grade << false;
        }
        QTest::addRow("an owner, deferrable") << "Ole Berg"
                                              << "deferrable" << false;
        QTest::addRow("an owner, grounding") << "Ole Berg"
                                             << "grounding" << true;
        QTest::addRow("the rules of another state") << "Kit Moor"
                                                    << "deferrable" << true;
    }
    void whatIsMadeGraverIsOpenAgain() {
        QFETCH(QString, by);
        QFETCH(QString, grade);
        QFETCH(bool, open);
        for (const bool again : {false, true}) {
            Shop shop;
            shop.adopt("part-ml-hot-air");
            const auto id = shop.say(found("minor")).ids.front();
            shop.say(clearedBy(by.toUtf8()));
            QCOMPARE(defectOn(shop, "2026-06-20"), QString());
            shop.say(graded(id, grade.toUtf8(), "Nobody Known"));
            if (again)
                QVERIFY(shop.record().rebuild());
            QCOMPARE(defectOn(shop, "2026-06-20").startsWith(QLatin1String("lapsed Rectified: sewn")), open);
            QCOMPARE(defectOn(shop, "2026-06-20").isEmpty(), !open);
            QVERIFY(shop.record().verify().value().intact);
            if (!open)
                continue;
            auto right = clearedBy("Ada Rhos");
            right.replace(right.find("2026-05-22"), 10, "2026-05-24");
            shop.say(right);
            QCOMPARE(defectOn(shop, "2026-06-20"), QString());
        }
    }
    /// Who signed it answers for what anybody did; what is a danger to flight nobody lifted by somebody's word.
    void inASignedVisitOfWhatNeedsNoWordOfItsOwn() {
        for (const char* grade : {"deferrable", "grounding"}) {
            Shop shop;
            const auto id = shop.say(found("minor")).ids.front();
            shop.ready(Visit::PartMlInspection);
            auto byAnybody = shop.clearing("D-1");
            byAnybody.replace(byAnybody.find("Ada Rhos"), 8, "Sam Help");
            shop.say(byAnybody);
            expectReleased(shop, Shop::signing());
            auto graver = graded(id, grade, "Nobody Known");
            graver.replace(graver.find("2026-05-21"), 10, "2026-06-10");
            shop.say(graver);
            QCOMPARE(defectOn(shop, "2026-06-20").isEmpty(), std::string_view(grade) == "deferrable");
        }
    }
};

CROWNRING_TEST(CountedClearingTest, QCoreApplication)

}

#include "counted_clearing_test.moc"

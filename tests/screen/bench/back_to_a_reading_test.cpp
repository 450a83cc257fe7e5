// SPDX-License-Identifier: GPL-3.0-or-later

/// What a reading is read with, and the ways back to it: from a reason that stands in the way, and from what it found,
/// in whatever visit. All of it is invented.

#include "bench/release/asked_series.h"
#include "screen/bench/after_reading.h"
#include "screen/bench/bench_hands.h"
#include "test_class.h"

#include <algorithm>

namespace back_to_a_reading_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

const char* const hoseAndCylinder =
    R"({"entry":"item.entered","id":"h1","on":"2024-01-01","item":"HSE-1","kind":"hose","serial":"H1","type":"Hose 1"}
{"entry":"item.fitted","id":"h2","on":"2024-01-01","balloon":"QE-SML","item":"HSE-1"}
{"entry":"item.entered","id":"h3","on":"2024-01-01","item":"CYL-1","kind":"cylinder","serial":"C1","type":"Drum 40"}
{"entry":"item.fitted","id":"h4","on":"2024-01-01","balloon":"QE-SML","item":"CYL-1"}
{"entry":"limit.stated","id":"h5","on":"2024-01-01","type":"Hose 1","kind":"hose","quantity":"hose-leak-test","unit":"kPa","least":700,"source":"Hose manual, 1"}
{"entry":"limit.stated","id":"h6","on":"2024-01-01","type":"Drum 40","kind":"cylinder","quantity":"cylinder-leak-test","unit":"kPa","least":700,"source":"Drum manual, 2"}
)";
const char* const gaugeOfHoses =
    R"({"entry":"tester.calibrated","id":"g1","on":"2026-01-02","tester":"gauge 1","until":"2027-01-01","measures":["hose-leak-test"]}
)";
const char* const secondGauge =
    R"({"entry":"tester.calibrated","id":"g2","on":"2026-01-02","tester":"gauge 2","until":"2027-01-01","measures":["hose-leak-test","cylinder-leak-test"]}
)";

bool readsOf(Desks& desks, const char* quantity) {
    const auto& series = desks.reading.series()->choices();
    const auto found = std::ranges::find(series, QLatin1String(quantity), &Choice::value);
    if (found == series.end())
        return false;
    desks.reading.setCurrent(static_cast<int>(found - series.begin()));
    return true;
}

const std::vector<Said<ReadingTaken>>& taken(Desks& desks) { return desks.inspection.file()->inspection.readings; }

/// The row of the reason that leads so.
int wayTo(const Desks& desks, const char* way) {
    auto& release = const_cast<Desks&>(desks).release;
    for (int row = 0; row < release.refusals()->count(); ++row)
        if (release.wayOfRefusal(row) == QLatin1String(way))
            return row;
    return -1;
}

}

class BackToAReadingTest : public QObject {
    Q_OBJECT

private slots:
    /// ML.A.402(b)(4), from memory: tools are calibrated; which gauge it was is asked, and proposed where one alone
    /// fits.
    void aLeakTestNamesItsGauge() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, std::string(hoseAndCylinder) + gaugeOfHoses));
        Desks desks(shop.house);
        QVERIFY(desks.open() && readsOf(desks, "hose-leak-test"));
        QVERIFY(desks.reading.asksTester());
        QCOMPARE(desks.reading.tester(), QStringLiteral("gauge 1"));
        AfterReading after;
        after.setReader(&desks.reading);
        after.takeOnAll();
        desks.reading.tap(0, 0);
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(taken(desks).size(), std::size_t{2}, 10'000);
        for (const auto& reading : taken(desks)) // it says nothing of cylinders
            QCOMPARE(reading.body.tester,
                     reading.body.item == ItemId("HSE-1") ? std::optional(TesterId("gauge 1")) : std::nullopt);
    }
    void ofTwoGaugesNoneIsProposed() {
        Shop shop;
        QVERIFY(shop.ready() && isPosted(shop.house, std::string(hoseAndCylinder) + gaugeOfHoses + secondGauge));
        Desks desks(shop.house);
        QVERIFY(desks.open() && readsOf(desks, "hose-leak-test"));
        QCOMPARE(desks.reading.tester(), QString());
        QVERIFY(desks.reading.testers()->indexOf(QStringLiteral("gauge 1")) >= 0 &&
                desks.reading.testers()->indexOf(QStringLiteral("gauge 2")) >= 0);
        desks.reading.hold(); // nobody has to name one
        desks.settle();
        QVERIFY(desks.reading.question().isEmpty());
        QTRY_COMPARE_WITH_TIMEOUT(taken(desks).size(), std::size_t{1}, 10'000);
    }
    void withoutTestEquipmentItIsAskedFirst() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open() && readsOf(desks, "grab-strength"));
        desks.reading.setTester({});
        desks.reading.hold();
        desks.settle();
        QVERIFY(desks.reading.isEquipmentAsked() && !desks.reading.question().isEmpty());
        QCOMPARE(taken(desks).size(), std::size_t{0});
        desks.reading.setTester(QStringLiteral("grab 1")); // that answers it
        QVERIFY(!desks.reading.isEquipmentAsked() && desks.reading.question().isEmpty());
        desks.reading.setTester({});
        desks.reading.hold();
        desks.reading.stand();
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(taken(desks).size(), std::size_t{1}, 10'000);
        QVERIFY(!taken(desks).front().body.tester && !taken(desks).front().body.confirmed);
        desks.reading.hold(); // once for the series
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(taken(desks).size(), std::size_t{2}, 10'000);
    }
    void aReasonLeadsToTheEquipmentOfItsReading() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.open() && readsOf(desks, "grab-strength"));
        desks.reading.setTester({});
        desks.reading.hold();
        desks.reading.stand();
        desks.settle();
        QTRY_VERIFY_WITH_TIMEOUT(wayTo(desks, "equipment") >= 0, 10'000);
        const auto entry = desks.release.entryOfRefusal(wayTo(desks, "equipment"));
        QVERIFY(readsOf(desks, "air-permeability"));
        QVERIFY(desks.reading.showReading(entry));
        QCOMPARE(desks.reading.reads().quantity, std::string("grab-strength"));
        QVERIFY(!desks.reading.showReading(QStringLiteral("no such entry")));
        desks.reading.setTester(QStringLiteral("grab 1"));
        QCOMPARE(desks.reading.misnamed(), 1);
        desks.reading.nameTester();
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(desks.reading.misnamed(), 0, 10'000);
        QCOMPARE(taken(desks).front().body.tester, std::optional(TesterId("grab 1")));
        QTRY_COMPARE_WITH_TIMEOUT(wayTo(desks, "equipment"), -1, 10'000);
    }
    /// What a reading found is read again in its place, whatever visit puts it right (ML.A.403(a); our reading).
    void whatAReadingFoundIsReadAgainInARectification() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks annual(shop.house);
        QVERIFY(annual.open() && readsOf(annual, "grab-strength"));
        const std::pair place(annual.reading.gore(), annual.reading.row());
        annual.reading.setDirection(QStringLiteral("weft"));
        annual.reading.setHeld(false);
        annual.reading.enter(QStringLiteral("98"));
        annual.settle();
        QTRY_COMPARE_WITH_TIMEOUT(annual.inspection.defects()->count(), 1, 10'000);
        const auto defect = annual.inspection.defects()->valueAt(0);
        QVERIFY(annual.inspection.isReadAgain(defect));
        Desks desks(shop.house);
        QVERIFY(desks.choose("part-ml-rectification") && desks.openIt());
        QVERIFY(desks.inspection.isReadAgain(defect));
        QCOMPARE(desks.inspection.placeOfDefect(defect).value(QStringLiteral("gore")).toInt(), place.first);
        QCOMPARE(desks.inspection.placeOfDefect(defect).value(QStringLiteral("row")).toInt(), place.second);
        QTRY_COMPARE_WITH_TIMEOUT(desks.reading.series()->count(), 1, 10'000);
        QCOMPARE(desks.reading.series()->choices().front().number, 1);
        desks.reading.readAgain(defect);
        QCOMPARE(std::pair(desks.reading.gore(), desks.reading.row()), place);
        QCOMPARE(desks.reading.direction(), QStringLiteral("weft"));
        desks.reading.hold();
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(desks.reading.series()->choices().front().number, 0, 10'000);
        QCOMPARE(desks.inspection.file()->inspection.readings.back().body.place.gore, std::optional(place.first));
        desks.inspection.post({DefectCleared{DefectId(defect.toStdString()),
                                             ItemId("ENV-1"),
                                             "a new panel",
                                             {},
                                             desks.inspection.file()->inspection.id}});
        desks.settle();
        QTRY_COMPARE_WITH_TIMEOUT(desks.inspection.defects()->count(), 0, 10'000);
    }
    void aReasonLeadsToTheGradeOfTheWork() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(desks.choose("part-ml-repair") && desks.openIt());
        QVERIFY(desks.inspection.isGradedVisit());
        QTRY_VERIFY_WITH_TIMEOUT(wayTo(desks, "describe") >= 0, 10'000);
        WorkPerformed work;
        work.inspection = desks.inspection.file()->inspection.id;
        work.item = ItemId("BRN-1");
        work.what = "new O-rings";
        work.data = "Flare manual, 4";
        desks.inspection.post({work});
        desks.settle();
        QTRY_VERIFY_WITH_TIMEOUT(wayTo(desks, "grade") >= 0, 10'000);
        const auto& performed = desks.inspection.file()->inspection.performed;
        QCOMPARE(desks.release.entryOfRefusal(wayTo(desks, "grade")).toStdString(), performed.front().id.text());
        QCOMPARE(desks.inspection.repairs()->valueAt(0).toStdString(), performed.front().id.text());
    }
};

CROWNRING_TEST(BackToAReadingTest, QGuiApplication)

}

#include "back_to_a_reading_test.moc"

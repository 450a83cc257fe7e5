// SPDX-License-Identifier: GPL-3.0-or-later

/// The desk where readings are taken: which place comes next, with which instrument. All of it is invented.

#include "answers/bench_file.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/small_bench.h"
#include "screen/bench/visit_opening.h"
#include "screen/demo_house.h"
#include "test_class.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

namespace reading_desk_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

const char* const twoStations =
    R"({"entry":"tester.calibrated","id":"t1","on":"2026-01-02","tester":"north pull","until":"2027-01-01","measures":["grab-strength"],"unit":"N","from":50,"to":500,"station":"North"}
{"entry":"tester.calibrated","id":"t2","on":"2026-01-02","tester":"north air","until":"2027-01-01","measures":["air-permeability"],"station":"North"}
{"entry":"tester.calibrated","id":"t3","on":"2026-01-02","tester":"a south air","until":"2027-01-01","measures":["air-permeability"],"station":"South"}
)";
const char* const inThreeParts =
    R"({"entry":"limit.stated","id":"z1","on":"2024-01-02","type":"Heron 60","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"proof":133.4,"places":2,"jaw_mm":25,"source":"Heron manual, 3","direction":"warp"}
{"entry":"limit.stated","id":"z2","on":"2024-01-02","type":"Heron 60","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"proof":133.4,"places":1,"jaw_mm":25,"source":"Heron manual, 3","direction":"weft"}
{"entry":"limit.stated","id":"z3","on":"2024-01-02","type":"Heron 60","kind":"envelope","quantity":"grab-strength","unit":"N","least":80,"places":1,"jaw_mm":25,"source":"Heron manual, 4","zone":"parachute"}
{"entry":"entry.voided","id":"z4","on":"2024-01-02","voids":"e8","by":"insp. A","reason":"entered twice"}
)";
const char* const limitsOfTheBurner =
    R"({"entry":"limit.stated","id":"f1","on":"2024-01-02","type":"Flare","kind":"burner","quantity":"burner-pressure","unit":"kPa","least":400,"source":"Flare manual, 2"}
{"entry":"limit.stated","id":"f2","on":"2024-01-02","type":"Flare","kind":"burner","quantity":"burner-leak-test","unit":"kPa","proof":1000,"source":"Flare manual, 3"}
)";
const char* const limitsOfTheBasket =
    R"({"entry":"item.entered","id":"b2","on":"2024-01-01","item":"BSK-1","kind":"basket","serial":"S4","type":"Wren"}
{"entry":"item.fitted","id":"b3","on":"2024-01-01","balloon":"QE-SML","item":"BSK-1"}
{"entry":"limit.stated","id":"b1","on":"2024-01-02","type":"Wren","kind":"basket","quantity":"runner-thickness","unit":"mm","least":12,"places":2,"source":"Wren manual, 4"}
)";
const char* const cylinderOfNoType =
    R"({"entry":"item.entered","id":"c1","on":"2024-01-01","item":"CYL-1","kind":"cylinder","serial":"S3"}
{"entry":"item.fitted","id":"c2","on":"2024-01-01","balloon":"QE-SML","item":"CYL-1"}
)";

/// A bench with one annual open.
struct Bench {
    explicit Bench(const char* more = "")
        : house(*CivilDate::parse("2026-11-25"), false), opening(house), inspection(house) {
        house.habits.setInspector(QStringLiteral("insp. A"));
        house.desk.open(folder.filePath(QStringLiteral("record.sqlite")), QByteArray(smallBench) + more);
        reading.setDesk(&inspection);
    }
    [[nodiscard]] bool open() {
        QSignalSpy opened(&opening, &VisitOpening::opened);
        if (!QTest::qWaitFor([this] { return house.fleet.ready(); }, 30'000))
            return false;
        opening.begin(QStringLiteral("QE-SML"));
        if (!QTest::qWaitFor([this] { return opening.canOpen() && opening.chosenWork() > 0; }, 10'000))
            return false;
        opening.openIt();
        if (!QTest::qWaitFor([&] { return opened.size() == 1; }, 10'000))
            return false;
        inspection.setInspection(opened.first().first().toString());
        return QTest::qWaitFor([this] { return inspection.loaded(); }, 10'000) && to("grab-strength");
    }
    [[nodiscard]] bool to(const char* quantity) {
        const auto& series = reading.series()->choices();
        const auto found = std::ranges::find(series, QLatin1String(quantity), &Choice::value);
        if (found == series.end())
            return false;
        reading.setCurrent(static_cast<int>(found - series.begin()));
        return true;
    }
    void settle() {
        static_cast<void>(QTest::qWaitFor([this] { return !inspection.saving(); }, 10'000));
        QTest::qWait(2);
    }
    void held() {
        reading.hold();
        settle();
    }
    void figure(const char* value) {
        reading.setHeld(false);
        reading.enter(QLatin1String(value));
        settle();
    }
    [[nodiscard]] const PanelMark* markAt(int gore, int row) {
        const auto& marks = reading.panels()->marks();
        const auto found =
            std::ranges::find_if(marks, [&](const PanelMark& mark) { return mark.gore == gore && mark.row == row; });
        return found == marks.end() ? nullptr : &*found;
    }
    [[nodiscard]] bool offers(const char* tester) { return reading.testers()->indexOf(QLatin1String(tester)) >= 0; }

    QTemporaryDir folder;
    House house;
    In<VisitOpening> opening;
    In<InspectionDesk> inspection;
    ReadingDesk reading;
};

}

class ReadingDeskTest : public QObject {
    Q_OBJECT
private slots:
    /// A trend wants the same place again.
    void aReadingOfABasketSaysWhereItWasTaken() {
        Bench bench(limitsOfTheBasket);
        QVERIFY(bench.open());
        QCOMPARE(bench.reading.spots()->count(), 0); // of an envelope
        QVERIFY(bench.to("runner-thickness"));
        QCOMPARE(bench.reading.spots()->count(), 1 + basketPlaceCount);
        QVERIFY(bench.reading.spot().isEmpty()); // nobody said
        bench.reading.setSpot(QStringLiteral("runner-2"));
        bench.figure("17.5");
        bench.reading.setSpot(QStringLiteral("crown"));
        QCOMPARE(bench.reading.spot(), QStringLiteral("runner-2")); // there is no such place
        bench.reading.setSpot(QStringLiteral("runner-3"));
        bench.figure("16");
        QTRY_COMPARE_WITH_TIMEOUT(bench.inspection.file()->inspection.readings.size(), std::size_t{2}, 10'000);
        const auto& readings = bench.inspection.file()->inspection.readings;
        QVERIFY(readings[0].body.place.basket == BasketPlace::Runner2);
        QVERIFY(readings[1].body.place.basket == BasketPlace::Runner3);
        const auto& series = bench.reading.series()->choices();
        const auto runner = std::ranges::find(series, QStringLiteral("runner-thickness"), &Choice::value);
        QVERIFY(runner != series.end() && runner->number <= 0); // both places that the manual asks for
    }
    void bothFiguresOfAStepAreWrittenAsOne() {
        Bench bench;
        QVERIFY(bench.open() && bench.to("tell-tale"));
        QVERIFY(bench.reading.stepped() && bench.reading.saysBoth(QStringLiteral("110 - 116")));
        QVERIFY(!bench.reading.saysBoth(QStringLiteral("110")) && !bench.reading.saysBoth(QStringLiteral("110-")));
        bench.reading.enter(QStringLiteral("104-110"));
        bench.settle();
        const auto& last = bench.inspection.file()->inspection.readings.back().body;
        QCOMPARE(last.value, 104.0);
        QCOMPARE(last.below, std::optional(110.0));
    }
    /// At -5 °C propane presses 305 kPa by gauge (tests/parts/propane_test): less than is stated, and no defect.
    void aColdMorningIsNoFaultOfTheBurner() {
        Bench bench(limitsOfTheBurner);
        QVERIFY(bench.open() && bench.to("burner-pressure"));
        QVERIFY(bench.reading.asksWarmth() && !bench.reading.asksWay() && bench.reading.pressed().isEmpty());
        bench.reading.setWarmth(QStringLiteral("-5"));
        QVERIFY2(bench.reading.pressed().contains(QStringLiteral("304.7 kPa")), qPrintable(bench.reading.pressed()));
        bench.figure("280");
        const auto& read = bench.inspection.file()->inspection;
        QVERIFY(read.readings.back().body.circumstances.temperature == Celsius(-5));
        QVERIFY(read.found.empty());
        bench.reading.setWarmth(QStringLiteral("20"));
        bench.figure("280");
        QCOMPARE(bench.inspection.file()->inspection.found.size(), std::size_t{1});
    }
    void aLeakTestSaysInWhichWayAndForHowLong() {
        Bench bench(limitsOfTheBurner);
        QVERIFY(bench.open() && bench.to("burner-leak-test"));
        QVERIFY(bench.reading.asksWay() && bench.reading.asksSeconds() && !bench.reading.asksWarmth());
        bench.reading.setWay(QStringLiteral("pressure-decay"));
        bench.reading.setSeconds(QStringLiteral("600"));
        bench.held();
        const auto& last = bench.inspection.file()->inspection.readings.back().body;
        QVERIFY(last.held && last.value == 1000.0);
        QCOMPARE(last.method, std::string("pressure-decay"));
        QVERIFY(last.circumstances.seconds == 600.0);
    }
    void afterAFailedPullTheNextPlaceIsTriedWithTheLoadThatMustHold() {
        Bench bench;
        QVERIFY(bench.open());
        const std::pair first(bench.reading.gore(), bench.reading.row());
        QVERIFY(first.first > 0);
        bench.figure("98");
        QVERIFY(bench.reading.held());
        const std::pair next(bench.reading.gore(), bench.reading.row());
        QVERIFY(next.first > 0 && next != first);
    }
    void takingBackTheLastLeavesTheOtherMarksAndAsksThereAgain() {
        Bench bench;
        QVERIFY(bench.open());
        const std::pair first(bench.reading.gore(), bench.reading.row());
        bench.held();
        const std::pair second(bench.reading.gore(), bench.reading.row());
        QVERIFY(second.first > 0 && second != first);
        bench.held();
        QVERIFY(bench.to("grab-strength"));
        bench.reading.takeBack();
        bench.settle();
        QCOMPARE(bench.inspection.file()->inspection.readings.size(), std::size_t{1});
        const auto* kept = bench.markAt(first.first, first.second);
        QVERIFY(kept && kept->count == 1 && !kept->asked);
        const auto* asked = bench.markAt(second.first, second.second);
        QVERIFY(asked && asked->count == 0 && asked->asked);
        QCOMPARE(std::pair(bench.reading.gore(), bench.reading.row()), second);
    }
    void zoneByDirectionByNumber() {
        Bench bench(inThreeParts);
        QVERIFY(bench.open());
        QCOMPARE(bench.reading.direction(), QStringLiteral("warp"));
        bench.held();
        bench.held();
        QCOMPARE(bench.reading.direction(), QStringLiteral("weft")); // warp has its two
        QVERIFY(bench.reading.placed());
        bench.held();
        QCOMPARE(bench.reading.zone(), QStringLiteral("parachute"));
        QVERIFY(!bench.reading.placed() && bench.reading.inZone());
        bench.reading.hold();
        QVERIFY2(bench.reading.problem().contains(QStringLiteral("panel")), qPrintable(bench.reading.problem()));
        bench.reading.setPanel(QStringLiteral("3"));
        bench.reading.setDry(QStringLiteral("yes"));
        bench.reading.setSide(QStringLiteral("inside"));
        bench.reading.setSeconds(QStringLiteral("3"));
        bench.held();
        const auto& written = bench.inspection.file()->inspection.readings.back().body;
        QCOMPARE(written.place, (PanelPlace{3, {}, Zone::Parachute}));
        QCOMPARE(written.circumstances, (TestCircumstances{3.0, true, Side::Inside, {}}));
        // All that the manual asks for is read: the next series.
        QVERIFY(bench.reading.reads().quantity != "grab-strength");
    }
    void onlyInstrumentsThatFitAreOffered() {
        Bench bench(twoStations);
        QVERIFY(bench.open());
        QVERIFY(bench.offers("north pull") && !bench.offers("north air") && !bench.offers("a south air"));
        QVERIFY(bench.offers("grab 1")); // which does not say
        QCOMPARE(bench.reading.tester(), QStringLiteral("north pull"));
        QVERIFY(bench.reading.testerRemark().isEmpty());
        bench.held();
        QVERIFY(bench.to("air-permeability"));
        QVERIFY(bench.offers("north air") && bench.offers("a south air") && !bench.offers("north pull"));
        QCOMPARE(bench.reading.tester(), QStringLiteral("north air")); // of the station that is at work
    }
    void anotherStationsIsNobodysDefault() {
        Bench bench(twoStations);
        QVERIFY(bench.open());
        QVERIFY(bench.to("air-permeability")); // nothing was read with anything yet
        QCOMPARE(bench.reading.tester(), QString());
    }
    void oneThatDoesNotSayIsTakenAndSaidSo() {
        Bench bench;
        QVERIFY(bench.open());
        QCOMPARE(bench.reading.tester(), QStringLiteral("grab 1"));
        QVERIFY(bench.reading.testerRemark().contains(QStringLiteral("grab 1")));
    }
    void whatAnItemWithoutATypeIsNotAskedForIsSaid() {
        Bench bench(cylinderOfNoType);
        QVERIFY(bench.open());
        QVERIFY2(bench.reading.notAsked().contains(QStringLiteral("CYL-1")), qPrintable(bench.reading.notAsked()));
        QVERIFY2(bench.reading.notAsked().contains(QStringLiteral("leak test")), qPrintable(bench.reading.notAsked()));
        QVERIFY(!bench.reading.notAsked().contains(QStringLiteral("ENV-1")));
    }
};

CROWNRING_TEST(ReadingDeskTest, QGuiApplication)

}

#include "reading_desk_test.moc"

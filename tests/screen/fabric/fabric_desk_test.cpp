// SPDX-License-Identifier: GPL-3.0-or-later

/// The fabric of one envelope and the lots of the fleet, as the screen is told of them, over the demo fleet and a small
/// record. What the numbers are is tested in tests/fabric; here, that they come, from whose thread, and in which words.

#include "acts/post.h"
#include "screen/bench/small_bench.h"
#include "screen/demo_house.h"
#include "screen/desk/record_desk.h"
#include "screen/fabric/fabric_answers.h"
#include "screen/fabric/fabric_desk.h"
#include "screen/fabric/fabric_fits.h"
#include "screen/fabric/fabric_marks.h"
#include "screen/fabric/lots_desk.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>
#include <QSignalSpy>
#include <QtTest>

using namespace crownring;
using namespace crownring::screen;

namespace {

const PanelMark* markAt(PanelModel& panels, int gore, int row) {
    for (const auto& mark : panels.marks())
        if (mark.gore == gore && mark.row == row)
            return &mark;
    return nullptr;
}

std::string pull(const std::string& day, const std::string& value, int gore) {
    return R"({"entry":"reading.taken","on":")" + day + R"(","item":"ENV-1","quantity":"grab-strength","unit":"N",)" +
           value + R"(,"gore":)" + std::to_string(gore) + R"(,"row":10,"jaw_mm":25})" + "\n";
}

/// 150 hours, and then so many pulls of one day.
std::string flownAndPulled(int pulls) {
    std::string entries = R"({"entry":"flight.logged","on":"2026-05-01","balloon":"QE-SML","minutes":9000})"
                          "\n";
    for (int gore = 1; gore <= pulls; ++gore)
        entries += pull("2026-10-01", R"("value":)" + std::to_string(240 + 5 * gore), gore);
    return entries;
}

/// A small record of its own, with these entries besides.
struct SmallHouse {
    explicit SmallHouse(const std::string& more) : house(*CivilDate::parse("2026-11-25"), false) {
        house.desk.open(folder.filePath(QStringLiteral("small.sqlite")), QByteArray::fromStdString(smallBench + more));
    }
    bool ready() {
        return QTest::qWaitFor([this] { return house.fleet.ready(); }, patience);
    }
    void post(const std::string& lines) { QVERIFY(isPosted(house, lines)); }
    QTemporaryDir folder;
    House house;
};

}

class FabricDeskTest : public QObject {
    Q_OBJECT

private slots:
    void theDemoFleet() {
        DemoHouse demo;
        QVERIFY(demo.ready());
        In<FabricDesk> desk(demo.house);
        QSignalSpy told(&demo.house.one<FabricFits>(), &FabricFits::progressed);
        desk.setEnvelope(QStringLiteral("ENV-1009"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        QCOMPARE(desk.channels().size(), 2);
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));
        QVERIFY(told.count() > 0); // it says how far it is
        QVERIFY(desk.isForetoldByReadings());
        QVERIFY2(answerTo(desk, QStringLiteral("How strong")).contains(QStringLiteral(" N")),
                 qPrintable(answerTo(desk, QStringLiteral("How strong"))));
        QVERIFY(!answerTo(desk, QStringLiteral("On which day")).isEmpty());
        QVERIFY(desk.chart()->hasBand());
        QVERIFY(desk.chart()->caution().contains(QStringLiteral("no substitute")));
        QCOMPARE(desk.sets()->count(), 3); // the heavier cloth at the mouth is another, and a panel that was replaced
        QVERIFY(desk.pulls()->count() > 0);
        QCOMPARE(desk.lots().size(), 3);

        // The slider drives the forecast: later is weaker, and it is never told as read.
        const auto rows = desk.rows();
        desk.setHoursAhead(50);
        const auto* soon = markAt(*desk.panels(), 1, rows);
        QVERIFY(soon != nullptr && soon->reading == panel::Reading::Forecast);
        const double shareSoon = soon->share;
        desk.setHoursAhead(250);
        QVERIFY(markAt(*desk.panels(), 1, rows)->share < shareSoon);
        QVERIFY(markAt(*desk.panels(), 1, rows)->share < markAt(*desk.panels(), 1, 1)->share); // the crown ages first
        desk.setHoursAhead(0);
        for (const auto& mark : desk.panels()->marks())
            QVERIFY(mark.reading != panel::Reading::Forecast);

        In<LotsDesk> lots(demo.house);
        lots.setActive(true);
        QVERIFY(QTest::qWaitFor([&] { return lots.isReady(); }, patience));
        QVERIFY2(lots.problem().isEmpty(), qPrintable(lots.problem()));
        // How the demo fleet is made: lot 19-03 ages a quarter faster than the others.
        QVERIFY2(lots.lots()->choices().front().label.startsWith(QStringLiteral("lot 19-03")),
                 qPrintable(lots.lots()->choices().front().label));
        QVERIFY(lots.lots()->choices().front().chosen);
        QVERIFY(lots.detectable().contains(QStringLiteral("smallest effect")));
    }

    void heldTestsAloneWarrantNoNumber() {
        SmallHouse small(pull("2026-10-01", R"("held_at":135)", 1) + pull("2026-10-02", R"("held_at":135)", 2));
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));
        QVERIFY(!desk.isForetoldByReadings());
        QVERIFY(desk.ground().contains(QStringLiteral("Only held tests bound this")));
        QVERIFY(answerTo(desk, QStringLiteral("On which day")).isEmpty());
        QCOMPARE(answerTo(desk, QStringLiteral("Chance that one test")),
                 QStringLiteral("not known from these readings"));
        QVERIFY(!desk.chart()->hasBand());
    }

    void whatChangedUnseenIsAskedForAgain() {
        SmallHouse small(pull("2026-10-01", R"("held_at":135)", 1));
        QVERIFY(small.ready());
        In<LotsDesk> lots(small.house);
        lots.setActive(true);
        QVERIFY(QTest::qWaitFor([&] { return lots.isReady(); }, patience));
        lots.setActive(false);
        small.house.day.stepDays(-1);
        QVERIFY(!lots.isReady());
        lots.setActive(true);
        QVERIFY(QTest::qWaitFor([&] { return lots.isReady(); }, patience));
        QCOMPARE(lots.lots()->count(), 1);
    }

    /// What was read stands before what is foretold.
    void aPanelBeyondItsLimitIsSaid() {
        SmallHouse small(flownAndPulled(3) + pull("2026-10-02", R"("value":120)", 5));
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        QVERIFY(desk.isBeyond());
        QVERIFY2(desk.byReadings().contains(QStringLiteral("120 N, gore 5, row 10; at least 133.4 N")),
                 qPrintable(desk.byReadings()));
    }

    void noReadingsNoForecast() {
        SmallHouse small("");
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        QTest::qWait(200);
        QVERIFY(!desk.isWorking() && !desk.isForetold());
        QCOMPARE(desk.answers()->count(), 0);
        QCOMPARE(desk.chart()->readings()->count(), 0);
    }

    void withoutALimitItSaysWhatToDo() {
        SmallHouse small(
            R"({"entry":"item.entered","on":"2024-01-01","item":"ENV-2","kind":"envelope","type":"Ibis 30"})"
            "\n");
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-2"));
        QVERIFY(QTest::qWaitFor([&] { return !desk.problem().isEmpty(); }, patience));
        QVERIFY2(desk.problem().contains(QStringLiteral("limit.stated")), qPrintable(desk.problem()));
        QVERIFY(!desk.isRead());
    }

    void itCanBeStoppedAndBegunAgain() {
        DemoHouse demo;
        QVERIFY(demo.ready());
        In<FabricDesk> desk(demo.house);
        desk.setEnvelope(QStringLiteral("ENV-1009"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isWorking(); }, patience));
        desk.stop();
        QVERIFY(desk.isStopped());
        QTest::qWait(500);
        QVERIFY(!desk.isForetold());
        desk.begin();
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));
    }

    void oneReadingMoreCarriesTheFitOn() {
        SmallHouse small(flownAndPulled(8));
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));
        const auto before = answerTo(desk, QStringLiteral("How strong"));
        const auto draws = desk.fitted();
        small.post(pull("2026-11-01", R"("value":262)", 9));
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold() && desk.fitted() != draws; }, patience));
        QVERIFY2(desk.fitted().contains(QStringLiteral("9 tests")), qPrintable(desk.fitted()));
        QVERIFY(!before.isEmpty() && !answerTo(desk, QStringLiteral("How strong")).isEmpty());
    }

    void testsOfOneDayLeaveThePaceToWhatIsAssumed() {
        SmallHouse small(flownAndPulled(6));
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isForetold(); }, patience));
        QVERIFY(!desk.isForetoldByReadings());
        QVERIFY2(desk.ground().contains(QStringLiteral("at one age")), qPrintable(desk.ground()));
    }

    void theLotOfPanelsIsEnteredByForm() {
        SmallHouse small("");
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        QVERIFY(desk.lots().isEmpty());
        small.house.habits.setPerson(QStringLiteral("insp. A"));
        small.house.habits.setInspector(QStringLiteral("insp. A"));
        In<EntryForm> form(small.house);
        form.begin(QStringLiteral("fabric.stated"), {}, QStringLiteral("ENV-1"));
        QVERIFY(form.isOpen());
        for (int row = 0; row < form.fields()->count(); ++row)
            if (form.fields()->fields()[static_cast<std::size_t>(row)].key == "lot")
                form.setValue(row, QStringLiteral("A-17"));
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        QVERIFY2(QTest::qWaitFor([&] { return saved.count() > 0; }, patience), qPrintable(form.problem()));
        QVERIFY(QTest::qWaitFor([&] { return desk.lots() == QStringList{QStringLiteral("A-17")}; }, patience));
        QCOMPARE(markAt(*desk.panels(), 5, 5)->lotName, QStringLiteral("A-17"));
    }

    void aReadingIsWrittenWhereThePanelWasTapped() {
        SmallHouse small("");
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        small.house.habits.setPerson(QStringLiteral("insp. A"));
        small.house.habits.setInspector(QStringLiteral("insp. A"));
        In<EntryForm> form(small.house);
        form.beginWith(QStringLiteral("reading.taken"), QStringLiteral("ENV-1"), desk.readingAt(4, 10),
                       desk.testSays());
        QVERIFY(form.about().contains(QStringLiteral("25 mm")));
        for (int row = 0; row < form.fields()->count(); ++row)
            if (form.fields()->fields()[static_cast<std::size_t>(row)].key == "value")
                form.setValue(row, QStringLiteral("212"));
        QSignalSpy saved(&form, &EntryForm::saved);
        form.save();
        QVERIFY2(QTest::qWaitFor([&] { return saved.count() > 0; }, patience), qPrintable(form.problem()));
        QVERIFY(QTest::qWaitFor([&] { return markAt(*desk.panels(), 4, 10) != nullptr; }, patience));
        QCOMPARE(markAt(*desk.panels(), 4, 10)->text, QStringLiteral("212"));
        QVERIFY(desk.leftOut().isEmpty()); // it is of the test that the limit is stated for
    }

    void aReadingIsWrittenAsTheLimitIsStated() {
        SmallHouse small("");
        QVERIFY(small.ready());
        In<FabricDesk> desk(small.house);
        desk.setEnvelope(QStringLiteral("ENV-1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.isRead(); }, patience));
        const auto given = desk.readingAt(3, 10);
        QCOMPARE(given.value(QStringLiteral("quantity")).toString(), QStringLiteral("grab-strength"));
        QCOMPARE(given.value(QStringLiteral("jaw_mm")).toDouble(), 25.0);
        QCOMPARE(given.value(QStringLiteral("gore")).toInt(), 3);
        desk.setChannel(1);
        QVERIFY(
            QTest::qWaitFor([&] { return desk.readingAt(1, 1).contains(QStringLiteral("pressure_pa")); }, patience));
        QCOMPARE(desk.readingAt(1, 1).value(QStringLiteral("pressure_pa")).toDouble(), 100.0);
    }
};

CROWNRING_TEST(FabricDeskTest, QApplication)
#include "fabric_desk_test.moc"

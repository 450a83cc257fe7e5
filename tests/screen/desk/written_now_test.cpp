// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/demo_house.h"
#include "screen/desk/written_now.h"
#include "test_class.h"

#include <QTest>

namespace written_now_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

const auto today = CivilDate::parse("2026-11-25").value();

Entry clearing(const char* defect, CivilDate on) {
    Entry entry;
    entry.on = on;
    DefectCleared body;
    body.defect = DefectId(defect);
    entry.body = body;
    return entry;
}

}

/// What is written down of a defect as it happens carries its time (02, "Moments").
class WrittenNowTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
        QVERIFY(m_demo->settled());
    }
    void cleanupTestCase() { m_demo.reset(); }

    void whatIsYetToComeHasNotHappened() {
        Entry event;
        event.on = today;
        event.body = EventReported{};
        const Moment now(today, TimeOfDay(9, 30));
        QVERIFY(!isYetToCome(event, now)); // no time is said
        event.time = TimeOfDay(9, 30);
        QVERIFY(!isYetToCome(event, now));
        event.time = TimeOfDay(9, 31);
        QVERIFY(isYetToCome(event, now));
        event.body = FlightLogged{};
        QVERIFY(!isYetToCome(event, now));
    }
    void aDefectOfTodayCarriesTheTime() {
        const auto& sheet = *m_demo->house.fleet.sheet();
        QCOMPARE(timeWritten(clearing("D", today), sheet, today, TimeOfDay(19, 5)), std::optional(TimeOfDay(19, 5)));
        auto timed = clearing("D", today);
        timed.time = TimeOfDay(7, 0);
        QCOMPARE(timeWritten(timed, sheet, today, TimeOfDay(19, 5)), timed.time);
        const auto yesterday = CivilDate::parse("2026-11-24").value();
        QVERIFY(!timeWritten(clearing("D", yesterday), sheet, today, TimeOfDay(19, 5)));
        Entry flight;
        flight.on = today;
        flight.body = FlightLogged{};
        QVERIFY(!timeWritten(flight, sheet, today, TimeOfDay(19, 5)));
        Entry kept;
        kept.on = today;
        kept.body = ItemState{ItemId("C"), ServiceState::Quarantined, {}};
        QCOMPARE(timeWritten(kept, sheet, today, TimeOfDay(11, 10)), std::optional(TimeOfDay(11, 10)));
        kept.body = CylinderFilled{ItemId("C"), 80};
        QCOMPARE(timeWritten(kept, sheet, today, TimeOfDay(9, 5)), std::optional(TimeOfDay(9, 5)));
        QVERIFY(!timeWritten(kept, sheet, yesterday, TimeOfDay(9, 5)));
        Entry withdrawal;
        withdrawal.on = today;
        withdrawal.body = ReleaseRevoked{InspectionId("V"), "too early"};
        QCOMPARE(timeWritten(withdrawal, sheet, today, TimeOfDay(20, 5)), std::optional(TimeOfDay(20, 5)));
        QVERIFY(!timeWritten(withdrawal, sheet, today, TimeOfDay(9, 5))); // that is: at the end of the day's work
    }
    void aClearingIsNotBeforeWhatWasFoundToday() {
        // Each mark of the demo fleet, on its own day, asked a minute after midnight.
        int marks = 0;
        const auto& sheet = *m_demo->house.fleet.sheet();
        for (const auto& item : sheet.items())
            for (const auto& mark : item.defects) {
                const auto on = mark.stamp.at.on();
                const auto entry = clearing(mark.defect.text().c_str(), on);
                const auto time = timeWritten(entry, sheet, on, TimeOfDay(0, 1));
                QVERIFY(time && Moment(on, *time) >= mark.stamp.at);
                ++marks;
            }
        QVERIFY(marks > 0);
    }
};

CROWNRING_TEST(WrittenNowTest, QCoreApplication)

}

#include "written_now_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// From the reasons that stand in the way of a release to what answers them, in the real window, on a desk and on a
/// phone; with pictures for eyes.

#include "demo_window.h"
#include "record/entry_json.h"
#include "screen/bench/inspection_desk.h"
#include "screen/bench/reading_desk.h"
#include "screen/bench/release_desk.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

#include <QApplication>

namespace bench_ways_window_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* aRepair =
    R"({"entry":"inspection.opened","id":"way-1","on":"2026-11-24","by":"insp. 14","inspection":"OL-2026-101","visit":"part-ml-repair","balloon":"QE-OVA","items":["ENV-1001"]}
{"entry":"work.performed","id":"way-2","on":"2026-11-24","by":"insp. 14","inspection":"OL-2026-101","item":"ENV-1001","what":"panel sewn","data":"TM-10, chapter 6"}
{"entry":"reading.taken","id":"way-3","on":"2026-11-24","by":"insp. 14","inspection":"OL-2026-101","item":"ENV-1001","quantity":"grab-strength","unit":"N","value":300,"direction":"warp","gore":3,"row":4})";

}

class BenchWaysWindowTest : public QObject {
    Q_OBJECT
private:
    DemoWindow m_open;
    QQuickWindow* m_window = nullptr;

    template <class Desk>
    Desk* desk(const char* name) {
        auto* page = m_window->findChild<QObject*>(QStringLiteral("bench"));
        return page ? qobject_cast<Desk*>(page->property(name).template value<QObject*>()) : nullptr;
    }
    [[nodiscard]] bool toRelease() {
        return QMetaObject::invokeMethod(m_window, "showPlace",
                                         Q_ARG(QString, QStringLiteral("bench/OL-2026-101/release"))) &&
               QTest::qWaitFor([&] { return rowOf("grade") >= 0 && rowOf("equipment") >= 0; }, 30'000);
    }
    int rowOf(const char* way) {
        auto* release = desk<ReleaseDesk>("release");
        for (int row = 0; release && row < release->refusals()->count(); ++row)
            if (release->wayOfRefusal(row) == QLatin1String(way))
                return row;
        return -1;
    }
    /// Taps the reason that leads so.
    [[nodiscard]] bool follow(const char* way) {
        if (auto* all = m_open.find(QStringLiteral("bench.refusals.all")); all && all->property("text") != QString())
            QMetaObject::invokeMethod(all, "clicked");
        const auto name = QStringLiteral("bench.refusal.%1").arg(rowOf(way));
        if (!QTest::qWaitFor([&] { return m_open.find(name) != nullptr; }, 10'000))
            return false;
        return QMetaObject::invokeMethod(m_open.find(name), "clicked");
    }

private slots:
    void initTestCase() {
        QVERIFY(m_open.open());
        m_window = m_open.window();
        m_window->requestActivate();
        QVERIFY(isPosted(m_open.demo().house, aRepair));
        m_open.demo().house.habits.setInspector(QStringLiteral("insp. 14"));
    }
    void cleanupTestCase() { QCOMPARE(m_open.close(), QStringList()); }

    void toTheGradeOfTheWork_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("desk") << QSize(1280, 800);
        QTest::newRow("phone") << QSize(360, 740);
    }
    void toTheGradeOfTheWork() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(toRelease());
        QVERIFY(m_open.photograph(QStringLiteral("ways-release")));
        QVERIFY(follow("grade"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("form.save")) != nullptr, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("one.grade.minor")) != nullptr, 30'000);
        QVERIFY(m_open.find(QStringLiteral("one.grade.")) == nullptr); // "not said" is no answer
        QVERIFY(m_open.photograph(QStringLiteral("ways-grade")));
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("form.save")) == nullptr, 30'000);
    }

    void toTheEquipmentOfTheReading_data() { toTheGradeOfTheWork_data(); }
    void toTheEquipmentOfTheReading() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(toRelease());
        QVERIFY(follow("equipment"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.tester")) != nullptr, 30'000);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.tester"))->hasActiveFocus(), 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("ways-equipment")));
        auto* readings = desk<ReadingDesk>("readings");
        readings->setTester({});
        readings->setHeld(false);
        readings->tap(5, 4);
        readings->enter(QStringLiteral("300"));
        QVERIFY(readings->isEquipmentAsked());
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.question.mend")) != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("ways-without-equipment")));
        readings->letGo();
    }

    void whatWasDoneIsCorrectedAtTheBench_data() { toTheGradeOfTheWork_data(); }
    void whatWasDoneIsCorrectedAtTheBench() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/OL-2026-101/defects"))));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.made.0.correct")) != nullptr, 30'000);
        QVERIFY(m_open.photograph(QStringLiteral("ways-done")));
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.made.0.correct")), "clicked"));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("field.what")) != nullptr, 30'000);
        QTest::keyClick(m_window, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("form.save")) == nullptr, 30'000);
    }

    /// Four ways to end stand two by two where one row does not hold them, and none alone. Work that is no inspection
    /// ends with no list (14 CFR 43.11(b), read).
    void noWayToEndStandsAlone_data() { toTheGradeOfTheWork_data(); }
    void noWayToEndStandsAlone() {
        QFETCH(QSize, size);
        m_window->resize(size);
        QVERIFY(toRelease());
        const auto top = [&](const char* name) { return m_open.find(QLatin1String(name))->mapToScene(QPointF()).y(); };
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.outcome.incomplete")), "clicked"));
        QTRY_COMPARE_WITH_TIMEOUT(desk<ReleaseDesk>("release")->outcome(), 3, 30'000);
        QCOMPARE(top("bench.outcome.incomplete"), top("bench.outcome.abandon"));
        QCOMPARE(top("bench.outcome.incomplete"), top("bench.outcome.release"));
        QVERIFY(!m_open.find(QStringLiteral("bench.outcome.discrepancies")));
        QVERIFY(m_open.photograph(QStringLiteral("ways-incomplete")));
        QVERIFY(QMetaObject::invokeMethod(m_open.find(QStringLiteral("bench.outcome.release")), "clicked"));
        QVERIFY(QMetaObject::invokeMethod(m_window, "showPlace",
                                          Q_ARG(QString, QStringLiteral("bench/OL-2026-018/release"))));
        QTRY_VERIFY_WITH_TIMEOUT(m_open.find(QStringLiteral("bench.outcome.discrepancies")) != nullptr, 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(top("bench.outcome.incomplete"), top("bench.outcome.abandon"), 30'000);
        QCOMPARE(top("bench.outcome.release"), top("bench.outcome.discrepancies"));
    }
};

CROWNRING_TEST(BenchWaysWindowTest, QApplication)

}

#include "bench_ways_window_test.moc"

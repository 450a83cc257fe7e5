// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "screen/bench/bench_place.h"
#include "screen/demo_house.h"
#include "screen/desk/record_desk.h"
#include "test_class.h"

#include <QTest>

#include <algorithm>

using namespace crownring;
using namespace crownring::screen;

namespace {
constexpr const char* withdrawal =
    R"({"entry":"release.revoked","on":"2026-11-24","time":"12:00Z","by":"insp. 14","inspection":"OL-2026-017","reason":"the wrong gauge"})";
// The tester was found out of calibration later, and the finding taken back.
constexpr const char* calibrationThatEnded =
    R"({"entry":"entry.corrected","id":"ended","on":"2026-11-24","time":"10:00Z","by":"insp. 14","note":"found out of range","replaces":"calibrated-grab-tester-OL-2026-03-18","with":{"until":"2026-10-31"}})";
constexpr const char* calibrationAsItWas =
    R"({"entry":"entry.voided","on":"2026-11-24","time":"11:00Z","by":"insp. 14","voids":"ended","reason":"another tester"})";
}

/// The list of inspections tells open, released, pending and withdrawn ones apart, by sign and by word.
class BenchPlaceTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    static const Choice* named(ChoiceModel* model, const QString& inspection) {
        const auto& all = model->choices();
        const auto at = std::ranges::find(all, inspection, &Choice::value);
        return at == all.end() ? nullptr : &*at;
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void eachEndHasItsSign() {
        In<BenchPlace> bench(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(bench.ready(), 30'000);
        const auto* open = named(bench.inspections(), QStringLiteral("OL-2026-018"));
        const auto* released = named(bench.inspections(), QStringLiteral("OL-2026-017"));
        QVERIFY(open != nullptr && released != nullptr);
        QCOMPARE(open->number, int(BenchPlace::Open));
        QVERIFY2(open->detail.startsWith(QStringLiteral("open since")), qPrintable(open->detail));
        QCOMPARE(released->number, int(BenchPlace::Released));
        const auto& all = bench.inspections()->choices();
        const auto listed = std::ranges::find(all, int(BenchPlace::Pending), &Choice::number);
        QVERIFY(listed != all.end());
        QVERIFY2(listed->detail.contains(QStringLiteral("list of discrepancies")), qPrintable(listed->detail));
        QVERIFY2(listed->detail.contains(QStringLiteral("pending")), qPrintable(listed->detail));
    }
    void whoLooksIsToldWhatTheRecordNoLongerSupports() {
        In<BenchPlace> bench(m_demo->house);
        bench.setShown(false);
        QTRY_VERIFY_WITH_TIMEOUT(bench.ready(), 30'000);
        QVERIFY(isPosted(m_demo->house, calibrationThatEnded));
        const auto is = [&](BenchPlace::State state) {
            const auto* row = named(bench.inspections(), QStringLiteral("OL-2026-017"));
            return row && row->number == state;
        };
        bench.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(is(BenchPlace::Unsupported), 30'000);
        QVERIFY(isPosted(m_demo->house, calibrationAsItWas));
        QTRY_VERIFY_WITH_TIMEOUT(is(BenchPlace::Released), 30'000);
    }
    void aWithdrawnReleaseSaysSoFirst() {
        In<BenchPlace> bench(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(bench.ready(), 30'000);
        QVERIFY(isPosted(m_demo->house, withdrawal));
        const auto withdrawn = [&] {
            const auto* row = named(bench.inspections(), QStringLiteral("OL-2026-017"));
            return row && row->number == BenchPlace::Withdrawn && row->detail.startsWith(QStringLiteral("withdrawn"));
        };
        QTRY_VERIFY_WITH_TIMEOUT(withdrawn(), 30'000);
    }
};

CROWNRING_TEST(BenchPlaceTest, QCoreApplication)
#include "bench_place_test.moc"

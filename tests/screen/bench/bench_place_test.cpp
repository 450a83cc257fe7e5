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
    void aWithdrawnReleaseSaysSoFirst() {
        In<BenchPlace> bench(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(bench.ready(), 30'000);
        bool written = false;
        hear(m_demo->house.desk.ask(
                 [](Record& record) { return postText(record, record, withdrawal, "withdrawal").has_value(); }),
             this, [&](bool taken) { written = taken; });
        QTRY_VERIFY_WITH_TIMEOUT(written, 30'000);
        m_demo->house.desk.written();
        const auto withdrawn = [&] {
            const auto* row = named(bench.inspections(), QStringLiteral("OL-2026-017"));
            return row && row->number == BenchPlace::Withdrawn && row->detail.startsWith(QStringLiteral("withdrawn"));
        };
        QTRY_VERIFY_WITH_TIMEOUT(withdrawn(), 30'000);
    }
};

CROWNRING_TEST(BenchPlaceTest, QCoreApplication)
#include "bench_place_test.moc"

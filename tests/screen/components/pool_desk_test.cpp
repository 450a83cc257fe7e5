// SPDX-License-Identifier: GPL-3.0-or-later

/// The pool on the screen over the demo fleet: it says what crownringctl's `pool` says, sifted by quarter, lot and
/// words; what is ticked is let go of when it went out or came back. And the page of an item as a component.

#include "acts/components.h"
#include "screen/components/component_desk.h"
#include "screen/components/pool_desk.h"
#include "screen/components/tag_file.h"
#include "screen/demo_house.h"
#include "test_class.h"

#include <QGuiApplication>

#include <algorithm>

namespace pool_desk_test {

using namespace crownring;
using namespace crownring::screen;

class PoolDeskTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    static const PoolLine* lineIn(PoolDesk& desk, const char* item) {
        const auto& lines = desk.items()->lines();
        const auto at = std::ranges::find(lines, QString::fromLatin1(item), &PoolLine::item);
        return at == lines.end() ? nullptr : &*at;
    }
    [[nodiscard]] bool ready(PoolDesk& desk) {
        desk.setShown(true);
        return QTest::qWaitFor([&] { return desk.ready(); }, 30'000);
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void itSaysWhatTheRecordSays() {
        In<PoolDesk> desk(m_demo->house);
        QVERIFY(ready(desk));
        auto asked = m_demo->house.desk.ask([](Record& record) {
            return pool(record, {ItemKind::Cylinder, {}}, *CivilDate::parse("2026-11-25")).value();
        });
        asked.waitForFinished();
        const auto items = asked.result();
        QCOMPARE(desk.items()->count(), static_cast<int>(items.size()));
        for (std::size_t at = 0; at < items.size(); ++at) {
            const auto& line = desk.items()->lines()[at];
            QCOMPARE(line.item, QString::fromStdString(items[at].facts.id.text()));
            if (items[at].transport.until)
                QVERIFY(line.dates.contains(QString::fromStdString(items[at].transport.until->iso())));
            if (!items[at].quarter().empty() && !items[at].condemned)
                QCOMPARE(line.quarter, QString::fromStdString(items[at].quarter()));
            QCOMPARE(line.state == QStringLiteral("may be filled"), items[at].fillable);
        }
        QVERIFY(lineIn(desk, "CYL-9003")->state.contains(QStringLiteral("condemned")));
    }

    void itIsSiftedByQuarterByLotAndByWords() {
        In<PoolDesk> desk(m_demo->house);
        QVERIFY(ready(desk));
        const auto all = desk.items()->count();
        int told = 0;
        for (const auto& each : desk.quarters()->choices())
            if (each.value == QStringLiteral("2026-Q4"))
                told = each.number;
        desk.setQuarter(QStringLiteral("2026-Q4"));
        QVERIFY(told > 0 && told < all);
        QCOMPARE(desk.items()->count(), told);
        desk.setQuarter({});
        desk.setWords(QStringLiteral("ovb"));
        QCOMPARE(desk.items()->count(), 4); // QE-OVB has four
        desk.setWords({});
        desk.setKind(QStringLiteral("other"));
        QTRY_VERIFY_WITH_TIMEOUT(lineIn(desk, "VLV-2") != nullptr, 30'000);
        desk.setLot(QStringLiteral("RV-26-2"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.items()->count(), 2, 30'000); // where is every piece of it
        QVERIFY(lineIn(desk, "VLV-2")->state.contains(QStringLiteral("quarantined")));
    }

    void itsCountIsOfWhatIsShown() {
        In<PoolDesk> desk(m_demo->house);
        QVERIFY(ready(desk));
        desk.setWords(QStringLiteral("ovb"));
        const auto fillable =
            std::ranges::count(desk.items()->lines(), QStringLiteral("may be filled"), &PoolLine::state);
        QVERIFY(fillable <= 4);
        QVERIFY2(desk.summary().contains(QStringLiteral("may be filled: %1").arg(fillable)),
                 qPrintable(desk.summary()));
        QVERIFY(!desk.summary().contains(QStringLiteral("condemned"))); // that one is not among them
    }

    void whatIsLooseIsNotShownAsAirworthyByItsTransportTest() {
        In<PoolDesk> desk(m_demo->house);
        QVERIFY(ready(desk));
        const auto* loose = lineIn(desk, "CYL-4085");
        QVERIFY(loose != nullptr);
        QVERIFY2(loose->dates.contains(QStringLiteral("bound only on a balloon")), qPrintable(loose->dates));
        QCOMPARE(loose->standing, -1);
    }

    void whatMayBeDoneFollowsFromWhatIsTicked() {
        In<PoolDesk> desk(m_demo->house);
        QVERIFY(ready(desk));
        QVERIFY(!desk.maySend() && !desk.mayReturn() && !desk.mayFill());
        desk.toggle(QStringLiteral("CYL-9001"));
        QVERIFY(desk.maySend() && !desk.mayReturn());
        desk.toggle(QStringLiteral("CYL-4025")); // its transport test is past: away with it, but not filled
        QVERIFY(desk.maySend() && !desk.mayFill());
        desk.toggle(QStringLiteral("CYL-9003")); // condemned
        QVERIFY(!desk.maySend() && !desk.mayReturn());
        desk.toggle(QStringLiteral("CYL-9003"));
        auto sent = m_demo->house.desk.ask([](Record& record) {
            return sendAway(record, record,
                            {{ItemId("CYL-9001")}, "Test house 3", *CivilDate::parse("2026-11-25"), "tester"})
                .has_value();
        });
        sent.waitForFinished();
        QVERIFY(sent.result());
        m_demo->house.desk.written();
        QVERIFY(desk.renewing() && !desk.maySend()); // nothing is done with what it was before
        QVERIFY2(desk.summary().contains(QStringLiteral("being renewed")), qPrintable(desk.summary()));
        QTRY_COMPARE_WITH_TIMEOUT(desk.away(), 2, 30'000); // CYL-9002 was away before
        QTRY_VERIFY_WITH_TIMEOUT(!desk.renewing(), 30'000);
        QCOMPARE(desk.ticked(), QStringList{QStringLiteral("CYL-4025")});
        desk.setAwayOnly(true);
        QCOMPARE(desk.items()->count(), 2);
        QVERIFY2(lineIn(desk, "CYL-9001")->where.contains(QStringLiteral("Test house 3")),
                 qPrintable(lineIn(desk, "CYL-9001")->where));
        desk.tickNone();
        desk.tickShown();
        QVERIFY(desk.mayReturn() && !desk.maySend());
    }

    void tagsAreWrittenForWhatIsTicked() {
        In<TagFile> tags(m_demo->house);
        QVERIFY(tags.proposed({QStringLiteral("CYL 9/1")}).toString().endsWith(QStringLiteral("tag-CYL-9-1.pdf")));
        const auto file = m_demo->folder.filePath(QStringLiteral("tags.pdf"));
        tags.write({QStringLiteral("CYL-9001"), QStringLiteral("VLV-1")}, QUrl::fromLocalFile(file));
        QTRY_VERIFY_WITH_TIMEOUT(m_demo->house.notice.shown(), 30'000);
        QVERIFY2(!m_demo->house.notice.trouble(), qPrintable(m_demo->house.notice.text()));
        QVERIFY(QFile::exists(file));
        tags.write({QStringLiteral("CYL-9001")}, QUrl::fromLocalFile(m_demo->house.desk.location())); // never a record
        QTRY_VERIFY_WITH_TIMEOUT(m_demo->house.notice.trouble(), 30'000);
    }

    void anItemSaysItsPartsAndWhatItIsAPartOf() {
        In<ComponentDesk> desk(m_demo->house);
        desk.setItem(QStringLiteral("CYL-9001"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.parts()->count(), 1, 30'000);
        QCOMPARE(desk.parts()->valueAt(0), QStringLiteral("VLV-1"));
        QVERIFY2(desk.stamped().contains(QStringLiteral("aluminium")) &&
                     desk.stamped().contains(QStringLiteral("EN 13110")) &&
                     desk.stamped().contains(QStringLiteral("51 l")),
                 qPrintable(desk.stamped()));
        desk.setItem(QStringLiteral("VLV-1"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.partOf(), QStringLiteral("CYL-9001"), 30'000);
        QVERIFY2(desk.release().contains(QStringLiteral("TA-D-1")), qPrintable(desk.release()));
        desk.setItem(QStringLiteral("VLV-2"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.lot(), QStringLiteral("RV-26-2"), 30'000);
        QVERIFY(desk.release().contains(QStringLiteral("QE-145-2211"))); // under which it was fitted last
        QVERIFY(desk.partOf().isEmpty());
        desk.setItem(QStringLiteral("BRN-301"));
        QTRY_VERIFY2_WITH_TIMEOUT(desk.listed().contains(QStringLiteral("S0060")), qPrintable(desk.listed()), 30'000);
    }
};

CROWNRING_TEST(PoolDeskTest, QGuiApplication)

}

#include "pool_desk_test.moc"

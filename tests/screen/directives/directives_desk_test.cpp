// SPDX-License-Identifier: GPL-3.0-or-later

/// The directives of the record and the page of one, over the demo fleet: who is bound, who is not and why, of whom
/// nobody knows.

#include "screen/demo_house.h"
#include "screen/directives/directives_desk.h"
#include "test_class.h"

#include <algorithm>

namespace directives_desk_test {

using namespace crownring;
using namespace crownring::screen;

class DirectivesDeskTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    [[nodiscard]] bool say(const char* lines) { return isPosted(m_demo->house, lines) && m_demo->settled(); }
    static const HeldItem* heldIn(DirectivesDesk& desk, const char* item) {
        const auto& items = desk.held()->items();
        const auto at = std::ranges::find(items, QString::fromLatin1(item), &HeldItem::item);
        return at == items.end() ? nullptr : &*at;
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
        // No list says what is in this one.
        QVERIFY(say(
            R"({"entry":"item.entered","on":"2026-11-20","by":"office","item":"BRN-399","kind":"burner","serial":"TA399","type":"Twin"})"));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void nothingIsAskedUntilItIsSeen() {
        In<DirectivesDesk> desk(m_demo->house);
        QTest::qWait(100);
        QVERIFY(!desk.ready());
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.ready(), 30'000);
        QVERIFY(desk.directives()->count() >= 3);
        QVERIFY(desk.entry().isEmpty());
    }

    void theCountsOfALineAreThoseOfItsPage() {
        In<DirectivesDesk> desk(m_demo->house);
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.ready(), 30'000);
        desk.showNumber(QStringLiteral("OAO-AD 2026-014"));
        QCOMPARE(desk.number(), QStringLiteral("OAO-AD 2026-014"));
        QVERIFY(desk.isAnswerable());
        QVERIFY2(desk.applies().contains(QStringLiteral("pilot-valve")) &&
                     desk.applies().contains(QStringLiteral("S0100 to S0239")),
                 qPrintable(desk.applies()));
        QVERIFY2(desk.rule().contains(QStringLiteral("before the next flight")), qPrintable(desk.rule()));
        QCOMPARE(desk.supersedes(), QStringLiteral("OAO-AD 2026-009"));
        QVERIFY(desk.bound() > 0 && desk.unknown() == 1 && desk.notBound() > 0);
        QCOMPARE(desk.held()->count(), desk.bound());
        const auto& entries = desk.directives()->entries();
        const auto line = std::ranges::find(entries, desk.entry(), &DirectiveEntry::entry);
        QVERIFY2(line->counts.contains(QStringLiteral("bound %1 ").arg(desk.bound())) &&
                     line->counts.endsWith(QStringLiteral("unknown %1").arg(desk.unknown())),
                 qPrintable(line->counts));
        const auto* answered = heldIn(desk, "BRN-307");
        QVERIFY(answered && answered->done.contains(QStringLiteral("stem seal replaced")));
        desk.setLeaf(1);
        QVERIFY(heldIn(desk, "BRN-399") != nullptr && desk.held()->count() == 1);
        for (const auto& each : desk.held()->items())
            QVERIFY(!each.why.isEmpty() && each.word == QStringLiteral("unknown"));
        desk.setLeaf(2);
        QCOMPARE(desk.held()->count(), desk.notBound());
        for (const auto& each : desk.held()->items())
            QVERIFY(!each.why.isEmpty() && !each.answerable);
        QVERIFY(heldIn(desk, "BRN-301") != nullptr); // its valve is S0060
    }

    void whatIsOpenIsTickedTogetherAndLetGoOfOnceItIsAnswered() {
        QVERIFY(say(
            R"({"entry":"directive.issued","on":"2026-11-24","by":"office","directive":"QE-AD 9","revision":"0","title":"Look at the basket floor","issuer":"Ovelmere Aviation Office","issued_by":"authority","state":"QE","effective":"2026-11-24","source":"QE-AD 9","applies":{"kinds":["basket"]},"first":{"by":"2026-12-31"}})"));
        In<DirectivesDesk> desk(m_demo->house);
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.ready(), 30'000);
        desk.showNumber(QStringLiteral("QE-AD 9"));
        QVERIFY(desk.open() > 20);
        QCOMPARE(desk.open(), desk.bound());
        desk.tickOpen();
        QCOMPARE(desk.ticked().size(), desk.open());
        desk.tickOpen();
        QVERIFY(desk.ticked().isEmpty());
        desk.toggle(QStringLiteral("BSK-227"));
        desk.toggle(QStringLiteral("BSK-235"));
        QCOMPARE(desk.ticked().size(), 2);
        QVERIFY(heldIn(desk, "BSK-227")->ticked);
        const int before = desk.open();
        QVERIFY(say(
            R"({"entry":"directive.answered","on":"2026-11-25","by":"insp. K3","directive":"QE-AD 9","revision":"0","item":"BSK-227","answer":"done","method":"paragraph 1","licence":"K3","ref":"WO 9"})"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.open(), before - 1, 30'000);
        QCOMPARE(desk.ticked(), QStringList{QStringLiteral("BSK-235")}); // the other is not answered for again
        QVERIFY(heldIn(desk, "BSK-227")->word.contains(QStringLiteral("answered")));
        desk.setLeaf(1);
        QVERIFY(desk.ticked().isEmpty()); // what is out of sight is not answered for
    }

    void historyIsNotAnswered() {
        In<DirectivesDesk> desk(m_demo->house);
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.ready(), 30'000);
        desk.showNumber(QStringLiteral("OAO-AD 2026-009"));
        QVERIFY(!desk.isAnswerable());
        QCOMPARE(desk.open(), 0);
        QVERIFY2(desk.about().contains(QStringLiteral("superseded")), qPrintable(desk.about()));
        QVERIFY(heldIn(desk, "BRN-301") != nullptr); // and what was answered then is kept
    }
};

CROWNRING_TEST(DirectivesDeskTest, QCoreApplication)

}

#include "directives_desk_test.moc"

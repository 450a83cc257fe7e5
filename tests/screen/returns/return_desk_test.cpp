// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "screen/bench/bench_place.h"
#include "screen/demo_house.h"
#include "screen/desk/record_desk.h"
#include "screen/next/due_detail.h"
#include "screen/returns/return_desk.h"
#include "test_class.h"

#include <QSignalSpy>
#include <QTest>

#include <algorithm>

namespace return_desk_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// A reading found it, so it is read again first.
constexpr const char* wire =
    R"({"entry":"reading.taken","on":"2026-11-24","by":"insp. K5","item":"BSK-227","quantity":"broken-strands","value":0,"unit":"count"}
{"entry":"defect.cleared","on":"2026-11-24","by":"insp. K5","defect":"KS-2026-015/1","item":"BSK-227","what":"wire 2 replaced"})";
constexpr const char* test =
    R"({"entry":"requirement.done","on":"2026-11-24","item":"ENV-1032","requirement":"fabric.strength-test","ref":"T 77","signatory":"lab 2","licence":"L 2"})";
constexpr const char* bare =
    R"({"entry":"requirement.done","on":"2026-11-24","item":"ENV-1032","requirement":"fabric.strength-test"})";
constexpr const char* handle =
    R"({"entry":"defect.cleared","on":"2026-11-25","by":"insp. K5","defect":"KS-2026-015/2","item":"BSK-227","what":"handle replaced"})";

}

/// The page of a balloon shows the list that grounds it, and lets somebody who may approve the return to service.
class ReturnDeskTest : public QObject {
    Q_OBJECT

    std::unique_ptr<DemoHouse> m_demo;

    bool post(const char* line) { return isPosted(m_demo->house, line) && m_demo->settled(); }
    static int standing(ReturnDesk& desk) {
        return static_cast<int>(std::ranges::count(desk.listed()->choices(), true, &Choice::chosen));
    }
    static int placeOfPerson(ReturnDesk& desk, const QString& person, bool may) {
        const auto& people = desk.people()->choices();
        const auto at = std::ranges::find_if(
            people, [&](const Choice& each) { return each.value == person && each.chosen == may; });
        return at == people.end() ? -1 : static_cast<int>(at - people.begin());
    }

private slots:
    void initTestCase() {
        m_demo = std::make_unique<DemoHouse>();
        QVERIFY2(m_demo->ready(), qPrintable(m_demo->house.desk.trouble()));
    }
    void cleanupTestCase() { m_demo.reset(); }

    void onlyTheBalloonOfTheListShowsIt() {
        In<ReturnDesk> desk(m_demo->house);
        QCOMPARE(desk.lists()->count(), 0);
        desk.setBalloon(QStringLiteral("QE-OAK"));
        QVERIFY(m_demo->settled());
        QTest::qWait(200);
        QCOMPARE(desk.lists()->count(), 0);
        desk.setBalloon(QStringLiteral("QN190R"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.lists()->count(), 1, 30'000);
        QCOMPARE(desk.lists()->valueAt(0), QStringLiteral("KS-2026-015"));
        QCOMPARE(desk.lists()->choices().front().number, 3);
        QCOMPARE(desk.listed()->count(), 3);
        desk.setBalloon({});
        QCOMPARE(desk.lists()->count(), 0);
    }
    /// The record may be busy for a while: meanwhile nothing is said of what is not known.
    void whatIsBeingAskedIsSaidToBe() {
        In<ReturnDesk> desk(m_demo->house);
        QVERIFY(!desk.isAskingLists());
        desk.setBalloon(QStringLiteral("QE-OAK"));
        QVERIFY(!desk.isAskingLists()); // the due list has none of it
        desk.setBalloon(QStringLiteral("QN190R"));
        QVERIFY(desk.isAskingLists());
        QTRY_COMPARE_WITH_TIMEOUT(desk.lists()->count(), 1, 30'000);
        QVERIFY(!desk.isAskingLists());
        desk.begin(QStringLiteral("KS-2026-015"));
        QVERIFY(desk.isAskingPeople() && desk.people()->count() == 0);
        QTRY_VERIFY_WITH_TIMEOUT(!desk.isAskingPeople(), 30'000);
        QVERIFY(desk.people()->count() > 0);
    }
    void eachItemOfItLeadsToItsRow() {
        In<ReturnDesk> desk(m_demo->house);
        desk.setBalloon(QStringLiteral("QN190R"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.listed()->count(), 3, 30'000);
        In<DueDetail> detail(m_demo->house);
        int defects = 0;
        for (int row = 0; row < 3; ++row) {
            detail.show(desk.itemAt(row), desk.listed()->valueAt(row));
            QVERIFY(detail.found());
            defects += detail.isDefect() ? 1 : 0;
        }
        QCOMPARE(defects, 2); // and the strength test that had run out
        QCOMPARE(desk.itemAt(7), QString());
        // And the row of the list itself offers nothing that could be written down as done.
        detail.show(QStringLiteral("ENV-1032"), QStringLiteral("list/KS-2026-015"));
        QVERIFY(detail.found() && detail.isList() && !detail.isFabric() && !detail.isDefect());
        QVERIFY2(detail.title().contains(QStringLiteral("3 still stand")), qPrintable(detail.title()));
    }
    /// What a reading found, and a test, no statement answers: the list and each reason lead to a visit that reads it.
    void whatIsReadIsOfferedToBeRead() {
        In<ReturnDesk> desk(m_demo->house);
        desk.setBalloon(QStringLiteral("QN190R"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.listed()->count(), 3, 30'000);
        QStringList read;
        for (int row = 0; row < 3; ++row)
            if (desk.isRead(row))
                read += desk.listed()->valueAt(row);
        read.sort();
        QCOMPARE(read, QStringList({QStringLiteral("defect/KS-2026-015/1"), QStringLiteral("fabric.strength-test")}));
        QVERIFY(!desk.isRead(3) && !desk.isRead(-1));
        desk.begin(QStringLiteral("KS-2026-015"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.refusals()->count(), 3, 30'000);
        QStringList asked;
        for (int row = 0; row < 3; ++row)
            if (const auto reading = desk.readingOfRefusal(row); !reading.isEmpty())
                asked += reading.join(u' ');
        asked.sort();
        QCOMPARE(asked, QStringList({QStringLiteral("BSK-227 defect/KS-2026-015/1"),
                                     QStringLiteral("ENV-1032 fabric.strength-test")}));
        QVERIFY(!post(bare)); // the gate takes none
    }
    void withWhatStandsNobodyApproves() {
        In<ReturnDesk> desk(m_demo->house);
        desk.setBalloon(QStringLiteral("QN190R"));
        desk.begin(QStringLiteral("KS-2026-015"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.people()->count() > 0, 30'000);
        QVERIFY(desk.signer().isEmpty() && !desk.mayApprove()); // nobody is proposed
        QCOMPARE(desk.refusals()->count(), 3);
        desk.setSignerAt(placeOfPerson(desk, QStringLiteral("insp. K3"), true));
        QTRY_VERIFY_WITH_TIMEOUT(desk.refusals()->count() == 3 && desk.signer() == QStringLiteral("insp. K3"), 30'000);
        QVERIFY(!desk.mayApprove());
        QVERIFY(std::ranges::any_of(desk.refusals()->choices(), [](const Choice& each) {
            return each.label.contains(QStringLiteral("basket wire 2"));
        }));
        desk.approve(); // does nothing
        QVERIFY(!desk.isApproving());
    }
    void whenAllIsClearedWhoMayApproves() {
        In<ReturnDesk> desk(m_demo->house);
        desk.setBalloon(QStringLiteral("QN190R"));
        QTRY_COMPARE_WITH_TIMEOUT(desk.listed()->count(), 3, 30'000);
        QVERIFY(post(wire) && post(test));
        QTRY_COMPARE_WITH_TIMEOUT(standing(desk), 1, 30'000);
        QVERIFY(post(handle));
        QTRY_COMPARE_WITH_TIMEOUT(standing(desk), 0, 30'000);
        QVERIFY(desk.lists()->choices().front().detail.contains(QStringLiteral("not approved")));
        // The rows of the other items on the list say it at once.
        In<DueDetail> detail(m_demo->house);
        detail.show(QStringLiteral("ENV-1032"), QStringLiteral("list/KS-2026-015"));
        QTRY_VERIFY_WITH_TIMEOUT(detail.title().contains(QStringLiteral("all answered")), 30'000);
        desk.begin(QStringLiteral("KS-2026-015"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.people()->count() > 0, 30'000);
        QCOMPARE(desk.refusals()->count(), 0);
        QVERIFY(!desk.mayApprove());
        desk.setSignerAt(placeOfPerson(desk, QStringLiteral("insp. 14"), false)); // under other rules
        QTRY_COMPARE_WITH_TIMEOUT(desk.refusals()->count(), 1, 30'000);
        QVERIFY(!desk.mayApprove());
        desk.setSignerAt(placeOfPerson(desk, QStringLiteral("insp. K3"), true));
        QTRY_VERIFY_WITH_TIMEOUT(desk.mayApprove(), 30'000);
        QVERIFY(desk.statement().contains(QStringLiteral("approval for return to service")));
        // Who has confirmed these words stands beside them; where nobody has, nobody signs by them.
        QCOMPARE(desk.wording()->count(), 1);
        QVERIFY2(desk.wording()->choices().front().chosen &&
                     desk.wording()->choices().front().detail.contains(QStringLiteral("insp. K3")),
                 qPrintable(desk.wording()->choices().front().detail));
        QVERIFY(post(
            R"({"entry":"entry.voided","id":"unconfirmed","on":"2026-11-25","by":"insp. K3","voids":"confirmed-us-return-to-service-shore","reason":"read again"})"));
        QTRY_VERIFY_WITH_TIMEOUT(!desk.wording()->choices().front().chosen && !desk.mayApprove(), 30'000);
        QVERIFY(post(
            R"({"entry":"entry.voided","on":"2026-11-25","by":"insp. K3","voids":"unconfirmed","reason":"it holds"})"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.mayApprove(), 30'000);
        QVERIFY2(desk.accomplished().contains(QStringLiteral("2026-11-18")), qPrintable(desk.accomplished()));
        QSignalSpy approved(&desk, &ReturnDesk::approvedNow);
        QTRY_VERIFY_WITH_TIMEOUT(desk.code()->isFirst(), 30'000);
        desk.approve(); // not without a code
        QVERIFY(!desk.isApproving() && !desk.problem().isEmpty());
        desk.code()->setCode(QStringLiteral("basket wire 7"));
        desk.code()->setAgain(QStringLiteral("basket wire 8"));
        QVERIFY(!desk.code()->isReady() && !desk.code()->problem().isEmpty());
        desk.code()->setAgain(QStringLiteral("basket wire 7"));
        QVERIFY(desk.code()->isReady());
        desk.approve();
        QTRY_COMPARE_WITH_TIMEOUT(approved.count(), 1, 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(desk.lists()->count(), 0, 30'000);
        QVERIFY(m_demo->settled());
        detail.show(QStringLiteral("ENV-1032"), QStringLiteral("us.annual"));
        QTRY_VERIFY_WITH_TIMEOUT(!detail.limits()->choices().empty() &&
                                     detail.limits()->choices().front().detail.contains(QStringLiteral("2026-11-18")),
                                 30'000);
        In<BenchPlace> bench(m_demo->house);
        QTRY_VERIFY_WITH_TIMEOUT(bench.ready(), 30'000);
        const auto& all = bench.inspections()->choices();
        const auto row = std::ranges::find(all, QStringLiteral("KS-2026-015"), &Choice::value);
        QVERIFY(row != all.end());
        QCOMPARE(row->number, int(BenchPlace::Listed));
        QVERIFY2(row->detail.contains(QStringLiteral("approved on 2026-11-25")), qPrintable(row->detail));
    }
};

CROWNRING_TEST(ReturnDeskTest, QCoreApplication)

}

#include "return_desk_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// The visit planner on the screen (issue 15), without a window: what it says of two balloons, what it costs to hold,
/// forbid and move a visit, and that the calendar takes all of a plan or nothing.

#include "screen/demo_house.h"
#include "screen/next/plan/plan_desk.h"
#include "screen/next/two_balloons.h"
#include "test_class.h"

#include <QFile>
#include <QTest>

namespace plan_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

QString at(PlanDesk& desk, int row, int role) {
    return desk.visits()->data(desk.visits()->index(row, 0), role).toString();
}

std::vector<VisitAhead> visitsIn(House& house) {
    auto planned = house.desk.ask([](Record& record) {
        return plannedFrom(record, *CivilDate::parse("2026-11-25"), *CivilDate::parse("2026-11-25"));
    });
    planned.waitForFinished();
    return planned.result()->visits;
}

}

class PlanTest : public QObject {
    Q_OBJECT

    TwoBalloons m_two;
    std::unique_ptr<In<PlanDesk>> m_desk;

    [[nodiscard]] bool isDone() {
        return QTest::qWaitFor([&] { return !m_desk->isWorking(); }, 60'000);
    }
    [[nodiscard]] bool isPlanned() {
        m_desk->plan();
        return isDone() && m_desk->isPlanned();
    }
    int rowOf(const char* balloon) {
        for (int row = 0; row < m_desk->visits()->count(); ++row)
            if (at(*m_desk, row, PlanModel::TitleRole).startsWith(QLatin1String(balloon)))
                return row;
        return -1;
    }

private slots:
    void initTestCase() {
        QVERIFY(m_two.ready());
        m_desk = std::make_unique<In<PlanDesk>>(m_two.house());
    }
    void cleanupTestCase() { m_desk.reset(); }

    /// Without a file of stations nothing is planned; one that is none is refused with its place, and not kept.
    void aFileOfStationsComesFirst() {
        QVERIFY(m_desk->stations().isEmpty());
        m_desk->plan();
        QVERIFY(!m_desk->isWorking() && !m_desk->problem().isEmpty());
        m_desk->chooseStations(m_two.file("bad.json", R"({"stations":[{"station":"Shed","visit":-1,"at_once":1}]})"));
        QVERIFY2(m_two.house().notice.text().contains(QStringLiteral("/stations/0/visit")),
                 qPrintable(m_two.house().notice.text()));
        QVERIFY(m_two.house().habits.stationsFile().isEmpty());
        m_desk->chooseStations(m_two.file("stations.json", twoStations));
        QCOMPARE(m_desk->stations(), QStringLiteral("stations.json: Shed, Loft"));
    }
    /// Annual and review of each balloon in one visit, the review within its 90 days: two visits at the cheaper shed,
    /// which takes one balloon in a week.
    void aPlanSaysWhatItIsWorthAndWhyEachThingSitsWhereItSits() {
        m_desk->setMonths(6);
        QVERIFY(isPlanned());
        QCOMPARE(m_desk->visits()->count(), 2);
        QCOMPARE(at(*m_desk, rowOf("QE-ONE"), PlanModel::TitleRole), QStringLiteral("QE-ONE at Shed"));
        QVERIFY(at(*m_desk, rowOf("QE-ONE"), PlanModel::WeekRole).contains(QStringLiteral("1 Mar")));
        const auto covers = m_desk->visits()->line(rowOf("QE-ONE"))->covers;
        QCOMPARE(covers.size(), 2);
        QVERIFY2(covers.join(u'|').contains(QStringLiteral("so that it keeps its date")),
                 qPrintable(covers.join(u'|')));
        QCOMPARE(m_desk->worth().size(), 4);
        QVERIFY2(m_desk->worth()[0].contains(QStringLiteral("2 visits in 26 weeks")), qPrintable(m_desk->worth()[0]));
        QVERIFY2(m_desk->worth()[1].contains(QStringLiteral("less than each thing done when it is due")),
                 qPrintable(m_desk->worth()[1]));
        QVERIFY(m_desk->notKept().isEmpty() && m_desk->loose().isEmpty());
        QVERIFY(visitsIn(m_two.house()).empty());
    }
    /// The loft is 100 dearer: that is said before the visit is moved there, and it can be left.
    void anotherStationCostsMoreAndThatIsSaidFirst() {
        m_desk->move(rowOf("QE-ONE"), 0, QStringLiteral("Loft"));
        QVERIFY(!m_desk->isTakeable());
        QVERIFY(isDone());
        QVERIFY2(m_desk->isTakeable(), qPrintable(m_desk->means().join(u'|')));
        QCOMPARE(m_desk->means().front(), QStringLiteral("Costs 100.00 more than the plan as it stands."));
        QVERIFY2(m_desk->means().contains(QStringLiteral("Then: QE-ONE at Loft, week from Mon 1 Mar 2027")),
                 qPrintable(m_desk->means().join(u'|')));
        m_desk->leave();
        QVERIFY(m_desk->tried().isEmpty());
        QCOMPARE(at(*m_desk, rowOf("QE-ONE"), PlanModel::TitleRole), QStringLiteral("QE-ONE at Shed"));
        QCOMPARE(m_desk->wishes()->count(), 0);
    }
    /// What is forbidden goes elsewhere; given up, the plan costs no more than before.
    void aVisitThatIsForbiddenGoesElsewhere() {
        m_desk->forbid(rowOf("QE-ONE"), true);
        QVERIFY(isDone());
        QVERIFY2(m_desk->isTakeable(), qPrintable(m_desk->means().join(u'|')));
        m_desk->take();
        QCOMPARE(m_desk->wishes()->count(), 1);
        QVERIFY(!at(*m_desk, rowOf("QE-ONE"), PlanModel::WeekRole).contains(QStringLiteral("1 Mar")));
        m_desk->dropWish(0);
        QVERIFY(isDone());
        QVERIFY2(m_desk->isTakeable(), qPrintable(m_desk->means().join(u'|')));
        QVERIFY2(!m_desk->means().front().contains(QStringLiteral("more")) ||
                     m_desk->means().front().contains(QStringLiteral("no more")),
                 qPrintable(m_desk->means().front()));
        m_desk->take();
        QCOMPARE(m_desk->wishes()->count(), 0);
        QVERIFY(at(*m_desk, rowOf("QE-ONE"), PlanModel::WeekRole).contains(QStringLiteral("1 Mar")));
    }
    void whereNoStationIsOpenNothingCanBeTaken() {
        m_desk->move(rowOf("QE-ONE"), 9, {}); // the shed is closed from May on
        QVERIFY(isDone());
        QVERIFY(!m_desk->isTakeable());
        QVERIFY2(m_desk->means().front().contains(QStringLiteral("it is closed")), qPrintable(m_desk->means().front()));
        m_desk->leave();
    }
    /// Stopped, nothing is told of it.
    void aSearchIsStopped() {
        m_desk->plan();
        QVERIFY(m_desk->isWorking() && !m_desk->step().isEmpty());
        m_desk->stop();
        QVERIFY(!m_desk->isWorking());
        QVERIFY(isPlanned());
    }
    /// All visits in one go; then the plan finds them there, holds them, and has nothing to write.
    void theVisitsGoIntoTheCalendar() {
        m_desk->hold(rowOf("QE-TWO"));
        QVERIFY(m_desk->visits()->line(rowOf("QE-TWO"))->isHeld);
        QCOMPARE(m_desk->change().size(), 2);
        QVERIFY2(m_desk->change().front().startsWith(QStringLiteral("New: QE-")), qPrintable(m_desk->change().front()));
        m_desk->intoCalendar(QString()); // nobody says who writes
        QVERIFY(!m_desk->isSaving());
        m_desk->intoCalendar(QStringLiteral("office"));
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isOvertaken(), 30'000);
        const auto visits = visitsIn(m_two.house());
        QCOMPARE(visits.size(), std::size_t{2});
        QCOMPARE(visits[0].visit.covers.size(), std::size_t{2});
        QCOMPARE(visits[0].visit.station, std::string("Shed"));
        QVERIFY(m_two.house().notice.undoable());
        QVERIFY(isPlanned());
        QVERIFY(m_desk->change().isEmpty() && !m_desk->isWritable());
        QCOMPARE(at(*m_desk, 0, PlanModel::MarkRole), QStringLiteral("planned in the record already"));
    }
    /// A visit of the record is no pin for good: moved, its entry is taken back in the same act.
    void aPlannedVisitThatIsMovedIsTakenBack() {
        m_desk->move(rowOf("QE-TWO"), -2, {});
        QVERIFY(isDone());
        QVERIFY2(m_desk->isTakeable(), qPrintable(m_desk->means().join(u'|')));
        m_desk->take();
        QVERIFY2(m_desk->change().join(u'|').contains(QStringLiteral("Taken back: QE-TWO")),
                 qPrintable(m_desk->change().join(u'|')));
        m_desk->intoCalendar(QStringLiteral("office"));
        QTRY_VERIFY_WITH_TIMEOUT(m_desk->isOvertaken(), 30'000);
        QCOMPARE(visitsIn(m_two.house()).size(), std::size_t{2});
    }
    /// What somebody else wrote meanwhile makes the plan an old one: nothing more is written by it.
    void whatTheRecordSaysOtherwiseByNowIsNotWrittenOver() {
        QVERIFY(isPlanned());
        m_desk->forbid(rowOf("QE-ONE"), true);
        QVERIFY(isDone());
        m_desk->take();
        QVERIFY(m_desk->isWritable());
        QVERIFY(isPosted(
            m_two.house(),
            R"({"entry":"visit.planned","on":"2026-11-25","balloon":"QE-ONE","station":"Elsewhere","from":"2027-01-04","to":"2027-01-08"})"));
        QVERIFY(m_desk->isOvertaken() && !m_desk->isWritable());
        QVERIFY(isPlanned());
        QVERIFY2(m_desk->loose().join(u'|').contains(QStringLiteral("no station of the file is called so")),
                 qPrintable(m_desk->loose().join(u'|')));
    }
};

CROWNRING_TEST(PlanTest, QCoreApplication)

}

#include "plan_test.moc"

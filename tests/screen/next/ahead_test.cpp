// SPDX-License-Identifier: GPL-3.0-or-later

/// The days to come and the calendar (issue 15), without a window: what they say of a small record, and that a visit is
/// moved only once it was said what that means.

#include "screen/form/form_hand.h"
#include "screen/next/ahead/agenda_desk.h"
#include "screen/next/ahead/calendar_desk.h"
#include "screen/next/small_shed.h"
#include "test_class.h"

#include <QTest>

namespace ahead_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* plans =
    R"({"entry":"flight.planned","id":"sat","on":"2026-11-28","balloon":"QE-ONE","minutes":360}
{"entry":"flight.planned","id":"sun","on":"2026-11-29","balloon":"QE-ONE","minutes":360}
{"entry":"visit.planned","id":"visit","on":"2026-11-25","balloon":"QE-ONE","station":"Shed of the tests","from":"2026-11-27","to":"2026-11-27","covers":[{"item":"E1","requirement":"hundred"}]}
)";

QString at(const QAbstractItemModel& list, int row, int role) {
    return list.data(list.index(row, 0), role).toString().replace(QChar::Nbsp, u' ');
}

}

class AheadTest : public QObject {
    Q_OBJECT

    Shed m_shed{"positioning"};

private slots:
    void initTestCase() {
        QVERIFY(m_shed.ready());
        QVERIFY(isPosted(m_shed.house, plans));
    }

    void theDaysToComeSayWhatForbidsAFlightAndWhatItMakesDue() {
        In<AgendaDesk> desk(m_shed.house);
        desk.setShown(true);
        QTRY_COMPARE_WITH_TIMEOUT(desk.agenda()->count(), 3, 30'000);
        QCOMPARE(desk.mayFly(), QStringLiteral("QE-ONE"));
        QVERIFY(desk.nextVisit().contains(QStringLiteral("Shed of the tests")));
        QCOMPARE(desk.nextCovers().size(), 1);
        auto& agenda = *desk.agenda();
        QVERIFY(at(agenda, 0, AgendaModel::TitleRole).contains(QStringLiteral("Shed of the tests")));
        QCOMPARE(at(agenda, 1, AgendaModel::EntryRole), QStringLiteral("sat"));
        QVERIFY(agenda.data(agenda.index(1, 0), AgendaModel::GoodRole).toBool());
        // Six of the ten hours that are left are flown on Saturday.
        QVERIFY(!agenda.data(agenda.index(2, 0), AgendaModel::GoodRole).toBool());
        QVERIFY(!agenda.data(agenda.index(2, 0), AgendaModel::LinesRole).toStringList().isEmpty());
    }
    void fourteenHoursOnSaturdayWouldMakeEachItemDue() {
        In<AgendaDesk> desk(m_shed.house);
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.isReady(), 30'000);
        desk.setBalloon(QStringLiteral("QE-ONE"));
        desk.setDuration(QStringLiteral("14"));
        QVERIFY(desk.understood().contains(QStringLiteral("14 hours")));
        QTRY_COMPARE_WITH_TIMEOUT(desk.makes()->count(), 5, 30'000);
        desk.setDuration(QStringLiteral("2"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.answer().contains(QStringLiteral("nothing more")), 30'000);
        desk.setDuration(QStringLiteral("x"));
        QVERIFY(!desk.wrong().isEmpty());
    }
    /// Both flights use up what is left on the 29th: from then on the visit comes too late.
    void aVisitIsMovedOnceItIsSaidWhatThatMeans() {
        In<CalendarDesk> desk(m_shed.house);
        desk.setShown(true);
        QTRY_VERIFY_WITH_TIMEOUT(desk.lines()->count() > 1, 30'000);
        QCOMPARE(at(*desk.lines(), 0, CalendarModel::EntryRole), QStringLiteral("visit"));
        desk.move(QStringLiteral("visit"), 7);
        desk.move(QStringLiteral("visit"), -1);
        QVERIFY2(desk.proposal().contains(QStringLiteral("3 Dec")), qPrintable(desk.proposal()));
        QVERIFY2(desk.means().join(u'|').contains(QStringLiteral("is due before it: Every hundred of E1")),
                 qPrintable(desk.means().join(u'|')));
        desk.moveIt(QString()); // nobody says who writes
        QVERIFY(!desk.isSaving());
        desk.moveIt(QStringLiteral("office"));
        QTRY_VERIFY_WITH_TIMEOUT(at(*desk.lines(), 0, CalendarModel::FirstRole) == QStringLiteral("2026-12-03"),
                                 30'000);
        QCOMPARE(at(*desk.lines(), 0, CalendarModel::LastRole), QStringLiteral("2026-12-03"));
        QVERIFY(desk.proposal().isEmpty());
        // Not before the day asked.
        desk.move(QStringLiteral("visit"), -100);
        QVERIFY2(desk.proposal().contains(QStringLiteral("25 Nov")), qPrintable(desk.proposal()));
        desk.leaveIt();
        QVERIFY(desk.moving().isEmpty());
    }
    /// Balloon and hours are all that has to be said of a flight: it is planned for the coming Saturday.
    void flightsAndVisitsArePlannedInTheirForms() {
        m_shed.house.habits.setPerson(QStringLiteral("office"));
        In<EntryForm> form(m_shed.house);
        const auto save = [&] {
            form.save();
            return QTest::qWaitFor([&] { return !form.saving(); }, 20'000) && !form.isOpen();
        };
        form.begin(QStringLiteral("flight.planned"), QStringLiteral("QE-ONE"));
        QCOMPARE(FormHand::field(form, "on").value, QStringLiteral("2026-11-28"));
        FormHand::set(form, "on", "2026-12-05");
        FormHand::set(form, "minutes", "1:05");
        QVERIFY2(save(), qPrintable(form.problem()));
        form.begin(QStringLiteral("visit.planned"), QStringLiteral("QE-ONE"));
        FormHand::set(form, "station", "Another shed");
        FormHand::set(form, "from", "2027-02-01");
        FormHand::set(form, "to", "2027-02-03");
        const auto& works = FormHand::field(form, "covers").choices;
        QCOMPARE(works.size(), std::size_t{5});
        form.toggle(FormHand::rowOf(form, "covers"), works.front().value);
        QVERIFY2(save(), qPrintable(form.problem()));
        auto planned = m_shed.house.desk.ask([](Record& record) {
            return plannedFrom(record, *CivilDate::parse("2026-12-04"), *CivilDate::parse("2026-11-25"));
        });
        planned.waitForFinished();
        const auto told = planned.result();
        QVERIFY(told.has_value());
        QCOMPARE(told->flights.back().flight.use.minutes, Minutes(65));
        const auto& visit = told->visits.back().visit;
        QCOMPARE(visit.station, std::string("Another shed"));
        QCOMPARE(visit.covers.size(), std::size_t{1});
        QCOMPARE(visit.covers.front().requirement, RequirementId("hundred"));
    }
};

CROWNRING_TEST(AheadTest, QCoreApplication)

}

#include "ahead_test.moc"

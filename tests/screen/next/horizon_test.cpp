// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/gore_stack.h"
#include "screen/next/horizon_model.h"
#include "test_class.h"

#include <QAbstractItemModelTester>
#include <QTest>

namespace horizon_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

CivilDate day(const char* iso) { return *CivilDate::parse(iso); }

DueRow rowOf(const LimitState& limit, Standing standing) {
    DueRow row;
    row.state.standing = standing;
    row.state.governs = limit.clock;
    row.state.limits = {limit};
    row.state.limits.front().standing = standing;
    return row;
}

LimitState calendar(CivilDate due) {
    LimitState limit;
    limit.clock = ClockName::Months;
    limit.reach = CalendarReach{CivilDate(), due, Days(0), Days(0)};
    return limit;
}

LimitState hours(std::int64_t left) {
    LimitState limit;
    limit.clock = ClockName::Minutes;
    limit.reach = UsageReach{ClockCount(0), ClockCount(6000), ClockCount(left), ClockCount(left)};
    return limit;
}

}

class HorizonTest : public QObject {
    Q_OBJECT

private slots:
    void theDueDateIsTheLastGoodDay() {
        const auto on = day("2026-11-25");
        const auto binOf = [&](const char* due) {
            const auto standing = day(due) < on ? Standing::Tolerance : Standing::Nearing;
            return *horizonPlaces(rowOf(calendar(day(due)), standing), on).calendar;
        };
        QCOMPARE(binOf("2026-11-24"), int(OverdueBin));
        QCOMPARE(binOf("2026-11-25"), int(FirstWeekBin)); // due today is not overdue
        QCOMPARE(binOf("2026-12-01"), int(FirstWeekBin));
        QCOMPARE(binOf("2026-12-02"), int(FirstWeekBin) + 1);
        QCOMPARE(binOf("2027-11-23"), int(FirstWeekBin) + weeksShown - 1);
        QCOMPARE(binOf("2027-11-24"), int(LaterBin));
    }

    void whatComesUpToADay() {
        const auto on = day("2026-11-25");
        const auto last = addDays(on, 42);
        const auto comes = [&](const DueRow& row) { return comesUpTo(row, on, last); };
        QVERIFY(comes(rowOf(calendar(last), Standing::Clear))); // the day itself is one of them
        QVERIFY(!comes(rowOf(calendar(addDays(last, 1)), Standing::Nearing)));
        QVERIFY(comes(rowOf(hours(60), Standing::Nearing)));
        QVERIFY(!comes(rowOf(hours(6000), Standing::Clear)));
        auto both = rowOf(calendar(addDays(on, 300)), Standing::Clear);
        both.state.limits.push_back(rowOf(hours(60), Standing::Nearing).state.limits.front());
        both.state.standing = Standing::Nearing;
        QVERIFY(comes(both)); // its date lies beyond, its hours do not
        QVERIFY(comes(rowOf(calendar(addDays(on, 300)), Standing::Spent)));
        DueRow unproven;
        unproven.state.standing = Standing::Unproven;
        QVERIFY(comes(unproven));
        QVERIFY(!comes(rowOf(calendar(on), Standing::Closed)));
    }

    void whatUseGovernsHasNoDate() {
        const auto on = day("2026-11-25");
        const auto binOf = [&](std::int64_t left) {
            const auto places = horizonPlaces(rowOf(hours(left), Standing::Clear), on);
            return places.calendar == NoDateBin ? places.use.value_or(-1) : -1;
        };
        QCOMPARE(binOf(-30), 0);
        QCOMPARE(binOf(0), 0);
        QCOMPARE(binOf(1), 1);
        QCOMPARE(binOf(300), 1);
        QCOMPARE(binOf(301), 2);
        QCOMPARE(binOf(12'000), 6);
        QCOMPARE(binOf(12'001), 7);
    }

    void unknownStandsBeforeEverything() {
        DueRow row;
        row.state.standing = Standing::Unproven;
        QVERIFY((horizonPlaces(row, day("2026-11-25")) == screen::Places{UnprovenBin, std::nullopt}));
    }

    void whatIsDoneWithIsNotOnTheHorizon() {
        DueRow closed;
        closed.state.standing = Standing::Closed;
        QVERIFY(horizonPlaces(closed, day("2026-11-25")) == screen::Places());
        auto notRequired = rowOf(calendar(day("2026-01-01")), Standing::Lapsed);
        notRequired.state.because = Because::NotRequired;
        QVERIFY(horizonPlaces(notRequired, day("2026-11-25")) == screen::Places());
    }

    void whatHoursAndADateLimitStandsInBothLanes() {
        auto row = rowOf(hours(400), Standing::Clear);
        row.state.limits.push_back(calendar(day("2026-12-02")));
        QVERIFY((horizonPlaces(row, day("2026-11-25")) == screen::Places{FirstWeekBin + 1, 2}));
    }

    void whatIsPastIsOverdueWhateverItsDateSays() {
        const auto on = day("2026-11-25");
        auto row = rowOf(hours(-10), Standing::Lapsed);
        row.state.limits.push_back(calendar(day("2027-12-02")));
        QVERIFY((horizonPlaces(row, on) == screen::Places{OverdueBin, 0}));
        row.state.standing = Standing::Tolerance; // overdue by hours, the date still ahead
        QVERIFY((horizonPlaces(row, on) == screen::Places{OverdueBin, 0}));
        QVERIFY((horizonPlaces(rowOf(hours(-10), Standing::Tolerance), on) == screen::Places{OverdueBin, 0}));
        DueRow defect;
        defect.state.standing = Standing::Lapsed;
        defect.state.because = Because::Defect;
        QVERIFY((horizonPlaces(defect, on) == screen::Places{OverdueBin, std::nullopt}));
    }

    void whatIsExemptIsNotOverdueByItsDate() {
        auto exempt = rowOf(calendar(day("2026-01-01")), Standing::Clear);
        exempt.state.because = Because::Exempt;
        QVERIFY((horizonPlaces(exempt, day("2026-11-25")) == screen::Places{NoDateBin, std::nullopt}));
    }

    void whatIsOpenWithoutADateIsOnTheStripToo() {
        DueRow onlyAfterAnEvent;
        onlyAfterAnEvent.state.standing = Standing::Clear;
        QVERIFY((horizonPlaces(onlyAfterAnEvent, day("2026-11-25")) == screen::Places{NoDateBin, std::nullopt}));
    }

    void whatIsLeftOutIsSaid() {
        HorizonModel model;
        Tally off{};
        model.showCalendar(day("2026-11-25"), {}, off);
        QCOMPARE(model.leftOut(), QString());
        off[static_cast<std::size_t>(Reckoned::Closed)] = 4;
        off[static_cast<std::size_t>(Reckoned::NotRequired)] = 11;
        model.showCalendar(day("2026-11-25"), {}, off);
        QCOMPARE(model.leftOut(), QStringLiteral("Not on the strip: 4 closed, 11 not required."));
    }

    void theStripSaysItsMonths() {
        HorizonModel model;
        QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
        std::array<Tally, calendarBins> tallies{};
        tallies[OverdueBin][static_cast<std::size_t>(Standing::Lapsed)] = 3;
        model.showCalendar(day("2026-11-25"), tallies, {});
        const auto text = [&](int bin, int role) { return model.data(model.index(bin), role).toString(); };
        QCOMPARE(text(FirstWeekBin, HorizonModel::MonthRole), QStringLiteral("Dec")); // which begins in it
        QCOMPARE(text(FirstWeekBin + 1, HorizonModel::LabelRole), QStringLiteral("week from 2026-12-02"));
        QCOMPARE(text(FirstWeekBin, HorizonModel::SpokenRole), QStringLiteral("week from 2026-11-25: nothing"));
        QCOMPARE(text(OverdueBin, HorizonModel::SpokenRole), QStringLiteral("overdue: 3 lapsed"));
        QStringList months;
        for (int bin = FirstWeekBin; bin < LaterBin; ++bin)
            if (const auto month = text(bin, HorizonModel::MonthRole); !month.isEmpty())
                months += month;
        QCOMPARE(months.size(), 12); // from December to November
        QVERIFY(months.contains(QStringLiteral("Jan 2027")));
        model.showCalendar(day("2027-02-01"), tallies, {});
        QCOMPARE(text(FirstWeekBin, HorizonModel::MonthRole), QStringLiteral("Feb"));
        model.showCalendar(day("2026-11-09"), tallies, {});
        QCOMPARE(text(FirstWeekBin, HorizonModel::MonthRole), QStringLiteral("Nov"));
        model.showCalendar(day("2026-11-20"), tallies, {}); // December stands right behind, in its place
        QCOMPARE(text(FirstWeekBin, HorizonModel::MonthRole), QString());
        QCOMPARE(text(FirstWeekBin + 1, HorizonModel::MonthRole), QStringLiteral("Dec"));
    }

    void aFullBinStillShowsEveryStandingInIt() {
        QCOMPARE(GoreStack::thinned({0, 1, 2, 0, 0, 3, 0}, 10), (QList<int>{0, 1, 2, 0, 0, 3, 0}));
        const auto signs = GoreStack::thinned({1, 2, 0, 0, 0, 397, 0}, 8);
        QCOMPARE(signs[0], 1);
        QCOMPARE(signs[1], 1);
        QVERIFY(signs[5] >= 1 && signs[0] + signs[1] + signs[5] <= 8);
    }
};

CROWNRING_TEST(HorizonTest, QCoreApplication)

}

#include "horizon_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// When a row falls due: the calendar is certain, use is a band (02: "projected").

#include "forecast/dates.h"
#include "forecast/flown_logs.h"
#include "test_class.h"

#include <QtTest>

#include <array>

namespace dates_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const CivilDate today = dayOf("2025-12-31");

const UseAhead& ahead() {
    static const auto log = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
    static const auto told = aheadOf(log, patternOf({log}));
    return told;
}

LimitState byDate(const char* due) {
    const auto left = daysBetween(today, dayOf(due));
    return {ClockName::Months,
            CalendarReach{today, dayOf(due), left, left},
            left >= Days(0) ? Standing::Clear : Standing::Lapsed,
            {}};
}
LimitState byUse(ClockName clock, std::int64_t left) {
    return {clock,
            UsageReach{ClockCount(0), ClockCount(left), ClockCount(left), ClockCount(left)},
            left > 0 ? Standing::Clear : Standing::Lapsed,
            {}};
}
LimitState unknown() { return {ClockName::Minutes, {}, Standing::Unproven, {}}; }

Assessment row(std::initializer_list<LimitState> limits, Standing standing = Standing::Clear) {
    Assessment state;
    state.standing = standing;
    state.limits.assign(limits);
    return state;
}

std::optional<DateBand> told(const Assessment& state, Whichever whichever = Whichever::First) {
    DatesAhead dates(ahead());
    return fallsDue(state, whichever, &dates, today);
}

}

class DatesTest : public QObject {
    Q_OBJECT

private slots:
    void aDateIsCertain() {
        const auto band = told(row({byDate("2026-02-28")}));
        QVERIFY(band == (DateBand{dayOf("2026-02-28"), dayOf("2026-02-28"), dayOf("2026-02-28")}));
    }

    /// 45 flights of an hour every fourth day take half a year.
    void hoursAreUsedUpAtThePaceOfTheLog() {
        const auto band = told(row({byUse(ClockName::Minutes, 45 * 60)})).value();
        QVERIFY(band.p10 < band.p50 && band.p50 < band.p90);
        QVERIFY(dayOf("2026-06-15") < *band.p50 && *band.p50 < dayOf("2026-07-15"));
        QVERIFY(dayOf("2026-03-15") < *band.p10 && *band.p90 < dayOf("2026-11-15"));
    }
    void theChanceOnItsDayIsTheOneThatItIsTold() {
        const auto band = usedUp(ahead(), UseClock::Minutes, ClockCount(2700));
        QVERIFY(ahead().chanceOf(UseClock::Minutes, 2700, *band.p10) >= 0.1);
        QVERIFY(ahead().chanceOf(UseClock::Minutes, 2700, addDays(*band.p10, -1)) < 0.1);
        QVERIFY(ahead().chanceOf(UseClock::Minutes, 2700, *band.p90) >= 0.9);
        QVERIFY(ahead().chanceOf(UseClock::Minutes, 2700, addDays(*band.p90, -1)) < 0.9);
    }
    void moreIsUsedUpLater() {
        std::optional<CivilDate> before;
        for (const std::int64_t left : {60, 600, 3000, 9000}) {
            const auto band = usedUp(ahead(), UseClock::Minutes, ClockCount(left));
            QVERIFY(!before || *before < *band.p50);
            before = band.p50;
        }
    }

    /// Whichever is first, as rules have it.
    void theDateEndsTheBandWhereItComesFirst() {
        const auto band = told(row({byDate("2026-07-20"), byUse(ClockName::Minutes, 2700)})).value();
        QCOMPARE(*band.p90, dayOf("2026-07-20"));
        QVERIFY(*band.p10 < dayOf("2026-06-30"));
        const auto early = told(row({byUse(ClockName::Minutes, 2700), byDate("2026-01-05")}));
        QVERIFY(early == (DateBand{dayOf("2026-01-05"), dayOf("2026-01-05"), dayOf("2026-01-05")}));
    }
    /// Whichever is last: at the earliest on the date.
    void theDateBeginsTheBandWhereTheLastGoverns() {
        const auto band = told(row({byDate("2026-06-30"), byUse(ClockName::Minutes, 2700)}), Whichever::Last).value();
        QCOMPARE(*band.p10, dayOf("2026-06-30"));
        QVERIFY(*band.p90 > dayOf("2026-07-15"));
    }
    void ofTwoCountsTheOneThatEndsFirstGoverns() {
        const auto hours = told(row({byUse(ClockName::Minutes, 2700)}));
        QVERIFY(told(row({byUse(ClockName::Minutes, 2700), byUse(ClockName::Landings, 400)})) == hours);
        QVERIFY(told(row({byUse(ClockName::Landings, 10), byUse(ClockName::Minutes, 2700)})).value().p90 < hours->p10);
    }

    void whatIsUnprovenPastOrClosedHasNoDate() {
        QVERIFY(!told(row({unknown()}, Standing::Unproven)));
        QVERIFY(!told(row({byDate("2025-11-30")}, Standing::Lapsed)));
        QVERIFY(!told(row({byDate("2025-12-20")}, Standing::Tolerance)));
        QVERIFY(!told(row({byUse(ClockName::Minutes, 0)}, Standing::Spent)));
        QVERIFY(!told(row({}, Standing::Closed)));
        QVERIFY(!told(row({})));
    }
    void theLastGoodDayIsToday() { QCOMPARE(*told(row({byDate("2025-12-31")}))->p50, today); }

    /// Under `last` a limit that is past already has fallen due; the other one decides.
    void underTheLastWhatIsPastIsPassedOver() {
        const auto band = told(row({byDate("2025-11-30"), byUse(ClockName::Minutes, 2700)}), Whichever::Last);
        QVERIFY(band == told(row({byUse(ClockName::Minutes, 2700)})));
    }

    void whatIsNotFlownIsLimitedByTheCalendarAlone() {
        QVERIFY(!fallsDue(row({byUse(ClockName::Minutes, 2700)}), Whichever::First, nullptr, today));
        const auto band =
            fallsDue(row({byUse(ClockName::Minutes, 60), byDate("2027-02-28")}), Whichever::First, nullptr, today);
        QCOMPARE(*band->p10, dayOf("2027-02-28"));
        QVERIFY(!fallsDue(row({byUse(ClockName::Minutes, 60), byDate("2027-02-28")}), Whichever::Last, nullptr, today));
    }
    void beyondTwentyYearsNoDayIsNamed() {
        const auto band = told(row({byUse(ClockName::Minutes, 60LL * 1750)})).value();
        QVERIFY(band.p10 && !band.p90);
        QVERIFY(!told(row({byUse(ClockName::Minutes, 60LL * 100'000)})));
    }
    /// A row that a date ends leaves nothing wrong behind for one that it does not.
    void whatIsRememberedIsWhatIsToldAlone() {
        DatesAhead dates(ahead());
        const auto rowOfUse = row({byUse(ClockName::Minutes, 2700)});
        const auto early = row({byDate("2026-01-05"), byUse(ClockName::Minutes, 2700)});
        const auto late = row({byDate("2026-07-20"), byUse(ClockName::Minutes, 2700)});
        for (const auto& each : {early, rowOfUse, late, early, rowOfUse})
            QVERIFY(fallsDue(each, Whichever::First, &dates, today) == told(each));
    }
    void inspectionsHaveNoDate() {
        auto limit = byUse(ClockName::Inspections, 1);
        QVERIFY(!told(row({limit})));
        QCOMPARE(*told(row({limit, byDate("2026-05-31")}))->p50, dayOf("2026-05-31"));
    }
};

CROWNRING_TEST(DatesTest)

}

#include "dates_test.moc"

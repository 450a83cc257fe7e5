// SPDX-License-Identifier: GPL-3.0-or-later

/// A directive in time. Directives are invented; that no tolerance applies is from memory (see the header).

#include "parts/directive_due.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace directive_due_test {

using namespace crownring;

namespace {

CivilDate day(const char* text) { return CivilDate::parse(text).value(); }
Figures hours(std::int64_t count) { return {Minutes(count * 60), Landings(0), Inflations(0)}; }
constexpr Figures unknown{std::nullopt, std::nullopt, std::nullopt};

Limit eachHours(std::int64_t count) {
    return {.clock = ClockName::Minutes, .every = count * 60, .first = {}, .lookAhead = {}};
}
Limit eachMonths(std::int64_t count) {
    return {.clock = ClockName::Months, .every = count, .first = {}, .lookAhead = {}};
}

Directive directive(const char* number = "2026-01", const char* revision = "0", const char* effective = "2026-03-01") {
    Directive made;
    made.number = number;
    made.revision = revision;
    made.issuer = "Authority";
    made.state = "QE";
    made.effective = day(effective);
    return made;
}
Directive within(std::vector<Limit> first, std::vector<Limit> repeat = {}) {
    auto made = directive();
    made.first.within = std::move(first);
    made.repeat = std::move(repeat);
    return made;
}
Compliance done(const char* on, Figures clock, bool isTerminating = false) {
    return {day(on), clock, "inspected", isTerminating};
}

std::string inForce(const std::vector<Directive>& all, const char* on) {
    std::string told;
    for (const auto* each : inForceOn(all, day(on)))
        told += each->number + "/" + each->revision + " ";
    return told;
}

}

class DirectiveDueTest : public QObject {
    Q_OBJECT

private slots:
    void beforeTheNextFlightIsAtOnceUntilItIsDone() {
        auto at = directive();
        at.first.beforeFlight = true;
        QVERIFY(standingOf(at, {}, hours(50), hours(50), day("2026-03-01")).standing == Standing::Lapsed);
        const std::vector all{done("2026-03-02", hours(50))};
        QVERIFY(standingOf(at, all, hours(50), hours(51), day("2026-03-05")).standing == Standing::Closed);
    }
    void byADateItsLastDayIsGood() {
        auto at = directive();
        at.first.by = day("2026-06-30");
        QVERIFY(standingOf(at, {}, hours(0), hours(0), day("2026-03-05")).standing == Standing::Clear);
        QVERIFY(standingOf(at, {}, hours(0), hours(0), day("2026-06-30")).standing == Standing::Nearing);
        QVERIFY(standingOf(at, {}, hours(0), hours(0), day("2026-07-01")).standing == Standing::Lapsed);
    }
    void firstByTheClockOfItsDayThenByThatOfEachCompliance() {
        const auto at = within({eachHours(10)}, {eachHours(100)});
        const auto first = standingOf(at, {}, hours(50), hours(55), day("2026-03-20"));
        QVERIFY(first.standing == Standing::Nearing && first.next->usage()->left == ClockCount(300));
        QVERIFY(standingOf(at, {}, hours(50), hours(60), day("2026-03-20")).standing == Standing::Lapsed);
        const std::vector all{done("2026-03-20", hours(58))};
        const auto again = standingOf(at, all, hours(50), hours(70), day("2026-04-01"));
        QVERIFY(again.standing == Standing::Clear && again.next->usage()->due == ClockCount(158 * 60));
        QVERIFY(standingOf(at, all, hours(50), hours(158), day("2026-05-01")).standing == Standing::Lapsed);
    }
    void ofHoursAndMonthsTheWorseGoverns() {
        const auto at = within({eachHours(100), eachMonths(1)});
        const auto late = standingOf(at, {}, hours(0), hours(5), day("2026-04-02"));
        QVERIFY(late.standing == Standing::Lapsed && late.next->clock == ClockName::Months);
    }
    void aTerminatingActionClosesItForGood() {
        const auto at = within({eachHours(10)}, {eachHours(100)});
        const std::vector all{done("2026-03-20", hours(58), true), done("2026-04-20", hours(70))};
        QVERIFY(standingOf(at, all, hours(50), hours(900), day("2030-01-01")).standing == Standing::Closed);
    }
    void whatWasDoneBeforeItCameCounts() {
        const auto at = within({eachHours(10)});
        const std::vector all{done("2026-01-20", hours(20))};
        QVERIFY(standingOf(at, all, hours(50), hours(90), day("2026-06-01")).standing == Standing::Closed);
    }
    void anUnknownClockIsUnproven() {
        const auto at = within({eachHours(10)}, {eachHours(100)});
        QVERIFY(standingOf(at, {}, unknown, hours(5), day("2026-03-02")).standing == Standing::Unproven);
        const std::vector all{done("2026-03-20", unknown)};
        QVERIFY(standingOf(at, all, hours(0), hours(5), day("2026-03-22")).standing == Standing::Unproven);
        QVERIFY(standingOf(directive(), {}, hours(0), hours(5), day("2026-03-22")).standing == Standing::Unproven);
    }
    /// A tolerance in a limit, whoever wrote it, gives not a minute and not a day.
    void noToleranceEverApplies() {
        const bool holds = rc::check("no tolerance ever applies", [] {
            auto limit = *rc::gen::element(eachHours(*rc::gen::inRange(1, 50)), eachMonths(*rc::gen::inRange(1, 6)));
            const auto strict = within({limit}, {limit});
            limit.tolerance = *rc::gen::inRange(1, 1000);
            const auto lax = within({limit}, {limit});
            std::vector<Compliance> all;
            if (*rc::gen::inRange(0, 2) == 1)
                all.push_back(done("2026-03-10", hours(*rc::gen::inRange(0, 30))));
            const auto now = hours(*rc::gen::inRange(0, 100));
            const auto today = addDays(day("2026-03-01"), *rc::gen::inRange(0, 300));
            const auto found = standingOf(lax, all, hours(0), now, today).standing;
            RC_ASSERT((found == standingOf(strict, all, hours(0), now, today).standing));
            RC_ASSERT((found != Standing::Tolerance));
        });
        QVERIFY(holds);
    }

    void theLatestRevisionHoldsFromItsDayOn() {
        const std::vector all{directive("1", "0", "2026-01-01"), directive("1", "1", "2026-05-01"),
                              directive("2", "0", "2026-02-01")};
        QCOMPARE(inForce(all, "2025-12-31"), std::string());
        QCOMPARE(inForce(all, "2026-03-01"), std::string("1/0 2/0 "));
        QCOMPARE(inForce(all, "2026-05-01"), std::string("1/1 2/0 "));
    }
    void whatIsSupersededIsHistoryFromThatDayOn() {
        auto successor = directive("9", "0", "2026-06-01");
        successor.supersedes = {"1"};
        const std::vector all{directive("1", "0", "2026-01-01"), successor};
        QCOMPARE(inForce(all, "2026-05-31"), std::string("1/0 "));
        QCOMPARE(inForce(all, "2026-06-01"), std::string("9/0 "));
    }
    void thoseThatSupersedeEachOtherBindAll() {
        auto a = directive("A", "0", "2026-01-01"), b = directive("B", "0", "2026-01-02"),
             c = directive("C", "0", "2026-01-03");
        a.supersedes = {"B"};
        b.supersedes = {"A"};
        QCOMPARE(inForce({a, b}, "2026-02-01"), std::string("A/0 B/0 "));
        b.supersedes = {"C"};
        c.supersedes = {"A"};
        QCOMPARE(inForce({a, b, c}, "2026-02-01"), std::string("A/0 B/0 C/0 "));
        // What stands outside the ring and is superseded out of it is history.
        c.supersedes = {"A", "D"};
        QCOMPARE(inForce({a, b, c, directive("D")}, "2026-04-01"), std::string("A/0 B/0 C/0 "));
    }
    void aBulletinTakesNoMandatoryDirectiveAway() {
        const auto mandatory = directive("1", "0", "2026-01-01");
        auto bulletin = directive("9", "0", "2026-02-01");
        bulletin.supersedes = {"1"};
        bulletin.force = Force::Recommended;
        QCOMPARE(inForce({mandatory, bulletin}, "2026-03-01"), std::string("1/0 9/0 "));
        bulletin.force = Force::Mandatory;
        bulletin.issuedBy = IssuedBy::Manufacturer; // of the same name
        QCOMPARE(inForce({mandatory, bulletin}, "2026-03-01"), std::string("1/0 9/0 "));
    }
    void ofOneDayTheLaterRevisionHoldsWheneverItCame() {
        auto former = directive("1", "9", "2026-01-01");
        former.force = Force::Recommended;
        const auto later = directive("1", "10", "2026-01-01");
        QCOMPARE(inForce({later, former}, "2026-03-01"), std::string("1/10 "));
        QCOMPARE(inForce({former, later}, "2026-03-01"), std::string("1/10 "));
        // Which of "A" and "10" is the later nobody can tell: the harder one holds.
        former.revision = "A";
        QCOMPARE(inForce({later, former}, "2026-03-01"), std::string("1/10 "));
        QCOMPARE(inForce({former, later}, "2026-03-01"), std::string("1/10 "));
    }
    void anotherStatesNumberIsAnotherDirective() {
        auto other = directive("1", "0", "2026-02-01");
        other.state = "QN";
        auto successor = directive("9", "0", "2026-06-01");
        successor.state = "QN";
        successor.supersedes = {"1"};
        QCOMPARE(inForce({directive("1", "A", "2026-01-01"), other, successor}, "2026-07-01"), std::string("1/A 9/0 "));
    }
    void theOrderInWhichRevisionsCameDoesNotMatter() {
        QCOMPARE(inForce({directive("1", "1", "2026-05-01"), directive("1", "0", "2026-01-01")}, "2026-05-01"),
                 std::string("1/1 "));
    }
};

CROWNRING_TEST(DirectiveDueTest)

}

#include "directive_due_test.moc"

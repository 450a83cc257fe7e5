// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "screen/desk/day.h"
#include "test_class.h"
#include "words/sentences.h"
#include "words/words.h"

#include <QTest>

namespace words_test {

using namespace crownring;
using namespace crownring::screen;
using namespace crownring::words;

class WordsTest : public QObject {
    Q_OBJECT

private slots:
    void aDefectIsToldByWhatWasFoundAndOnWhat() {
        const auto said = [](Body body) {
            Entry entry;
            entry.body = std::move(body);
            return Sentences::of(entry, {});
        };
        DefectFound found{.defect = DefectId("2026-11-10 0192"), .item = ItemId("K-1"), .what = "a cracked frame"};
        found.severity = Severity::Grounding;
        QCOMPARE(said(found), QStringLiteral("Defect on K-1, a danger to flight: a cracked frame (2026-11-10 0192)"));
        const DefectCleared cleared{
            .defect = found.defect, .item = found.item, .what = "welded", .ref = "WO 12", .inspection = {}};
        QCOMPARE(said(cleared), QStringLiteral("Defect on K-1 rectified: welded (WO 12, 2026-11-10 0192)"));
    }

    void whatIsRequiredOnceIsNoInterval() {
        Requirement bulletin;
        bulletin.once = true;
        bulletin.limits = {{.clock = ClockName::Days, .every = 30, .first = 30}};
        bulletin.startsFrom = StartsFrom::Entered;
        QCOMPARE(Words::limits(bulletin), QStringLiteral("once, within 30 days of the day on which it was entered"));
        bulletin.startsFrom = StartsFrom::Made;
        QCOMPARE(Words::limits(bulletin), QStringLiteral("once, within 30 days of the day on which it was made"));
        bulletin.startsFrom = StartsFrom::Done;
        QCOMPARE(Words::limits(bulletin), QStringLiteral("once, unproven until it is done"));
    }

    void whatIsLeft() {
        LimitState limit;
        limit.clock = ClockName::Minutes;
        const auto use = [&](std::int64_t left) {
            limit.reach = UsageReach{ClockCount(0), ClockCount(600), ClockCount(left), ClockCount(left)};
            return Words::left(limit);
        };
        const auto days = [&](std::int64_t left) {
            limit.reach = CalendarReach{CivilDate(), CivilDate(), Days(left), Days(left)};
            return Words::left(limit);
        };
        QCOMPARE(use(564), QStringLiteral("9:24\u00a0h"));
        QCOMPARE(use(-130), QStringLiteral("2:10\u00a0h past"));
        QCOMPARE(use(0), QStringLiteral("nothing left"));
        limit.clock = ClockName::Months;
        QCOMPARE(days(0), QStringLiteral("last day")); // the due date is the last good day
        QCOMPARE(days(1), QStringLiteral("1 day"));
        limit.reach = {};
        QCOMPARE(Words::left(limit), QString());
    }

    void unknownFiguresSaySo() {
        Figures figures{Minutes{24'750}, std::nullopt, Inflations{1}};
        QCOMPARE(Words::figures(figures), QStringLiteral("412:30\u00a0h · unknown landings · 1 inflation"));
    }

    void aRuleInOneSentence() {
        Requirement annual;
        annual.limits = {{.clock = ClockName::Minutes,
                          .every = 6000,
                          .first = {},
                          .tolerance = 600,
                          .day = DayRule::Same,
                          .lookAhead = {}},
                         {.clock = ClockName::Months,
                          .every = 12,
                          .first = {},
                          .tolerance = 1,
                          .day = DayRule::Same,
                          .lookAhead = {}}};
        QCOMPARE(Words::limits(annual),
                 QStringLiteral("every 100:00\u00a0h, tolerance 10:00\u00a0h or every 12 months, tolerance 1 month, "
                                "whichever comes first"));
    }

    void aProblemSaysWhatWhereAndTheMend() {
        const Problem problem{EntryFault::UnknownKey, {"flight.logged"}, {"fleet.jsonl", 12, "minuts"}};
        QCOMPARE(Words::problem(problem), QStringLiteral("fleet.jsonl, line 12, minuts: Not a key of flight.logged. "
                                                         "Leave it out or mend its spelling."));
    }

    void everyStandingAndKindHasAWord() {
        for (int at = 0; at < standingCount; ++at)
            QVERIFY(!Words::standing(static_cast<Standing>(at)).isEmpty());
        for (int at = 0; at < itemKindCount; ++at)
            QVERIFY(!Words::kind(static_cast<ItemKind>(at)).isEmpty() &&
                    !Words::kinds(static_cast<ItemKind>(at)).isEmpty());
        for (const auto name : kindNames())
            QVERIFY(Sentences::kind(name) != QString::fromUtf8(name.data(), qsizetype(name.size())));
        for (int at = 0; at < questionKindCount; ++at)
            QVERIFY(!Sentences::question(static_cast<Question::Kind>(at)).isEmpty());
    }

    void theDayIsAskedInOneForm() {
        Day day(*CivilDate::parse("2026-11-25"));
        QVERIFY(day.isToday());
        QVERIFY(!day.ask(QStringLiteral("2026-02-30")).isEmpty());
        QVERIFY(day.isToday());
        QVERIFY(day.ask(QStringLiteral(" 2027-03-01 ")).isEmpty());
        QCOMPARE(day.distance(), QStringLiteral("in 96 days"));
        day.stepMonths(-4);
        QCOMPARE(day.asked(), QStringLiteral("2026-11-01"));
        QCOMPARE(day.distance(), QStringLiteral("24 days ago"));
    }

    void midnightMovesTheDayUnlessAnotherWasChosen() {
        Day day(*CivilDate::parse("2026-11-25"));
        day.setToday(*CivilDate::parse("2026-11-26"));
        QCOMPARE(day.asked(), QStringLiteral("2026-11-26"));
        day.setAsked(*CivilDate::parse("2027-01-31"));
        day.setToday(*CivilDate::parse("2026-11-27"));
        QCOMPARE(day.asked(), QStringLiteral("2027-01-31"));
    }
};

CROWNRING_TEST(WordsTest, QCoreApplication)

}

#include "words_test.moc"

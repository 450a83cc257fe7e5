// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/clock.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>

namespace clock_test {

using namespace crownring;

namespace {

const ItemId basket("B1");
const CivilDate entered = *CivilDate::parse("2024-05-01");

Stamp at(const char* on, int hour, const char* id) {
    return {Moment(*CivilDate::parse(on), TimeOfDay(hour, 0)), EntryId(id)};
}

struct Flight {
    Stamp stamp;
    Usage use;
};

UsedBefore flown(std::vector<Flight> flights) {
    return [flights = std::move(flights)](const Stamp& before) {
        Usage sum;
        for (const auto& flight : flights)
            if (flight.stamp < before && flight.stamp.at >= Moment::startOf(entered))
                sum += flight.use;
        return sum;
    };
}

Accomplishment done(const Stamp& stamp, std::optional<int> minutes) {
    Accomplishment one{RequirementId("annual"), stamp, {}, {}, ""};
    if (minutes)
        one.stated.minutes = Minutes(*minutes);
    return one;
}

const std::vector<Flight> twoFlights = {{at("2024-05-10", 12, "f1"), {Minutes(60), Landings(1), Inflations(1)}},
                                        {at("2024-06-10", 12, "f2"), {Minutes(90), Landings(2), Inflations(1)}}};
const Stamp lateInJune = at("2024-06-20", 12, "z");

}

class ClockTest : public QObject {
    Q_OBJECT
private slots:
    void theClockIsWhatWasBroughtForwardAndFlownSince() {
        const ClockOrigin origin{entered, {Minutes(600), Landings(10), Inflations(9)}};
        QVERIFY((clockBefore(lateInJune, origin, {}, flown(twoFlights)) ==
                 Figures{Minutes(750), Landings(13), Inflations(11)}));
        QVERIFY((clockBefore(at("2024-05-10", 12, "f1"), origin, {}, flown(twoFlights)) ==
                 Figures{Minutes(600), Landings(10), Inflations(9)}));
    }

    void anUnknownClockIsKnownFromTheFirstAccomplishmentThatStatesIt() {
        const ClockOrigin origin{entered, {std::nullopt, Landings(0), Inflations(0)}};
        const std::vector history = {done(at("2024-05-20", 18, "d1"), 500), done(at("2024-06-15", 18, "d2"), 999)};
        QVERIFY(!clockBefore(at("2024-05-20", 17, "x"), origin, history, flown(twoFlights)).minutes);
        QCOMPARE(clockBefore(at("2024-06-01", 12, "x"), origin, history, flown(twoFlights)).minutes->value(), 500);
        // A figure stated later is a question; it does not move the item's own clock.
        QCOMPARE(clockBefore(lateInJune, origin, history, flown(twoFlights)).minutes->value(), 590);
    }

    void aFigureStatedOnPaperFromBeforeTheItemWasEnteredDoesNotMakeTheClockKnown() {
        const ClockOrigin origin{entered, {std::nullopt, Landings(0), Inflations(0)}};
        const std::vector history = {done(at("2024-04-20", 18, "d1"), 500)};
        QVERIFY(!clockBefore(lateInJune, origin, history, flown(twoFlights)).minutes);
    }

    void eachAccomplishmentHasTheStatedClockOrElseTheComputedOne() {
        const ClockOrigin origin{entered, {Minutes(600), Landings(10), Inflations(10)}};
        std::vector history = {done(at("2024-04-20", 18, "d0"), 550), done(at("2024-05-20", 18, "d1"), std::nullopt),
                               done(at("2024-06-15", 18, "d2"), 750)};
        QVERIFY(settleClocks(basket, history, origin, flown(twoFlights)).empty());
        QVERIFY((history[0].clock == Figures{Minutes(550), std::nullopt, std::nullopt}));
        QVERIFY((history[1].clock == Figures{Minutes(660), Landings(11), Inflations(11)}));
        QVERIFY((history[2].clock == Figures{Minutes(750), Landings(13), Inflations(12)}));
    }

    void aStatedFigureThatDiffersOrGoesBackwardIsAQuestion() {
        const ClockOrigin origin{entered, {Minutes(600), Landings(10), Inflations(10)}};
        std::vector history = {done(at("2024-05-20", 18, "d1"), 700), done(at("2024-06-15", 18, "d2"), 650)};
        const auto questions = settleClocks(basket, history, origin, flown(twoFlights));
        QCOMPARE(questions.size(), std::size_t(2));
        QCOMPARE(questions[0].kind, Question::Kind::ClockDiffers);
        QCOMPARE(questions[0].stamp, history[0].stamp);
        QCOMPARE(questions[1].kind, Question::Kind::ClockBackward);
        QCOMPARE(questions[1].stamp, history[1].stamp);
        // The paper still decides what the next interval counts from.
        QCOMPARE(history[1].clock.minutes->value(), 650);
    }

    void theClockNeverRunsBackward() {
        QVERIFY(rc::check("whatever was flown and stated", [] {
            const auto stampIn = [](int id) {
                return Stamp{Moment(Moment::startOf(entered).minutes() + *rc::gen::inRange(0, 50)),
                             EntryId("e" + std::to_string(id))};
            };
            std::vector<Flight> flights;
            for (int i = *rc::gen::inRange(0, 8); i > 0; --i)
                flights.push_back({stampIn(i), {Minutes(*rc::gen::inRange(1, 100)), Landings(1), Inflations(1)}});
            std::vector<Accomplishment> history;
            for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
                history.push_back(done(stampIn(100 + i), *rc::gen::arbitrary<bool>()
                                                             ? std::optional(*rc::gen::inRange(0, 500))
                                                             : std::nullopt));
            std::sort(history.begin(), history.end(), [](const auto& a, const auto& b) { return a.stamp < b.stamp; });
            const ClockOrigin origin{
                entered,
                {*rc::gen::arbitrary<bool>() ? std::optional(Minutes(600)) : std::nullopt, Landings(0), Inflations(0)}};
            const auto used = flown(flights);
            std::optional<Minutes> before;
            for (int minute = 0; minute <= 50; ++minute) {
                const auto now = clockBefore(Stamp::before(Moment(Moment::startOf(entered).minutes() + minute)), origin,
                                             history, used)
                                     .minutes;
                RC_ASSERT(!before || (now && *now >= *before));
                before = now;
            }
        }));
    }
};

CROWNRING_TEST(ClockTest)

}

#include "clock_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// Wear through a real record. Limits and readings are invented; the arithmetic is held against R in tests/parts.

#include "answers/due.h"
#include "answers/parts/wear.h"
#include "problem/faults/reading_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* basket = R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","type":"T"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"basket","quantity":"runner-thickness","least":12,"unit":"mm","source":"invented for tests"})";

std::string flown(const std::string& on, int hours) {
    std::string lines;
    for (int day = 0; day * 100 < hours; ++day)
        lines += R"({"entry":"flight.logged","on":")" + on + R"(","balloon":"QE-ONE","minutes":)" +
                 std::to_string(std::min(100, hours - day * 100) * 60) + R"(,"landings":1})" + "\n";
    return lines;
}
std::string runner(const std::string& on, const std::string& value,
                   const std::string& more = R"(,"place":"runner-1")") {
    return R"({"entry":"reading.taken","item":"B1","quantity":"runner-thickness","unit":"mm","on":")" + on +
           R"(","value":)" + value + more + "}";
}

constexpr const char* wearVisit =
    R"({"entry":"person.entitled","on":"2024-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"inspection.opened","on":"2024-04-25","inspection":"V","visit":"part-ml-rectification","items":["B1"]})";
constexpr const char* wearReadAgain =
    R"({"entry":"reading.taken","item":"B1","quantity":"runner-thickness","unit":"mm","on":"2024-04-26","value":20.1,"place":"runner-1","inspection":"V"})";
constexpr const char* wearReleased =
    R"({"entry":"inspection.closed","on":"2024-04-27","inspection":"V","outcome":"released","signatory":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1","statement":"released"})";
constexpr const char* newRunner =
    R"({"entry":"repair.made","on":"2024-04-10","item":"B1","method":"new runner","place":"runner-1"})";
constexpr const char* rewovenElsewhere =
    R"({"entry":"repair.made","on":"2024-04-10","item":"B1","method":"rewoven","place":"long-side-2"})";
constexpr const char* sewnAtTheRim =
    R"({"entry":"repair.made","on":"2024-04-10","item":"B1","method":"sewn","place":"rim"})";
constexpr const char* onRunner2 = R"(,"place":"runner-2")";
constexpr const char* onRunner1AtSeven = R"(,"place":"runner-1","time":"19:00Z")";
constexpr const char* anEnvelope = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"})";
constexpr const char* runnerOfAnEnvelope =
    R"({"entry":"reading.taken","on":"2024-02-01","item":"E1","quantity":"runner-thickness","value":20,"unit":"mm"})";
constexpr const char* tellTaleOnAFloor =
    R"({"entry":"reading.taken","on":"2024-02-01","item":"E1","quantity":"tell-tale","value":90,"unit":"degC","place":"floor"})";
std::string wicker(const std::string& on, const std::string& value) {
    return R"({"entry":"reading.taken","item":"B1","quantity":"wicker-break","unit":"mm","place":"long-side-1","on":")" +
           on + R"(","value":)" + value + "}";
}

/// 20.0, 18.9, 18.1, 16.8 mm at 0, 100, 200 and 300 hours.
void wearRunner(Record& record) {
    posted(record, basket);
    posted(record, runner("2024-01-02", "20.0"));
    posted(record, flown("2024-02-01", 100) + runner("2024-02-02", "18.9"));
    posted(record, flown("2024-03-01", 100) + runner("2024-03-02", "18.1"));
    posted(record, flown("2024-04-01", 100) + runner("2024-04-02", "16.8"));
}

std::vector<WearSeries> wear(Record& record, const char* on = "2024-05-01") {
    return wearOf(record, ItemId("B1"), day(on)).value();
}

Fault faultOf(Record& record, const std::string& lines) {
    const auto problems = problemsOf(record, lines);
    if (problems.size() != 1 || !isSaid(problems.front()))
        throw std::runtime_error("not refused for one reason");
    return problems.front().fault;
}

}

class WearAnswerTest : public QObject {
    Q_OBJECT

private slots:
    /// By hand: the line meets 12 mm at 770.19 h (tests/parts/wear_test), the clock shows 300 h.
    void hoursToTheLimitCountFromTheClock() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        const auto series = wear(*scratch.record);
        QCOMPARE(series.size(), std::size_t{1});
        const auto& one = series.front();
        QCOMPARE(placeSlug(one.place), std::string("runner-1"));
        QCOMPARE(one.readings, std::size_t{4});
        QVERIFY(std::abs(one.trend->slope.middle + 0.0104) < 1e-12);
        QVERIFY(one.toLimit && std::abs(one.toLimit->middle.value() - 470.1923) < 1e-3);
        QVERIFY(std::abs(one.toLimit->low.value() - 336.3829) < 1e-3);
        QCOMPARE(one.limit->value(), 12.0);
        QVERIFY(!one.why);
    }
    void onAnEarlierDayOnlyWhatWasKnownThenIsTold() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        const auto series = wear(*scratch.record, "2024-02-20");
        QCOMPARE(series.front().readings, std::size_t{2});
        QVERIFY(series.front().why == NoForecast::TooFewReadings);
        QVERIFY(!series.front().trend && !series.front().toLimit);
    }
    void eachPlaceWearsForItself() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, runner("2024-04-02", "19.5", onRunner2));
        const auto series = wear(*scratch.record);
        QCOMPARE(series.size(), std::size_t{2});
        QCOMPARE(placeSlug(series.back().place), std::string("runner-2"));
        QVERIFY(series.back().why == NoForecast::TooFewReadings);
    }
    void aNewRunnerBeginsItsOwnSeries() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, newRunner);
        QVERIFY(wear(*scratch.record).empty());
        posted(*scratch.record, runner("2024-04-10", "20.1", onRunner1AtSeven));
        const auto series = wear(*scratch.record);
        QCOMPARE(series.front().readings, std::size_t{1});
        QCOMPARE(series.front().latest.value(), 20.1);
    }
    void aRepairElsewhereLeavesIt() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, rewovenElsewhere);
        QCOMPARE(wear(*scratch.record).front().readings, std::size_t{4});
    }
    /// A reading beyond its wear limit grounds like any other; what the line says is then of no use.
    void aReadingBeyondItsLimitGroundsAndIsForetoldNothing() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, runner("2024-04-20", "11.5"));
        QVERIFY(wear(*scratch.record).front().why == NoForecast::Beyond);
        const auto grounds = [&] {
            const auto list = due(*scratch.record, {}, day("2024-05-01")).value();
            return std::ranges::any_of(list.rows, [](const DueRow& row) {
                return row.requirement->id.text() == "reading/runner-thickness" &&
                       row.state.standing == Standing::Lapsed && row.requirement->force == Force::Mandatory &&
                       row.requirement->blocks == Blocks::Flight;
            });
        };
        QVERIFY(grounds());
        posted(*scratch.record, runner("2024-04-21", "19", onRunner2));
        QVERIFY2(grounds(), "the reading of another runner puts nothing right");
        posted(*scratch.record, runner("2024-04-22", "20"));
        QVERIFY(grounds()); // nobody answers for it
        posted(*scratch.record, wearVisit);
        posted(*scratch.record, wearReadAgain);
        letIn(*scratch.record, wearReleased);
        QVERIFY(!grounds());
    }
    void withoutALimitOfTheTypeTheTrendAloneIsTold() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        for (const auto* each : {"2024-01-02", "2024-02-02", "2024-03-02", "2024-04-02"})
            posted(*scratch.record, wicker(each, std::to_string(10 + each[6])));
        const auto series = wear(*scratch.record);
        const auto wicker = std::ranges::find(series, "wicker-break", &WearSeries::quantity);
        QVERIFY(wicker != series.end() && wicker->trend && !wicker->limit);
        QVERIFY(wicker->why == NoForecast::NoLimit);
    }
    /// History from paper: nobody knows how many hours the basket had then.
    void aReadingOfUnknownHoursIsCountedAsLeftOut() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, runner("2023-06-01", "21"));
        QCOMPARE(wear(*scratch.record).front().leftOut, std::size_t{1});
        QCOMPARE(wear(*scratch.record).front().readings, std::size_t{4});
    }

    void whatIsReadOfABasketIsNotReadOfAnEnvelope() {
        const Scratch scratch;
        posted(*scratch.record, anEnvelope);
        QCOMPARE(faultOf(*scratch.record, runnerOfAnEnvelope), Fault(ReadingFault::OtherItem));
        QCOMPARE(faultOf(*scratch.record, tellTaleOnAFloor), Fault(ReadingFault::NoPlaceOfIt));
    }
    /// What was written comes back from the projections with its place.
    void aPlaceOfABasketIsKept() {
        const Scratch scratch;
        wearRunner(*scratch.record);
        posted(*scratch.record, sewnAtTheRim);
        const auto history = fabricOf(*scratch.record, day("2024-05-01")).front();
        QVERIFY(history.readings.front().body.place.basket == BasketPlace::Runner1);
        QVERIFY(history.repairs.front().body.place.basket == BasketPlace::Rim);
    }
};

CROWNRING_TEST(WearAnswerTest, QCoreApplication)

#include "wear_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::shed;

namespace {

constexpr auto both = R"("limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])";

Requirement from(const char* origin, const std::string& more = "") {
    return rule(std::string(both) + R"(, "starts_from": ")" + origin + "\"" + more);
}

}

/// What is counted from before anything was done, and history that is older than the record.
class OriginsTest : public QObject {
    Q_OBJECT
private slots:
    void withNothingToCountFromItIsUnproven() {
        const auto state = on("2024-01-01", from("done"), Item().made("2023-01-01").at(1.0));
        COMPARE_STANDING(state.standing, "unproven");
        QCOMPARE(state.governs, std::optional(ClockName::Minutes));
        for (const auto& limit : state.limits)
            QVERIFY(!limit.isProven() && !limit.share);
    }
    void fromManufactureTheClockStartsAtZero() {
        const auto state =
            on("2024-01-01", from("made"), Item().made("2023-06-15").entered("2023-09-01", clockOf(300)).at(6.0));
        COMPARE_DUE(state.limits.at(0), "6000");
        COMPARE_DUE(state.limits.at(1), "2024-06-15");
        QCOMPARE(lastOf(state.limits.at(0)), std::optional<std::int64_t>(0));
        QCOMPARE(lastOf(state.limits.at(1)), std::optional<std::int64_t>(day("2023-06-15").dayNumber()));
    }
    void fromEntryTheClockStartsAtWhatWasBroughtForward() {
        const auto state = on("2024-01-01", from("entered"), Item().entered("2023-09-01", clockOf(300)).at(6.0));
        COMPARE_DUE(state.limits.at(0), "6300");
        COMPARE_DUE(state.limits.at(1), "2024-09-01");
        QCOMPARE(lastOf(state.limits.at(0)), std::optional<std::int64_t>(300));
    }
    void aMonthStampedIsGoodThroughItsLastDay_data() {
        QTest::addColumn<QString>("limit");
        QTest::addColumn<QString>("due");
        QTest::newRow("months, day rule same (regulations 7 D1)") << R"({"clock": "months", "every": 1})"
                                                                  << "2016-06-30";
        QTest::newRow("months past February") << R"({"clock": "months", "every": 9})"
                                              << "2017-02-28";
        QTest::newRow("days from the last day of the month") << R"({"clock": "days", "every": 10})"
                                                             << "2016-06-10";
    }
    void aMonthStampedIsGoodThroughItsLastDay() {
        QFETCH(QString, limit);
        QFETCH(QString, due);
        const auto requirement = rule(R"("starts_from": "made", "limits": [)" + limit.toStdString() + "]");
        COMPARE_DUE(on("2016-06-01", requirement, Item().made("2016-05")).limits.at(0), due);
    }
    void whereManufactureIsUnknownOnlyTheCalendarIsUnproven() {
        const auto state = on("2024-01-01", from("made"), Item().at(50.0));
        COMPARE_STANDING(state.limits.at(0).standing, "clear");
        COMPARE_STANDING(state.limits.at(1).standing, "unproven");
        COMPARE_STANDING(state.standing, "unproven");
        QCOMPARE(state.governs, std::optional(ClockName::Months));
    }
    void whatIsMadeOnADayThatHasNotComeIsUnproven() {
        const auto row = rule(R"("limits": [{"clock": "months", "every": 120}], "starts_from": "made")");
        COMPARE_STANDING(on("2026-11-30", row, Item().made("2062-01").at(1.0)).standing, "unproven");
        COMPARE_STANDING(on("2026-11-30", row, Item().made("2026-12-01").at(1.0)).standing, "unproven");
        COMPARE_STANDING(on("2026-11-30", row, Item().made("2026-11-30").at(1.0)).standing, "clear");
        COMPARE_STANDING(on("2026-11-01", row, Item().made("2026-11").at(1.0)).standing, "clear");
        const auto exempt = rule(R"("limits": [{"clock": "months", "every": 12}], "exempt_until": {"months": 24})");
        COMPARE_STANDING(on("2026-11-30", exempt, Item().made("2062-01").at(1.0)).standing, "unproven");
    }
    void aClockThatNobodyKnowsIsUnproven() {
        const Figures unknown{std::nullopt, Landings{0}, Inflations{0}};
        for (const auto* origin : {"done", "made", "entered"}) {
            const auto state =
                on("2024-01-01", from(origin), Item().made("2023-12-01").entered("2023-12-01", unknown).at(unknown));
            COMPARE_STANDING(state.limits.at(0).standing, "unproven");
        }
    }
    void aStatedClockEndsThat() {
        const Figures unknown{std::nullopt, Landings{0}, Inflations{0}};
        const auto state = on("2024-01-20", from("entered"),
                              Item()
                                  .entered("2023-12-01", unknown)
                                  .done("r", "2024-01-10", clockOf(3000), {Minutes{3000}, std::nullopt, std::nullopt})
                                  .at(clockOf(3100)));
        COMPARE_DUE(state.limits.at(0), "9000");
        QCOMPARE(leftOf(state.limits.at(0)), std::optional<std::int64_t>(5900));
    }
    void anUnknownClockWhenDoneIsUnprovenUntilItIsDoneAgain() {
        const Figures unknown{std::nullopt, Landings{0}, Inflations{0}};
        const auto requirement = from("done", R"(, "next_from": "earlier")");
        Item item = Item().done("r", "2023-01-10", 0.0).done("r", "2024-01-10", unknown).at(150.0);
        COMPARE_STANDING(on("2024-01-20", requirement, item).limits.at(0).standing, "unproven");
        // Nothing was due before it: it counts from when it was done.
        item.done("r", "2024-02-01", 150.0);
        COMPARE_DUE(on("2024-02-02", requirement, item).limits.at(0), QString::number(hours(250)));
    }

    void firstIsTheFirstIntervalOnly() {
        const auto requirement = rule(R"("starts_from": "made",
            "limits": [{"clock": "minutes", "every": 6000, "first": 9000}, {"clock": "months", "every": 12, "first": 24}])");
        Item item = Item().made("2024-01-10").at(10.0);
        COMPARE_DUE(on("2024-02-01", requirement, item).limits.at(0), "9000");
        COMPARE_DUE(on("2024-02-01", requirement, item).limits.at(1), "2026-01-10");
        item.done("r", "2025-01-10", 100.0).at(100.0);
        COMPARE_DUE(on("2025-02-01", requirement, item).limits.at(0), "12000");
        COMPARE_DUE(on("2025-02-01", requirement, item).limits.at(1), "2026-01-10");
    }
    void withoutAnOriginFirstIsNotUsed() {
        const auto requirement = rule(R"("limits": [{"clock": "months", "every": 12, "first": 24}])");
        COMPARE_STANDING(on("2024-02-01", requirement, Item()).standing, "unproven");
        COMPARE_DUE(on("2024-02-01", requirement, Item().done("r", "2024-01-01")).limits.at(0), "2025-01-01");
    }
    void theFirstDueIsADueBefore() {
        const auto requirement =
            rule(R"("starts_from": "made", "next_from": "earlier", "limits": [{"clock": "minutes", "every": 6000}])");
        COMPARE_DUE(on("2024-02-01", requirement, Item().done("r", "2024-01-01", 105.0).at(105.0)).limits.at(0),
                    "12000");
    }
    void anUnprovenOneCountsFromWhenItWasDone() {
        const auto requirement = from("done", R"(, "next_from": "earlier")");
        COMPARE_DUE(on("2024-02-01", requirement, Item().done("r", "2024-01-01", 105.0).at(105.0)).limits.at(0),
                    QString::number(hours(205)));
    }

    void historyOnPaperCountsOnTheCalendar() {
        const auto state =
            on("2024-07-01", from("done"),
               Item().entered("2024-06-01", clockOf(3000)).done("r", "2024-03-01", clockOf(3000)).at(clockOf(3000)));
        COMPARE_DUE(state.limits.at(1), "2025-03-01");
        COMPARE_STANDING(state.limits.at(0).standing, "unproven");
    }
    void historyOnPaperCountsOnTheClockThatItStates() {
        const auto state = on("2024-07-01", from("done"),
                              Item()
                                  .entered("2024-06-01", clockOf(3000))
                                  .done("r", "2024-03-01", clockOf(2500), clockOf(2500))
                                  .at(clockOf(3000)));
        COMPARE_DUE(state.limits.at(0), "8500");
    }
    void historyOnPaperEndsTheOriginToo() {
        for (const auto* origin : {"made", "entered"}) {
            const auto state = on("2024-07-01", from(origin),
                                  Item()
                                      .made("2020-01-01")
                                      .entered("2024-06-01", clockOf(3000))
                                      .done("r", "2024-03-01")
                                      .at(clockOf(3000)));
            COMPARE_STANDING(state.limits.at(0).standing, "unproven");
            COMPARE_DUE(state.limits.at(1), "2025-03-01");
        }
    }
    void nothingWasDueBeforeHistoryThatIsOlderThanTheOrigin() {
        const auto requirement =
            from("entered", R"(, "next_from": "kept", "window": {"days": 3650, "minutes": 100000})");
        const auto state = on("2024-07-01", requirement,
                              Item()
                                  .entered("2024-06-01", clockOf(3000))
                                  .done("r", "2024-03-01", clockOf(2500), clockOf(2500))
                                  .at(clockOf(3000)));
        COMPARE_DUE(state.limits.at(0), "8500");
        COMPARE_DUE(state.limits.at(1), "2025-03-01");
    }
    void onTheDayOfEntryTheClockIsKnown() {
        const auto state =
            on("2024-07-01", from("done"),
               Item().entered("2024-06-01", clockOf(3000)).done("r", "2024-06-01", clockOf(3000)).at(clockOf(3000)));
        COMPARE_DUE(state.limits.at(0), "9000");
    }
};

CROWNRING_TEST(OriginsTest)
#include "origins_test.moc"

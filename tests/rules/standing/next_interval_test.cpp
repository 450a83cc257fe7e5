// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace next_interval_test {

using namespace crownring;
using namespace crownring::shed;

/// What the next interval counts from: `next_from`, `window`, `by_method`, `satisfied_by`, `at_most`.
class NextIntervalTest : public QObject {
    Q_OBJECT
private slots:
    void anOverrunIsNotAGift_data() {
        QTest::addColumn<double>("doneAt");
        QTest::addColumn<int>("due");
        QTest::newRow("100 h flown to 105 h: next at 200 h (91.409(b))") << 105.0 << 12000;
        QTest::newRow("done early at 95 h: next at 195 h (91.409(b))") << 95.0 << 11700;
        QTest::newRow("done exactly at 100 h") << 100.0 << 12000;
    }
    void anOverrunIsNotAGift() {
        QFETCH(double, doneAt);
        QFETCH(int, due);
        const auto requirement = rule(R"("limits": [{"clock": "minutes", "every": 6000}], "next_from": "earlier")");
        const auto state = on("2024-06-01", requirement,
                              Item().done("r", "2024-01-01", 0.0).done("r", "2024-05-01", doneAt).at(doneAt));
        COMPARE_DUE(state.limits.at(0), QString::number(due));
        QCOMPARE(lastOf(state.limits.at(0)), std::optional(hours(doneAt)));
    }

    void eachLimitLooksAtItsOwnDue() {
        const auto requirement = rule(R"("next_from": "earlier",
            "limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])");
        const auto state =
            on("2025-03-01", requirement, Item().done("r", "2024-01-10", 0.0).done("r", "2025-02-20", 80.0).at(80.0));
        COMPARE_DUE(state.limits.at(0), "10800");
        COMPARE_DUE(state.limits.at(1), "2026-01-10");
    }

    void thePatternIsKeptInsideTheWindow_data() {
        QTest::addColumn<QString>("done");
        QTest::addColumn<QString>("due");
        QTest::newRow("a day before the window") << "2024-12-09"
                                                 << "2025-12-09";
        QTest::newRow("90 days before, inclusive (ML.A.903(d))") << "2024-12-10"
                                                                 << "2026-03-10";
        QTest::newRow("on the due date") << "2025-03-10"
                                         << "2026-03-10";
        QTest::newRow("the day after it counts from done") << "2025-03-11"
                                                           << "2026-03-11";
        QTest::newRow("in tolerance it counts from done (design: settled)") << "2025-04-01"
                                                                            << "2026-04-01";
    }
    void thePatternIsKeptInsideTheWindow() {
        QFETCH(QString, done);
        QFETCH(QString, due);
        const auto requirement = rule(R"("next_from": "kept", "window": {"days": 90},
            "limits": [{"clock": "months", "every": 12, "tolerance": 1}])");
        const auto state = on("2025-05-01", requirement, Item().done("r", "2024-03-10").done("r", done.toStdString()));
        COMPARE_DUE(state.limits.at(0), due);
        QCOMPARE(lastOf(state.limits.at(0)), std::optional<std::int64_t>(day(done.toStdString()).dayNumber()));
    }

    void onlyTheClocksOfTheWindowAreKept() {
        const auto requirement = rule(R"("next_from": "kept", "window": {"months": 1},
            "limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])");
        const auto state =
            on("2025-03-01", requirement, Item().done("r", "2024-03-10", 0.0).done("r", "2025-02-20", 99.0).at(99.0));
        COMPARE_DUE(state.limits.at(0), QString::number(hours(199.0)));
        COMPARE_DUE(state.limits.at(1), "2026-03-10");
    }

    void aWindowOfHoursIsInclusive_data() {
        QTest::addColumn<int>("doneAt");
        QTest::addColumn<int>("due");
        QTest::newRow("a minute before the window") << 5399 << 11399;
        QTest::newRow("as the window opens") << 5400 << 12000;
        QTest::newRow("at the due") << 6000 << 12000;
        QTest::newRow("a minute past it") << 6001 << 12001;
    }
    void aWindowOfHoursIsInclusive() {
        QFETCH(int, doneAt);
        QFETCH(int, due);
        const auto requirement = rule(R"("next_from": "kept", "window": {"minutes": 600},
            "limits": [{"clock": "minutes", "every": 6000}])");
        const auto state =
            on("2024-06-01", requirement,
               Item().done("r", "2024-01-01", 0.0).done("r", "2024-05-01", clockOf(doneAt)).at(clockOf(doneAt)));
        COMPARE_DUE(state.limits.at(0), QString::number(due));
    }

    void theShareOfAKeptIntervalCountsFromTheOldDue() {
        const auto requirement = rule(R"("next_from": "kept", "window": {"days": 90},
            "limits": [{"clock": "months", "every": 12}])");
        const auto state = on("2025-03-10", requirement, Item().done("r", "2024-03-10").done("r", "2025-01-10"));
        QCOMPARE(*state.share, 1.0);
    }

    void howItWasDoneDecidesTheNextInterval_data() {
        QTest::addColumn<QString>("method");
        QTest::addColumn<QString>("due");
        QTest::newRow("volumetric (49 CFR 180.209(e), from memory)") << "volumetric"
                                                                     << "2032-05-31";
        QTest::newRow("proof pressure (49 CFR 180.209(e), from memory)") << "proof"
                                                                         << "2030-05-31";
        QTest::newRow("external visual (49 CFR 180.209(g), from memory)") << "external-visual"
                                                                          << "2025-05-31";
        QTest::newRow("not recorded: the limit's own") << ""
                                                       << "2025-05-31";
        QTest::newRow("unknown: the limit's own") << "by-eye"
                                                  << "2025-05-31";
    }
    void howItWasDoneDecidesTheNextInterval() {
        QFETCH(QString, method);
        QFETCH(QString, due);
        const auto rules = shelved("lpg-us-dot");
        const auto state =
            on("2021-01-01", rules["dot.requalification"],
               Item(ItemKind::Cylinder)
                   .done("dot.requalification", "2020-05-03", newFigures, nothingStated, method.toUtf8().constData()),
               rules);
        COMPARE_DUE(state.limits.at(0), due);
    }

    void aMethodChangesNoUsageLimit() {
        const auto requirement = rule(R"("by_method": {"proof": 24},
            "limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])");
        const auto state =
            on("2024-06-01", requirement, Item().done("r", "2024-01-01", newFigures, nothingStated, "proof").at(1.0));
        COMPARE_DUE(state.limits.at(0), "6000");
        COMPARE_DUE(state.limits.at(1), "2026-01-01");
    }

    void anAnnualCountsAsAHundredHourAndNotTheOtherWayRound() {
        const auto rules = shelved("us-14cfr");
        const Item annual = Item().done("us.annual", "2024-06-20", 500.0).at(510.0);
        COMPARE_DUE(on("2024-07-01", rules["us.hundred-hour"], annual, rules).limits.at(0),
                    QString::number(hours(600)));
        const Item hundred = Item().done("us.hundred-hour", "2024-06-20", 500.0).at(510.0);
        COMPARE_STANDING(on("2024-07-01", rules["us.annual"], hundred, rules).standing, "unproven");
    }

    void satisfiedByIsDirectAndNotTransitive() {
        const auto rules =
            rulesFrom({R"("id": "a", "limits": [{"clock": "months", "every": 1}], "satisfied_by": ["b"])",
                       R"("id": "b", "limits": [{"clock": "months", "every": 1}], "satisfied_by": ["c"])",
                       R"("id": "c", "limits": [{"clock": "months", "every": 1}])"});
        const Item item = Item().done("c", "2024-01-01");
        COMPARE_STANDING(on("2024-01-02", rules["b"], item, rules).standing, "nearing");
        COMPARE_STANDING(on("2024-01-02", rules["a"], item, rules).standing, "unproven");
    }

    void signedTogetherTheyCountAsOneAndAStatedClockWins() {
        const auto requirement = rule(R"("limits": [{"clock": "minutes", "every": 6000}], "next_from": "earlier",
            "satisfied_by": ["annual"])");
        Item item = Item().done("r", "2024-01-01", 0.0);
        item.done("annual", "2024-05-01", clockOf(6600), clockOf(6600), "", "e2");
        item.done("r", "2024-05-01", clockOf(6300), nothingStated, "", "e3").at(clockOf(6600));
        // Counted twice, the second would be an early one: min(6600, 12000) + 6000.
        COMPARE_DUE(on("2024-05-02", requirement, item).limits.at(0), "12000");
        QCOMPARE(lastOf(on("2024-05-02", requirement, item).limits.at(0)), std::optional<std::int64_t>(6600));
    }

    void signedTogetherTheRowsOwnMethodGoesFirst() {
        const auto requirement = rule(R"("limits": [{"clock": "months", "every": 12}], "satisfied_by": ["x"],
            "by_method": {"long": 24, "short": 6})");
        Item item;
        item.done("x", "2024-01-01", newFigures, nothingStated, "long", "e1");
        item.done("r", "2024-01-01", newFigures, nothingStated, "short", "e2");
        COMPARE_DUE(on("2024-01-02", requirement, item).limits.at(0), "2024-07-01");
    }

    void theWindowIsThatOfTheActCarriedOut_data() {
        QTest::addColumn<QString>("act");
        QTest::addColumn<QString>("done");
        QTest::addColumn<QString>("due");
        QTest::newRow("a review 90 days early (ML.A.903(d))") << "review"
                                                              << "2024-12-10"
                                                              << "2026-03-10";
        QTest::newRow("an extension 30 days early (ML.A.901(d), EASA FAQ 19050)") << "extension"
                                                                                  << "2025-02-08"
                                                                                  << "2026-03-10";
        QTest::newRow("an extension 31 days early (EASA FAQ 19050)") << "extension"
                                                                     << "2025-02-07"
                                                                     << "2026-02-07";
        QTest::newRow("an act without a window has the row's") << "plain"
                                                               << "2024-12-10"
                                                               << "2026-03-10";
        QTest::newRow("an act not in force has the row's") << "elsewhere"
                                                           << "2024-12-10"
                                                           << "2026-03-10";
    }
    void theWindowIsThatOfTheActCarriedOut() {
        QFETCH(QString, act);
        QFETCH(QString, done);
        QFETCH(QString, due);
        const auto rules = rulesFrom(
            {R"("id": "review", "limits": [{"clock": "months", "every": 12}], "next_from": "kept", "window": {"days": 90},
                "satisfied_by": ["extension", "plain", "elsewhere"])",
             R"("id": "extension", "limits": [{"clock": "months", "every": 12}], "next_from": "kept", "window": {"days": 30})",
             R"("id": "plain", "limits": [{"clock": "months", "every": 12}])"});
        const auto state =
            on("2025-02-28", rules["review"],
               Item().done("review", "2024-03-10").done(act.toUtf8().constData(), done.toStdString()), rules);
        COMPARE_DUE(state.limits.at(0), due);
    }
};

CROWNRING_TEST(NextIntervalTest)

}

#include "next_interval_test.moc"

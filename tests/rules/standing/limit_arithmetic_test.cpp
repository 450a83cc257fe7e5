// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace limit_arithmetic_test {

using namespace crownring;
using namespace crownring::shed;

/// One limit: due, left, tolerance and look-ahead, one step before, at and after each bound.
class LimitArithmeticTest : public QObject {
    Q_OBJECT
private slots:
    void aPeriodInMonthsEnds_data() {
        QTest::addColumn<QString>("done");
        QTest::addColumn<int>("months");
        QTest::addColumn<QString>("rule");
        QTest::addColumn<QString>("due");
        QTest::newRow("31 January + 1 month, leap year (Reg. 1182/71 Art. 3(2)(c), from memory)")
            << "2024-01-31" << 1 << "same"
            << "2024-02-29";
        QTest::newRow("31 January + 1 month (Reg. 1182/71 Art. 3(2)(c), from memory)") << "2023-01-31" << 1 << "same"
                                                                                       << "2023-02-28";
        QTest::newRow("28 February never snaps to a later month end (Reg. 1182/71, from memory)")
            << "2023-02-28" << 12 << "same"
            << "2024-02-28";
        QTest::newRow("30 April + 1 month (Reg. 1182/71, from memory)") << "2024-04-30" << 1 << "same"
                                                                        << "2024-05-30";
        QTest::newRow("29 February + 1 year (Reg. 1182/71, from memory)") << "2024-02-29" << 12 << "same"
                                                                          << "2025-02-28";
        QTest::newRow("any day to the last day of the same month (FAA-H-8083-11 ch. 2)")
            << "2024-01-15" << 12 << "month-end"
            << "2025-01-31";
    }
    void aPeriodInMonthsEnds() {
        QFETCH(QString, done);
        QFETCH(int, months);
        QFETCH(QString, rule);
        QFETCH(QString, due);
        const auto requirement = shed::rule(R"("limits": [{"clock": "months", "every": )" + std::to_string(months) +
                                            R"(, "day": ")" + rule.toStdString() + R"("}])");
        const auto state = on(done.toStdString(), requirement, Item().done("r", done.toStdString()));
        COMPARE_DUE(state.limits.at(0), due);
    }

    void standingOnTheCalendar_data() {
        QTest::addColumn<QString>("today");
        QTest::addColumn<QString>("standing");
        QTest::addColumn<int>("left");
        QTest::addColumn<int>("toleranceLeft");
        // 12 months, tolerance 1 (ML.A.302(d)(1)(a)), done 2024-04-10.
        QTest::newRow("a day before the look-ahead of a month") << "2025-03-09"
                                                                << "clear" << 32 << 62;
        QTest::newRow("the look-ahead is inclusive (design: settled)") << "2025-03-10"
                                                                       << "nearing" << 31 << 61;
        QTest::newRow("the due date is the last good day") << "2025-04-10"
                                                           << "nearing" << 0 << 30;
        QTest::newRow("the day after") << "2025-04-11"
                                       << "tolerance" << -1 << 29;
        QTest::newRow("the last day of the tolerance (ML.A.302(d)(1)(a))") << "2025-05-10"
                                                                           << "tolerance" << -30 << 0;
        QTest::newRow("the day after the tolerance") << "2025-05-11"
                                                     << "lapsed" << -31 << -1;
    }
    void standingOnTheCalendar() {
        QFETCH(QString, today);
        QFETCH(QString, standing);
        QFETCH(int, left);
        QFETCH(int, toleranceLeft);
        const auto requirement = rule(R"("limits": [{"clock": "months", "every": 12, "tolerance": 1}])");
        const auto state = on(today.toStdString(), requirement, Item().done("r", "2024-04-10"));
        COMPARE_STANDING(state.standing, standing);
        QCOMPARE(leftOf(state.limits.at(0)), std::optional<std::int64_t>(left));
        QCOMPARE(toleranceLeftOf(state.limits.at(0)), std::optional<std::int64_t>(toleranceLeft));
    }

    void standingInDays_data() {
        QTest::addColumn<QString>("today");
        QTest::addColumn<QString>("standing");
        // 90 days from 2024-01-01: due 2024-03-31; tolerance 5: 2024-04-05.
        QTest::newRow("31 days before") << "2024-02-29"
                                        << "clear";
        QTest::newRow("30 days before, inclusive (design: settled)") << "2024-03-01"
                                                                     << "nearing";
        QTest::newRow("the due date") << "2024-03-31"
                                      << "nearing";
        QTest::newRow("the day after") << "2024-04-01"
                                       << "tolerance";
        QTest::newRow("the last day of the tolerance") << "2024-04-05"
                                                       << "tolerance";
        QTest::newRow("the day after the tolerance") << "2024-04-06"
                                                     << "lapsed";
    }
    void standingInDays() {
        QFETCH(QString, today);
        QFETCH(QString, standing);
        const auto requirement = rule(R"("limits": [{"clock": "days", "every": 90, "tolerance": 5}])");
        COMPARE_STANDING(on(today.toStdString(), requirement, Item().done("r", "2024-01-01")).standing, standing);
    }

    void standingOnAUsageClock_data() {
        QTest::addColumn<QString>("limit");
        QTest::addColumn<int>("used");
        QTest::addColumn<QString>("standing");
        QTest::addColumn<int>("left");
        const QString hundred = R"({"clock": "minutes", "every": 6000, "tolerance": 600})";
        QTest::newRow("10 h and a minute left") << hundred << 5399 << "clear" << 601;
        QTest::newRow("10 h left, inclusive (design: settled)") << hundred << 5400 << "nearing" << 600;
        QTest::newRow("one minute left") << hundred << 5999 << "nearing" << 1;
        QTest::newRow("nothing left is past the limit (ML.A.302(d)(1)(a))") << hundred << 6000 << "tolerance" << 0;
        QTest::newRow("a minute of the tolerance left") << hundred << 6599 << "tolerance" << -599;
        QTest::newRow("the tolerance is used up (91.409(b): not more than 10 h)")
            << hundred << 6600 << "lapsed" << -600;
        const QString plain = R"({"clock": "minutes", "every": 6000})";
        QTest::newRow("without a tolerance: one minute left") << plain << 5999 << "nearing" << 1;
        QTest::newRow("without a tolerance: nothing left") << plain << 6000 << "lapsed" << 0;
        const QString landings = R"({"clock": "landings", "every": 50})";
        QTest::newRow("11 landings left") << landings << 39 << "clear" << 11;
        QTest::newRow("10 landings left") << landings << 40 << "nearing" << 10;
        QTest::newRow("no landing left") << landings << 50 << "lapsed" << 0;
        const QString inflations = R"({"clock": "inflations", "every": 50})";
        QTest::newRow("11 inflations left") << inflations << 39 << "clear" << 11;
        QTest::newRow("10 inflations left") << inflations << 40 << "nearing" << 10;
        const QString own = R"({"clock": "landings", "every": 50, "look_ahead": 3})";
        QTest::newRow("a look-ahead of its own: 4 left") << own << 46 << "clear" << 4;
        QTest::newRow("a look-ahead of its own: 3 left") << own << 47 << "nearing" << 3;
    }
    void standingOnAUsageClock() {
        QFETCH(QString, limit);
        QFETCH(int, used);
        QFETCH(QString, standing);
        QFETCH(int, left);
        const auto requirement = rule(R"("limits": [)" + limit.toStdString() + "]");
        const auto state = on("2024-02-01", requirement,
                              Item()
                                  .done("r", "2024-01-01", clockOf(1000, 1000, 1000))
                                  .at(clockOf(1000 + used, 1000 + used, 1000 + used)));
        COMPARE_STANDING(state.standing, standing);
        QCOMPARE(leftOf(state.limits.at(0)), std::optional<std::int64_t>(left));
        QCOMPARE(lastOf(state.limits.at(0)), std::optional<std::int64_t>(1000));
    }

    void theToleranceFollowsTheDayRuleOfItsLimit() {
        const auto requirement =
            rule(R"("limits": [{"clock": "months", "every": 12, "day": "month-end", "tolerance": 1}])");
        const Item item = Item().done("r", "2023-02-10");
        COMPARE_DUE(on("2024-01-01", requirement, item).limits.at(0), "2024-02-29");
        COMPARE_STANDING(on("2024-03-31", requirement, item).standing, "tolerance");
        COMPARE_STANDING(on("2024-04-01", requirement, item).standing, "lapsed");
    }

    void theShareIsWhatIsLeftOfTheInterval() {
        const auto requirement = rule(R"("limits": [{"clock": "minutes", "every": 6000}])");
        const auto state = on("2024-02-01", requirement, Item().done("r", "2024-01-01", 10.0).at(clockOf(2100)));
        QCOMPARE(*state.share, 4500.0 / 6000.0);
    }

    void theLongestIntervalsDoNotOverflow() {
        const auto requirement = rule(R"("limits": [
            {"clock": "months", "every": 10000000000, "tolerance": 10000000000, "look_ahead": 10000000000},
            {"clock": "days", "every": 10000000000, "tolerance": 10000000000, "look_ahead": 10000000000},
            {"clock": "minutes", "every": 10000000000, "tolerance": 10000000000, "look_ahead": 10000000000}])");
        const auto state = on("2024-01-02", requirement,
                              Item().done("r", "2024-01-01", clockOf(largestCount)).at(clockOf(largestCount)));
        COMPARE_DUE(state.limits.at(0), "9999-12-31");
        COMPARE_DUE(state.limits.at(1), "9999-12-31");
        COMPARE_DUE(state.limits.at(2), "20000000000");
        COMPARE_STANDING(state.standing, "nearing");
    }
};

CROWNRING_TEST(LimitArithmeticTest)

}

#include "limit_arithmetic_test.moc"

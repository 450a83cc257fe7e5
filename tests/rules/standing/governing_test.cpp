// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace governing_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

/// 100 h and 12 months and 50 landings, all from 2024-01-01 at zero.
Requirement threeLimits(const char* whichever, const char* action = "inspect") {
    return rule(std::string(R"("action": ")") + action + R"(", "whichever": ")" + whichever + R"(", "limits": [
        {"clock": "minutes", "every": 6000, "tolerance": 600}, {"clock": "months", "every": 12},
        {"clock": "landings", "every": 50}])");
}

Item used(std::int64_t minutes, std::int64_t landings) {
    return Item().done("r", "2024-01-01").at(clockOf(minutes, landings));
}

}

/// Which of several limits governs, and how standings compare.
class GoverningTest : public QObject {
    Q_OBJECT
private slots:
    void whicheverIsFirst_data() {
        QTest::addColumn<int>("minutes");
        QTest::addColumn<int>("landings");
        QTest::addColumn<QString>("today");
        QTest::addColumn<QString>("governs");
        QTest::addColumn<QString>("standing");
        QTest::newRow("the worst standing") << 5500 << 0 << "2024-02-01"
                                            << "minutes"
                                            << "nearing";
        QTest::newRow("lapsed is worse than tolerance") << 6100 << 50 << "2024-02-01"
                                                        << "landings"
                                                        << "lapsed";
        QTest::newRow("equal standings: the smaller share") << 1000 << 20 << "2024-02-01"
                                                            << "landings"
                                                            << "clear";
        QTest::newRow("the calendar has the smaller share") << 1000 << 5 << "2024-06-01"
                                                            << "months"
                                                            << "clear";
        QTest::newRow("equal shares: the first listed") << 600 << 5 << "2024-01-02"
                                                        << "minutes"
                                                        << "clear";
    }
    void whicheverIsFirst() {
        QFETCH(int, minutes);
        QFETCH(int, landings);
        QFETCH(QString, today);
        QFETCH(QString, governs);
        QFETCH(QString, standing);
        const auto state = on(today.toStdString(), threeLimits("first"), used(minutes, landings));
        COMPARE_STANDING(state.standing, standing);
        QCOMPARE(QString::fromStdString(std::string(clockNameText(*state.governs))), governs);
    }

    void whicheverIsLast_data() {
        QTest::addColumn<int>("minutes");
        QTest::addColumn<int>("landings");
        QTest::addColumn<QString>("today");
        QTest::addColumn<QString>("governs");
        QTest::addColumn<QString>("standing");
        QTest::newRow("the best standing") << 9000 << 50 << "2024-02-01"
                                           << "months"
                                           << "clear";
        QTest::newRow("equal standings: the larger share") << 1000 << 20 << "2024-02-01"
                                                           << "months"
                                                           << "clear";
        QTest::newRow("all used up: the best of the lapsed") << 12000 << 60 << "2025-01-02"
                                                             << "months"
                                                             << "lapsed";
        QTest::newRow("tolerance is better than lapsed") << 6100 << 60 << "2025-02-01"
                                                         << "minutes"
                                                         << "tolerance";
    }
    void whicheverIsLast() {
        QFETCH(int, minutes);
        QFETCH(int, landings);
        QFETCH(QString, today);
        QFETCH(QString, governs);
        QFETCH(QString, standing);
        const auto state = on(today.toStdString(), threeLimits("last"), used(minutes, landings));
        COMPARE_STANDING(state.standing, standing);
        QCOMPARE(QString::fromStdString(std::string(clockNameText(*state.governs))), governs);
    }

    void unprovenStandsBetweenLapsedAndTolerance() {
        // The months limit is unproven: manufacture is not known.
        const auto requirement = rule(R"("starts_from": "made", "limits": [
            {"clock": "minutes", "every": 6000, "tolerance": 600}, {"clock": "months", "every": 12}])");
        const auto governs = [&](std::int64_t minutes) {
            return on("2024-02-01", requirement, Item().at(clockOf(minutes))).governs;
        };
        QCOMPARE(governs(6100), std::optional(ClockName::Months));
        QCOMPARE(governs(6600), std::optional(ClockName::Minutes));
        QVERIFY(!on("2024-02-01", requirement, Item().at(clockOf(6100))).share);
    }

    void theWorstStandsFirst() {
        const std::vector worstFirst{Standing::Spent,   Standing::Lapsed, Standing::Unproven, Standing::Tolerance,
                                     Standing::Nearing, Standing::Clear,  Standing::Closed};
        QVERIFY(std::ranges::is_sorted(worstFirst, std::ranges::less_equal{}) &&
                worstFirst.size() == std::size_t{standingCount});
    }

    void aLifeLimitThatIsReachedIsSpent() {
        const auto requirement = threeLimits("first", "retire");
        COMPARE_STANDING(on("2024-02-01", requirement, used(5999, 0)).standing, "nearing");
        COMPARE_STANDING(on("2024-02-01", requirement, used(6000, 0)).standing, "tolerance");
        const auto spent = on("2024-02-01", requirement, used(6600, 0));
        COMPARE_STANDING(spent.standing, "spent");
        COMPARE_STANDING(spent.limits.at(0).standing, "spent");
    }
};

CROWNRING_TEST(GoverningTest)

}

#include "governing_test.moc"

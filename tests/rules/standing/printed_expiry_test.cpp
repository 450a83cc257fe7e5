// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace printed_expiry_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

/// A review with what its certificate prints.
Item& reviewed(Item& item, const char* act, const char* on, const char* printed) {
    item.done(act, on);
    std::ranges::find(item.facts().done, day(on), [](const auto& each) { return each.stamp.at.on(); })->expires =
        day(printed);
    return item;
}

}

/// What a certificate prints as its expiry is the due date (practice: forms print the same day of the next year, or the
/// day before it; from memory), and the next one's pattern follows it (ML.A.901(d), ML.A.903(d)).
class PrintedExpiryTest : public QObject {
    Q_OBJECT
    const Rules m_rules = shelved("part-ml-hot-air");

    [[nodiscard]] QString dueOn(const char* today, const Item& item) const {
        const auto state = on(today, m_rules["ml.arc-review"], item, m_rules);
        return state.limits.at(0).calendar() ? QString::fromStdString(state.limits.at(0).calendar()->due.iso())
                                             : QString();
    }
private slots:
    void whatIsPrintedIsTheDueDate() {
        Item item;
        reviewed(item, "ml.arc-review", "2024-03-10", "2025-03-09");
        QCOMPARE(dueOn("2024-06-01", item), QStringLiteral("2025-03-09"));
        QCOMPARE(on("2025-03-09", m_rules["ml.arc-review"], item, m_rules).standing, Standing::Nearing);
        QCOMPARE(on("2025-03-10", m_rules["ml.arc-review"], item, m_rules).standing, Standing::Lapsed);
    }
    void theNextPatternFollowsIt_data() {
        QTest::addColumn<QString>("done");
        QTest::addColumn<QString>("due");
        QTest::newRow("90 days before what was printed") << "2024-12-09"
                                                         << "2026-03-09";
        QTest::newRow("91 days before it") << "2024-12-08"
                                           << "2025-12-08";
    }
    void theNextPatternFollowsIt() {
        QFETCH(QString, done);
        QFETCH(QString, due);
        Item item;
        reviewed(item, "ml.arc-review", "2024-03-10", "2025-03-09").done("ml.arc-review", done.toStdString());
        QCOMPARE(dueOn("2025-01-01", item), due);
    }
    void whatIsFoundLaterMovesNoPrintedDate() {
        Item item;
        reviewed(item, "ml.arc-review", "2024-12-20", "2025-12-20").done("ml.arc-review", "2024-01-10");
        QCOMPARE(dueOn("2025-01-01", item), QStringLiteral("2025-12-20"));
    }
    void aClockOfUseHasNoPrintedDate() {
        const auto requirement =
            rule(R"("limits": [{"clock": "minutes", "every": 6000}, {"clock": "months", "every": 12}])");
        Item item;
        reviewed(item, "r", "2024-01-10", "2024-12-31").at(0.0);
        const auto state = on("2024-06-01", requirement, item);
        COMPARE_DUE(state.limits.at(0), "6000");
        COMPARE_DUE(state.limits.at(1), "2024-12-31");
    }
};

CROWNRING_TEST(PrintedExpiryTest)

}

#include "printed_expiry_test.moc"

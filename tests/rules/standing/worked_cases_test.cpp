// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/rig_up.h"
#include "rules/shed.h"
#include "test_class.h"

namespace worked_cases_test {

using namespace crownring;
using namespace crownring::shed;

/// Cases worked from the published rules, by the programmes that ship with the program.
class WorkedCasesTest : public QObject {
    Q_OBJECT
    const Rules m_us = shelved("us-14cfr");
    const Rules m_ml = shelved("part-ml-hot-air");
    const Rules m_dot = shelved("lpg-us-dot");
    const Rules m_adr = shelved("lpg-adr");
    const Rules m_fabric = shelved("fabric-strength");

private slots:
    void annualInTheUnitedStates_data() {
        QTest::addColumn<QString>("done");
        QTest::addColumn<QString>("lastGoodDay");
        QTest::newRow("A1: mid-month (91.409(a); FAA-H-8083-11 ch. 2)") << "2024-01-15"
                                                                        << "2025-01-31";
        QTest::newRow("A2: first of the month (FAA-H-8083-11 ch. 2)") << "2024-01-01"
                                                                      << "2025-01-31";
        QTest::newRow("A2: last of the month (FAA-H-8083-11 ch. 2)") << "2024-01-31"
                                                                     << "2025-01-31";
        QTest::newRow("A3: into a leap year (FAA-H-8083-11 ch. 2)") << "2023-02-10"
                                                                    << "2024-02-29";
    }
    void annualInTheUnitedStates() {
        QFETCH(QString, done);
        QFETCH(QString, lastGoodDay);
        const Item item = Item().done("us.annual", done.toStdString(), 50.0).at(60.0);
        const auto& annual = m_us["us.annual"];
        COMPARE_DUE(on(done.toStdString(), annual, item, m_us).limits.at(0), lastGoodDay);
        const auto good = day(lastGoodDay.toStdString());
        COMPARE_STANDING(assess(annual, item, m_us, good).standing, "nearing");
        COMPARE_STANDING(assess(annual, item, m_us, addDays(good, 1)).standing, "lapsed");
    }

    void hundredHoursInTheUnitedStates_data() {
        QTest::addColumn<double>("clock");
        QTest::addColumn<QString>("standing");
        QTest::newRow("A5: before the due at 420.0 h (91.409(b))") << 419.9 << "nearing";
        QTest::newRow("A5: at 420.0 h (91.409(b))") << 420.0 << "tolerance";
        QTest::newRow("A5: before the en-route limit at 430.0 h (91.409(b))") << 429.9 << "tolerance";
        QTest::newRow("A5: at the en-route limit (91.409(b))") << 430.0 << "lapsed";
    }
    void hundredHoursInTheUnitedStates() {
        QFETCH(double, clock);
        QFETCH(QString, standing);
        const Item item = Item().done("us.hundred-hour", "2024-01-10", 320.0).at(clock).flownFor({"for-hire"});
        COMPARE_STANDING(on("2024-06-01", m_us["us.hundred-hour"], item, m_us).standing, standing);
    }
    void theExcessCountsInTheNextHundred() {
        // A6, 91.409(b): "must be included in computing the next 100 hours".
        const Item item =
            Item().done("us.hundred-hour", "2024-01-10", 320.0).done("us.hundred-hour", "2024-06-01", 426.5).at(426.5);
        COMPARE_DUE(on("2024-06-02", m_us["us.hundred-hour"], item, m_us).limits.at(0), QString::number(hours(520.0)));
    }
    void theToleranceOnlyServesToReachTheInspection() {
        // A9, 91.409(b): "while en route to reach a place where the inspection can be done".
        const Item item = Item().done("us.hundred-hour", "2024-01-10", 320.0).at(425.0).flownFor({"for-hire"});
        const auto& requirement = m_us["us.hundred-hour"];
        const ItemFacts& facts = item;
        const std::vector<DueRow> rows{{&facts, &requirement, nullptr, on("2024-06-01", requirement, item, m_us)}};
        QVERIFY(!rigUp(rows, {}).mayFly);
        PlannedFlight ferry;
        ferry.positioning = true;
        QVERIFY(rigUp(rows, ferry).mayFly);
    }
    void notFlownForHireOnlyTheAnnualIsRequired() {
        // A10, FAA Chief Counsel: the 100-hour inspection "depends on how the aircraft is operated".
        const Item item =
            Item().done("us.hundred-hour", "2020-01-10", 320.0).done("us.annual", "2024-01-10", 330.0).at(900.0);
        const auto hundred = on("2024-06-01", m_us["us.hundred-hour"], item, m_us);
        QCOMPARE(hundred.because, Because::NotRequired);
        COMPARE_STANDING(hundred.standing, "lapsed");
        QCOMPARE(on("2024-06-01", m_us["us.annual"], item, m_us).because, Because::Limits);
    }
    void anAnnualResetsBoth() {
        // A11, FAA-H-8083-11: an annual may be substituted for a required 100-hour inspection.
        const Item item = Item().done("us.annual", "2024-06-20", 500.0).at(501.0).flownFor({"for-hire"});
        COMPARE_DUE(on("2024-07-01", m_us["us.annual"], item, m_us).limits.at(0), "2025-06-30");
        COMPARE_DUE(on("2024-07-01", m_us["us.hundred-hour"], item, m_us).limits.at(0), QString::number(hours(600.0)));
    }

    void inspectionUnderPartMl_data() {
        QTest::addColumn<QString>("today");
        QTest::addColumn<double>("clock");
        QTest::addColumn<QString>("standing");
        // B1, ML.A.302(d)(1)(a): inspected 2024-04-10 at 312.4 h.
        QTest::newRow("B1: the last good day") << "2025-04-10" << 350.0 << "nearing";
        QTest::newRow("B1: the month of tolerance") << "2025-05-10" << 350.0 << "tolerance";
        QTest::newRow("B1: beyond the month") << "2025-05-11" << 350.0 << "lapsed";
        QTest::newRow("B1: 412.4 h reached") << "2024-09-01" << 412.4 << "tolerance";
        QTest::newRow("B1: 422.4 h reached") << "2024-09-01" << 422.4 << "lapsed";
        QTest::newRow("B1: the limbs have separate tolerances") << "2025-05-10" << 422.3 << "tolerance";
    }
    void inspectionUnderPartMl() {
        QFETCH(QString, today);
        QFETCH(double, clock);
        QFETCH(QString, standing);
        const Item item = Item().done("ml.inspection", "2024-04-10", 312.4).at(clock);
        COMPARE_STANDING(on(today.toStdString(), m_ml["ml.inspection"], item, m_ml).standing, standing);
    }
    void theNextCountsFromWhenTheInspectionTakesPlace_data() {
        QTest::addColumn<QString>("nextFrom");
        QTest::addColumn<QString>("dueOn");
        QTest::newRow("B2: literal text of ML.A.302(d)(1)(a)") << "done"
                                                               << "2026-04-28";
        QTest::newRow("B2: a house that deducts (practice view, no authority)") << "earlier"
                                                                                << "2026-04-10";
    }
    void theNextCountsFromWhenTheInspectionTakesPlace() {
        QFETCH(QString, nextFrom);
        QFETCH(QString, dueOn);
        auto requirement = m_ml["ml.inspection"];
        requirement.nextFrom = nextFrom == "done" ? NextFrom::Done : NextFrom::Earlier;
        const Item item =
            Item().done("ml.inspection", "2024-04-10", 312.4).done("ml.inspection", "2025-04-28", 398.0).at(398.0);
        const auto state = on("2025-05-01", requirement, item, m_ml);
        COMPARE_DUE(state.limits.at(0), QString::number(hours(498.0)));
        COMPARE_DUE(state.limits.at(1), dueOn);
    }
    void dueAt2000DoneAt2010() {
        // B3, ML.A.302(d)(1)(a) literally; 91.409(b) deducts.
        const Item item =
            Item().done("ml.inspection", "2024-01-01", 1900.0).done("ml.inspection", "2024-06-01", 2010.0).at(2010.0);
        auto requirement = m_ml["ml.inspection"];
        COMPARE_DUE(on("2024-06-02", requirement, item, m_ml).limits.at(0), QString::number(hours(2110.0)));
        requirement.nextFrom = NextFrom::Earlier;
        COMPARE_DUE(on("2024-06-02", requirement, item, m_ml).limits.at(0), QString::number(hours(2100.0)));
    }
    void theToleranceCountsFromTheDueDate() {
        // B5, Reg. 1182/71 Art. 3(2)(c), from memory: due + 1 month, not 13 months from the origin.
        const Item item = Item().done("ml.inspection", "2024-02-29", 0.0).at(1.0);
        const auto& requirement = m_ml["ml.inspection"];
        COMPARE_DUE(on("2025-01-01", requirement, item, m_ml).limits.at(1), "2025-02-28");
        COMPARE_STANDING(on("2025-03-28", requirement, item, m_ml).standing, "tolerance");
        COMPARE_STANDING(on("2025-03-29", requirement, item, m_ml).standing, "lapsed");
    }
    void theHoursComeFirst() {
        // B8, ML.A.302(d)(1)(a): whichever comes first.
        const Item item = Item().done("ml.inspection", "2024-09-01", 200.0).at(300.0);
        const auto state = on("2025-05-12", m_ml["ml.inspection"], item, m_ml);
        COMPARE_STANDING(state.standing, "tolerance");
        QCOMPARE(state.governs, std::optional(ClockName::Minutes));
        QCOMPARE(toleranceLeftOf(state.limits.at(0)), std::optional(hours(10.0)));
        COMPARE_STANDING(state.limits.at(1).standing, "clear");
    }
    void theTwoSystemsDisagreeOnOneInspection() {
        // B10, ML.A.302(d)(1)(a) against FAA-H-8083-11 ch. 2.
        const Item item = Item().done("ml.inspection", "2024-01-15", 0.0).done("us.annual", "2024-01-15", 0.0).at(1.0);
        const auto ml = on("2025-01-31", m_ml["ml.inspection"], item, m_ml);
        COMPARE_DUE(ml.limits.at(1), "2025-01-15");
        QCOMPARE(toleranceLeftOf(ml.limits.at(1)),
                 std::optional(daysBetween(day("2025-01-31"), day("2025-02-15")).value()));
        const auto us = on("2025-01-31", m_us["us.annual"], item, m_us);
        COMPARE_DUE(us.limits.at(0), "2025-01-31");
        QCOMPARE(toleranceLeftOf(us.limits.at(0)), leftOf(us.limits.at(0)));
    }

    void reviewCertificate_data() {
        QTest::addColumn<QString>("act");
        QTest::addColumn<QString>("done");
        QTest::addColumn<QString>("expiry");
        QTest::newRow("C1, C2: review 90 days early (ML.A.903(d), authority FAQ)") << "ml.arc-review"
                                                                                   << "2024-12-10"
                                                                                   << "2026-03-10";
        QTest::newRow("C1: review 91 days early (ML.A.903(d))") << "ml.arc-review"
                                                                << "2024-12-09"
                                                                << "2025-12-09";
        QTest::newRow("C4: extension 30 days early (EASA FAQ 19050)") << "ml.arc-extension"
                                                                      << "2025-02-08"
                                                                      << "2026-03-10";
        QTest::newRow("C4: extension 31 days early (EASA FAQ 19050)") << "ml.arc-extension"
                                                                      << "2025-02-07"
                                                                      << "2026-02-07";
        QTest::newRow("C7: review after expiry (ML.A.901, from memory)") << "ml.arc-review"
                                                                         << "2025-03-20"
                                                                         << "2026-03-20";
    }
    void reviewCertificate() {
        QFETCH(QString, act);
        QFETCH(QString, done);
        QFETCH(QString, expiry);
        const Item item = Item().done("ml.arc-review", "2024-03-10").done(act.toUtf8().constData(), done.toStdString());
        COMPARE_DUE(on("2025-03-21", m_ml["ml.arc-review"], item, m_ml).limits.at(0), expiry);
    }
    void aThirdExtensionInARowIsRefused() {
        // C6, ML.A.901(c): "maximum two consecutive times".
        Item item = Item().done("ml.arc-review", "2020-03-10");
        const auto& review = m_ml["ml.arc-review"];
        item.done("ml.arc-extension", "2021-03-01").done("ml.arc-extension", "2022-03-01");
        COMPARE_DUE(on("2022-03-02", review, item, m_ml).limits.at(0), "2023-03-10");
        item.done("ml.arc-extension", "2023-03-01");
        const auto third = on("2023-03-11", review, item, m_ml);
        COMPARE_DUE(third.limits.at(0), "2023-03-10");
        COMPARE_STANDING(third.standing, "lapsed");
        QCOMPARE(third.because, Because::RowFull);
        item.done("ml.arc-review", "2023-03-20").done("ml.arc-extension", "2024-03-15");
        const auto anew = on("2024-03-16", review, item, m_ml);
        COMPARE_DUE(anew.limits.at(0), "2025-03-20");
        QCOMPARE(anew.because, Because::Limits);
    }

    void aMonthStampedOnACylinder_data() {
        QTest::addColumn<QString>("made");
        QTest::addColumn<QString>("scheme");
        QTest::addColumn<QString>("lastGoodDay");
        QTest::newRow("D1: 10 years (ADR 4.1.4.1 P200, from memory)") << "2016-05"
                                                                      << "adr"
                                                                      << "2026-05-31";
        QTest::newRow("D3: steel, an authority's 15-year scheme (P200 (12), from memory)") << "2016-05"
                                                                                           << "adr-15"
                                                                                           << "2031-05-31";
        QTest::newRow("D4: DOT, 12 years at first (49 CFR 180.209(e), from memory)") << "2012-06"
                                                                                     << "dot"
                                                                                     << "2024-06-30";
    }
    void aMonthStampedOnACylinder() {
        QFETCH(QString, made);
        QFETCH(QString, scheme);
        QFETCH(QString, lastGoodDay);
        auto requirement = scheme == "dot" ? m_dot["dot.requalification"] : m_adr["adr.periodic-test"];
        if (scheme == "adr-15")
            requirement.limits.at(0).every = 180;
        const Item item = Item(ItemKind::Cylinder).made(made.toStdString());
        QCOMPARE(item.operator const ItemFacts&().made->iso(), made.toStdString()); // D2: a month stays a month
        const auto good = day(lastGoodDay.toStdString());
        COMPARE_STANDING(assess(requirement, item, m_adr, good).standing, "nearing");
        COMPARE_STANDING(assess(requirement, item, m_adr, addDays(good, 1)).standing, "lapsed");
    }
    void aCylinderPastItsTestMayBeFlownUntilEmpty() {
        // D6, 49 CFR 180.207(a)(2): "may remain in service until it is emptied"; ADR 4.1.6.10, from memory.
        const Item item = Item(ItemKind::Cylinder).made("2016-05");
        const auto& requirement = m_adr["adr.periodic-test"];
        const ItemFacts& facts = item;
        const std::vector<DueRow> rows{{&facts, &requirement, nullptr, on("2026-06-10", requirement, item, m_adr)}};
        COMPARE_STANDING(rows.front().state.standing, "lapsed");
        const auto answer = rigUp(rows, {});
        QVERIFY(answer.mayFly);
        QCOMPARE(answer.notes.size(), std::size_t{1});
    }

    void fabricStrengthTest_data() {
        QTest::addColumn<QString>("today");
        QTest::addColumn<double>("clock");
        QTest::addColumn<QString>("event");
        QTest::addColumn<QString>("standing");
        const auto* none = "";
        // A manufacturer's instructions, Appendix II-A, 25 October 2001; made 2022-06-15.
        QTest::newRow("E1: 1 y 11 m, 149.9 h: not compulsory") << "2024-05-15" << 149.9 << none << "clear";
        QTest::newRow("E2: 2 y 0 d, 20 h: required") << "2024-06-15" << 20.0 << none << "nearing";
        QTest::newRow("E2: and still so, until the inspection comes") << "2024-06-16" << 20.0 << none << "nearing";
        QTest::newRow("1 y, 150.0 h: required (the same text)") << "2023-06-15" << 150.0 << none << "nearing";
        QTest::newRow("E4: 30 h, the 275 °F dot is black: at once") << "2022-12-15" << 30.0 << "over-temperature"
                                                                    << "lapsed";
        QTest::newRow("E5: 60 h, mildew: required") << "2023-06-15" << 60.0 << "mildew"
                                                    << "lapsed";
        QTest::newRow("E6: 60 h, fuel use up: required") << "2023-06-15" << 60.0 << "increased-fuel-use"
                                                         << "lapsed";
    }
    void fabricStrengthTest() {
        QFETCH(QString, today);
        QFETCH(double, clock);
        QFETCH(QString, event);
        QFETCH(QString, standing);
        Item item = Item().made("2022-06-15").at(clock);
        if (!event.isEmpty())
            item.happened(event.toUtf8().constData(), today.toStdString());
        COMPARE_STANDING(on(today.toStdString(), m_fabric["fabric.strength-test"], item, m_fabric).standing, standing);
    }
};

CROWNRING_TEST(WorkedCasesTest)

}

#include "worked_cases_test.moc"

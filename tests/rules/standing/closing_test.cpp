// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace closing_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

constexpr auto once =
    R"("once": true, "action": "comply", "starts_from": "entered", "limits": [{"clock": "months", "every": 3}])";

}

/// Requirements that come to an end: done once, ended by a terminating action, full in a row.
class ClosingTest : public QObject {
    Q_OBJECT
private slots:
    void aOneTimeRequirementIsDueUntilItIsDone() {
        Item item = Item().entered("2024-01-10");
        COMPARE_DUE(on("2024-02-01", rule(once), item).limits.at(0), "2024-04-10");
        COMPARE_STANDING(on("2024-04-11", rule(once), item).standing, "lapsed");
        item.done("r", "2024-05-01");
        const auto state = on("2030-01-01", rule(once), item);
        COMPARE_STANDING(state.standing, "closed");
        QVERIFY(!state.governs && state.limits.empty() && !state.share);
        QCOMPARE(state.because, Because::Done);
    }
    void withNothingToCountFromAOneTimeRequirementIsUnproven() {
        COMPARE_STANDING(
            on("2024-02-01", rule(R"("once": true, "limits": [{"clock": "months", "every": 3}])"), Item()).standing,
            "unproven");
    }
    void whatSatisfiesItClosesIt() {
        COMPARE_STANDING(
            on("2024-02-01", rule(std::string(once) + R"(, "satisfied_by": ["x"])"), Item().done("x", "2024-01-01"))
                .standing,
            "closed");
    }
    void aTerminatingActionEndsIt() {
        const auto requirement = rule(
            R"("limits": [{"clock": "months", "every": 3}], "ended_by": ["modification"], "triggered_by": ["fire"])");
        Item item = Item().done("modification", "2020-01-01").happened("fire", "2021-01-01");
        const auto state = on("2024-02-01", requirement, item);
        COMPARE_STANDING(state.standing, "closed");
        QCOMPARE(state.because, Because::Ended);
        QVERIFY(!state.governs && state.limits.empty());
    }
    void anEndBeatsAMissingType() {
        Item item = Item().done("modification", "2020-01-01");
        item.facts().type.reset();
        COMPARE_STANDING(
            on("2024-02-01",
               rule(R"("types": ["T-1"], "limits": [{"clock": "months", "every": 3}], "ended_by": ["modification"])"),
               item)
                .standing,
            "closed");
    }

    void moreThanSoManyInARowDoNotCount() {
        const auto rules = rulesFrom(
            {R"("id": "light", "at_most": 2, "satisfied_by": ["full"], "limits": [{"clock": "months", "every": 12}])",
             R"("id": "full", "limits": [{"clock": "months", "every": 60}])"});
        Item item = Item().done("light", "2020-01-01").done("light", "2021-01-01");
        COMPARE_DUE(on("2021-01-02", rules["light"], item, rules).limits.at(0), "2022-01-01");
        item.done("light", "2022-01-01").done("light", "2023-01-01");
        COMPARE_DUE(on("2023-01-02", rules["light"], item, rules).limits.at(0), "2022-01-01");
        QCOMPARE(on("2023-01-02", rules["light"], item, rules).because, Because::RowFull);
        item.done("full", "2023-06-01").done("light", "2024-01-01");
        COMPARE_DUE(on("2024-01-02", rules["light"], item, rules).limits.at(0), "2025-01-01");
        QCOMPARE(on("2024-01-02", rules["light"], item, rules).because, Because::Limits);
    }
    void aFullerActThatDoesNotSatisfyTheRowStillStartsTheRowAnew() {
        const auto rules = rulesFrom(
            {R"("id": "row", "satisfied_by": ["light"], "limits": [{"clock": "months", "every": 12}])",
             R"("id": "light", "at_most": 1, "satisfied_by": ["full"], "limits": [{"clock": "months", "every": 12}])"});
        Item item = Item().done("light", "2020-01-01").done("full", "2020-06-01").done("light", "2021-01-01");
        COMPARE_DUE(on("2021-01-02", rules["row"], item, rules).limits.at(0), "2022-01-01");
    }
    void signedWithAFullerActItCountsAsOneWithIt() {
        const auto rules = rulesFrom(
            {R"("id": "light", "at_most": 1, "satisfied_by": ["full"], "limits": [{"clock": "months", "every": 12}])"});
        Item item = Item()
                        .done("light", "2020-01-01")
                        .done("light", "2021-01-01")
                        .done("full", "2021-01-01")
                        .done("light", "2022-01-01");
        COMPARE_DUE(on("2022-01-02", rules["light"], item, rules).limits.at(0), "2023-01-01");
    }
    void oneTooManyAnswersNoEvent() {
        const auto rules = rulesFrom(
            {R"("id": "light", "at_most": 1, "satisfied_by": ["full"], "triggered_by": ["fire"], "limits": [{"clock": "months", "every": 12}])"});
        Item item = Item().done("light", "2020-01-01").happened("fire", "2020-02-01").done("light", "2020-03-01");
        QCOMPARE(on("2020-04-01", rules["light"], item, rules).because, Because::Triggered);
    }
};

CROWNRING_TEST(ClosingTest)

}

#include "closing_test.moc"

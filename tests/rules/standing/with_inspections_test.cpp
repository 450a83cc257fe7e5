// SPDX-License-Identifier: GPL-3.0-or-later

/// "At every annual", "at every second 100-hour": due with the inspection, never between. Cases by hand from the
/// issue's own words; the oracle holds it against any history (standing_property_test).

#include "rules/shed.h"
#include "rules/standing/with_inspections.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::shed;

namespace {

const char* const annual = R"("id": "annual", "limits": [{"clock": "months", "every": 12}])";
const char* const hundred =
    R"("id": "hundred", "limits": [{"clock": "minutes", "every": 6000}], "satisfied_by": ["annual"])";
const char* const atEachAnnual = R"("id": "r", "action": "test", "limits": [{"with": ["annual"], "every": 1}])";
const char* const atEverySecondHundred =
    R"("id": "r", "action": "test", "limits": [{"with": ["hundred"], "every": 2}])";

const char* const everyThirdOfTwo = R"("id": "r", "limits": [{"with": ["annual", "hundred"], "every": 3}])";
const char* const startingFrom = R"("id": "r", "starts_from": ")";
const char* const everyThird = R"(", "limits": [{"with": ["annual"], "every": 3}])";
const char* const fromHoursOn =
    R"("id": "r", "limits": [{"with": ["annual"], "every": 1}], "exempt_until": {"minutes": 9000})";
const char* const alsoAfterMildew =
    R"("id": "r", "limits": [{"with": ["annual"], "every": 1}], "triggered_by": ["mildew"])";
const char* const orByHours =
    R"("id": "r", "limits": [{"with": ["annual"], "every": 1}, {"clock": "minutes", "every": 6000}])";
const char* const withEachS = R"("id": "r", "limits": [{"with": ["s"], "every": 1}])";
const char* const withEachR = R"("id": "s", "limits": [{"with": ["r"], "every": 1}])";
const char* const programmeOfOne =
    R"({"programme":"p","revision":"1","title":"t","source":"s","requirements":[{"id":"r","title":"t","source":"s","kinds":["envelope"],"action":"test",)";
const char* const withTheAnnual = R"("limits":[{"with":["annual"],"every":1}])";
const char* const withItself = R"("limits":[{"with":["r"],"every":1}])";
const char* const withNothing = R"("limits":[{"with":[],"every":1}])";
const char* const withoutNumber = R"("limits":[{"with":["annual"]}])";
const char* const withAClock = R"("limits":[{"with":["annual"],"every":1,"clock":"months"}])";
const char* const withATolerance = R"("limits":[{"with":["annual"],"every":1,"tolerance":1}])";
const char* const ofNothing = R"("limits":[{"every":1}])";
const char* const whicheverIsLast = R"("whichever":"last","limits":[{"with":["annual"],"every":1}])";

/// What the programme says, and where the requirement "r" stands.
struct Shop {
    Rules rules;
    [[nodiscard]] Assessment r(std::string_view today, const ItemFacts& item) const {
        return on(today, rules["r"], item, rules);
    }
    [[nodiscard]] std::int64_t left(std::string_view today, const ItemFacts& item) const {
        return leftOf(r(today, item).limits.front()).value();
    }
    [[nodiscard]] bool isDueWith(std::string_view today, const ItemFacts& item, const char* inspection) const {
        const std::vector carriedOut{RequirementId(inspection)};
        return crownring::isDueWith(rules["r"], r(today, item), rules, carriedOut);
    }
};

}

class WithInspectionsTest : public QObject {
    Q_OBJECT

private slots:
    void atEveryAnnualItIsDueWithTheNextOne() {
        const Shop shop{rulesFrom({annual, atEachAnnual})};
        const Item item = Item().done("annual", "2024-04-10").done("r", "2024-04-10");
        QCOMPARE(shop.left("2024-05-01", item), 1);
        QVERIFY(shop.isDueWith("2024-05-01", item, "annual"));
        QVERIFY(!shop.isDueWith("2024-05-01", item, "hundred"));
    }
    void itIsClearUntilItsInspectionIsNear() {
        const Shop shop{rulesFrom({annual, atEachAnnual})};
        const Item item = Item().done("annual", "2024-04-10").done("r", "2024-04-10");
        COMPARE_STANDING(shop.r("2024-06-01", item).standing, "clear");
        COMPARE_STANDING(shop.r("2025-04-01", item).standing, "nearing");
    }
    void itNeverGroundsBetweenInspections() {
        const Shop shop{rulesFrom({annual, atEachAnnual})};
        // Never done, the annual two years past, and two annuals entered from paper that left it out.
        for (const Item& item :
             {Item(), Item().done("annual", "2022-04-10"),
              Item().done("r", "2020-01-01").done("annual", "2023-04-10").done("annual", "2024-04-10")}) {
            COMPARE_STANDING(shop.r("2026-06-01", item).standing, "nearing");
            QCOMPARE(shop.left("2026-06-01", item), 1);
            QVERIFY(shop.isDueWith("2026-06-01", item, "annual"));
        }
    }
    void everySecondHundredHourCountsThem() {
        const Shop shop{rulesFrom({annual, hundred, atEverySecondHundred})};
        Item item = Item().done("hundred", "2024-01-10", 300).done("r", "2024-01-10", 300);
        QCOMPARE(shop.left("2024-02-01", item), 2);
        QVERIFY(!shop.isDueWith("2024-02-01", item, "hundred"));
        item.done("hundred", "2024-03-10", 400);
        QCOMPARE(shop.left("2024-04-01", item), 1);
        QVERIFY(shop.isDueWith("2024-04-01", item, "hundred"));
        item.done("hundred", "2024-05-10", 500).done("r", "2024-05-10", 500);
        QCOMPARE(shop.left("2024-06-01", item), 2);
    }
    void whatSatisfiesAHundredHourIsOne() {
        const Shop shop{rulesFrom({annual, hundred, atEverySecondHundred})};
        const Item item = Item().done("r", "2024-01-10").done("annual", "2024-03-10");
        QCOMPARE(shop.left("2024-04-01", item), 1);
        QVERIFY(shop.isDueWith("2024-04-01", item, "annual"));
    }
    void anAnnualAndAHundredHourOfOneDayAreOneInspection() {
        const Shop shop{rulesFrom({annual, hundred, everyThirdOfTwo})};
        const Item item = Item().done("r", "2024-01-10").done("annual", "2024-03-10").done("hundred", "2024-03-10");
        QCOMPARE(shop.left("2024-04-01", item), 2);
    }
    void beforeAnyItCountsFromWhereTheSourceStartsIt() {
        const auto from = [](const char* start) {
            return Shop{rulesFrom({annual, std::string(startingFrom) + start + everyThird})};
        };
        const Item item = Item().entered("2023-01-01").done("annual", "2022-05-01").done("annual", "2023-05-01");
        QCOMPARE(from("made").left("2023-06-01", item), 1);
        QCOMPARE(from("entered").left("2023-06-01", item), 2);
        QCOMPARE(from("done").left("2023-06-01", item), 1); // nobody knows: rather too soon
    }
    void whatIsExemptGoesWithNothing() {
        const Shop shop{rulesFrom({annual, fromHoursOn})};
        QVERIFY(!shop.isDueWith("2024-05-01", Item().at(149.0), "annual"));
        QVERIFY(shop.isDueWith("2024-05-01", Item().at(150.0), "annual"));
    }
    void anEventStillMakesItDueAtOnce() {
        const Shop shop{rulesFrom({annual, alsoAfterMildew})};
        COMPARE_STANDING(shop.r("2024-05-01", Item().done("r", "2024-01-01").happened("mildew", "2024-04-01")).standing,
                         "lapsed");
    }
    void besideALimitOfUseTheWorseGoverns() {
        const Shop shop{rulesFrom({annual, orByHours})};
        const auto state = shop.r("2024-05-01", Item().at(101.0).done("r", "2024-01-01", 0.0));
        COMPARE_STANDING(state.standing, "lapsed");
        QVERIFY(state.governs == ClockName::Minutes);
    }
    void twoThatNameEachOtherComeWithNothing() {
        const Shop shop{rulesFrom({withEachS, withEachR})};
        COMPARE_STANDING(shop.r("2024-05-01", Item()).standing, "clear");
    }
    void whatTheProgrammeCannotMeanIsRefused() {
        const auto refused = [](const char* keys) {
            return !programmeFrom(std::string(programmeOfOne) + keys + "}]}").has_value();
        };
        QVERIFY(!refused(withTheAnnual));
        QVERIFY(refused(withItself));
        QVERIFY(refused(withNothing));
        QVERIFY(refused(withoutNumber));
        QVERIFY(refused(withAClock));
        QVERIFY(refused(withATolerance));
        QVERIFY(refused(ofNothing));
        QVERIFY(refused(whicheverIsLast));
    }
};

CROWNRING_TEST(WithInspectionsTest)

#include "with_inspections_test.moc"

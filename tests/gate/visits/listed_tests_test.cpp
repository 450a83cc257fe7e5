// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/discrepancies.h"
#include "bench/release/asked_series.h"
#include "gate/returned.h"
#include "test_class.h"

namespace listed_tests_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string done(const char* on, const std::string& more = {}) {
    return R"({"entry":"requirement.done","item":"E1","requirement":"fabric.strength-test","on":)" + quoted(on) + more +
           "}";
}
const std::string onPaper = R"(,"ref":"T 9","signatory":"Lee Farr","licence":"L 7")";

/// A strength test that went with the annual and was left out is on its list.
void listTheTest(ListedShop& shop) {
    shop.ready(Visit::UsAnnual);
    shop.adopt("fabric-strength");
    const auto list = shop.sign(ListedShop::ines());
    QTEST_ASSERT(list.has_value());
}

/// A visit on 2026-06-15 to rectify what is on the list.
Shop& rectifying(Shop& shop, std::vector<Work> work = {}) {
    Opening opening;
    opening.visit = Visit::UsRectification;
    opening.balloon = Registration("QE-ONE");
    opening.items = shop.items;
    opening.work = std::move(work);
    opening.on = day("2026-06-15");
    opening.by = "Ines Holt";
    shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
    return shop;
}
std::string pulled(const Shop& shop, int gore, int newtons) {
    return R"({"entry":"reading.taken","on":"2026-06-15","item":"E1","quantity":"grab-strength","unit":"N","direction":"warp","row":16,"tester":"F-1","value":)" +
           std::to_string(newtons) + R"(,"gore":)" + std::to_string(gore) + shop.about() + "}";
}
Signing releasing() {
    auto by = ListedShop::ines(Outcome::Released);
    by.on = day("2026-06-16");
    return by;
}
void settleAndDescribe(Shop& shop) {
    shop.say(
        R"({"entry":"work.performed","on":"2026-06-15","item":"E1","what":"fabric tested","data":"Manual 77, 6.3")" +
        shop.about() + "}");
    const auto file = shop.draft(releasing()).file;
    for (const auto& work : workLines(file.inspection, file.items)) {
        const bool flown = isFlown(work.line->id);
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-15","by":"Ines Holt","line":)" + quoted(work.line->id) +
            (flown ? R"(,"state":"not-applicable","why":"not-asked","page":"Manual 77, 6")" : R"(,"state":"done")") +
            (work.item ? R"(,"item":)" + quoted(work.item->id.text()) : "") + shop.about() + "}");
    }
}

}

/// A test on a list of discrepancies is answered by its readings, or by who signed for them (14 CFR 43.11(b), 91.405,
/// gist read; ML.A.403, from memory; that a bare statement is none is our reading).
class ListedTestsTest : public QObject {
    Q_OBJECT
private slots:
    void aBareStatementIsRefused() {
        ListedShop shop;
        listTheTest(shop);
        for (const char* more : {"", R"(,"ref":"T 9")", R"(,"ref":"T 9","signatory":"Lee Farr")"})
            expectOnly(problemsOf(shop.record(), done("2026-06-15", more)), ReleaseFault::TestNotRead);
        const auto paper = shop.say(done("2026-06-15", onPaper)).ids.at(0).text();
        // Nor is a paper corrected into one.
        expectOnly(
            problemsOf(shop.record(),
                       R"({"entry":"entry.corrected","on":"2026-06-15","by":"x","with":{"licence":null},"replaces":)" +
                           quoted(paper) + "}"),
            ReleaseFault::TestNotRead);
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        QVERIFY(problemsOf(shop.record(), done("2026-07-15")).empty()); // no list is pending
    }
    void whatWasStatedBeforeTheListAnswersNothingOfIt() {
        ListedShop shop;
        listTheTest(shop);
        const auto list = shop.inspection;
        shop.say(done("2026-05-20"));
        expectOnly(shop.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::TestStands);
        const auto listed = discrepancies(shop.record(), list, day("2026-06-20")).value().listed;
        QCOMPARE(listed.size(), std::size_t{1});
        QVERIFY(listed.front().read && listed.front().stands);
    }
    void aVisitThatReadItAndIsReleasedAnswers() {
        ListedShop shop;
        listTheTest(shop);
        const auto list = shop.inspection;
        rectifying(shop, {{ItemId("E1"), RequirementId("fabric.strength-test")}});
        shop.say(pulled(shop, 3, 300));
        shop.say(pulled(shop, 9, 300));
        settleAndDescribe(shop);
        const auto stands = [&] {
            return discrepancies(shop.record(), list, day("2026-06-20")).value().listed.front().stands;
        };
        QVERIFY(stands());
        const auto released = shop.sign(releasing());
        QVERIFY2(released, released ? "" : text(released.error().front()).c_str());
        QVERIFY(!stands());
        shop.inspection = list;
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
    }
    void whatAReadingFoundIsReadAgainInAnyVisit() {
        ListedShop shop;
        const auto reading = shop.ready(Visit::UsAnnual).pull(5, R"("value":120)").ids.at(0);
        shop.find("D-1", "grounding", reading);
        QVERIFY(shop.sign(ListedShop::ines()));
        QVERIFY(discrepancies(shop.record(), shop.inspection, day("2026-06-14")).value().listed.front().read);
        rectifying(shop);
        const auto again = [&] {
            std::vector<AskedSeries> asked;
            for (const auto& each : askedSeries(shop.draft(releasing()).file))
                if (each.of.line.empty())
                    asked.push_back(each);
            return asked;
        };
        QCOMPARE(again().size(), std::size_t{1});
        QCOMPARE(again().front().of, (AskedFor{ItemId("E1"), {}, "grab-strength"}));
        QVERIFY(!again().front().count.enough());
        QCOMPARE(toReadAgain(shop.draft(releasing()).file, again().front().of).front()->place.gore, std::optional(5));
        shop.say(pulled(shop, 6, 300)); // another panel
        QVERIFY(!again().front().count.enough());
        shop.say(pulled(shop, 5, 300));
        QVERIFY(again().front().count.enough());
        QVERIFY(toReadAgain(shop.draft(releasing()).file, again().front().of).empty());
    }
};

CROWNRING_TEST(ListedTestsTest, QCoreApplication)

}

#include "listed_tests_test.moc"

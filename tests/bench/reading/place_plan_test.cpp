// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/place_plan.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>

namespace place_plan_test {

using namespace crownring;

class PlacePlanTest : public QObject {
    Q_OBJECT
private slots:
    void halfOfThemAreAtTheCrown() {
        const auto places = suggestedPlaces(24, 24, 20);
        QCOMPARE(places.size(), std::size_t(24));
        QCOMPARE(std::ranges::count_if(places, [](const auto& place) { return place.row == 20; }), 12);
        QCOMPARE(std::ranges::count_if(places, [](const auto& place) { return place.row == 15; }), 6);
        QCOMPARE(std::ranges::count_if(places, [](const auto& place) { return place.row == 10; }), 6);
    }
    void theyGoAroundTheWholeEnvelope() {
        const auto places = suggestedPlaces(12, 24, 20);
        for (int i = 0; i < 12; ++i)
            QCOMPARE(places[static_cast<std::size_t>(i)].gore, 1 + 2 * i);
    }
    /// What is left stays spread around, whether or not one keeps to the plan.
    void aReadingElsewhereServesTheNearestPlace() {
        const std::vector<SuggestedPlace> plan{{1, 18}, {6, 13}, {11, 18}, {16, 9}};
        QCOMPARE(stillAsked(plan, {{6, 13}}, 20), (std::vector<SuggestedPlace>{{1, 18}, {11, 18}, {16, 9}}));
        QCOMPARE(stillAsked(plan, {{15, 8}}, 20), (std::vector<SuggestedPlace>{{1, 18}, {6, 13}, {11, 18}}));
        QCOMPARE(stillAsked(plan, {{20, 18}}, 20), // beside gore 1, around
                 (std::vector<SuggestedPlace>{{6, 13}, {11, 18}, {16, 9}}));
        QVERIFY(stillAsked(plan, {{1, 1}, {2, 1}, {3, 1}, {4, 1}, {5, 1}}, 20).empty());
    }
    void nothingIsSuggestedWhereNothingIsAskedFor() {
        QVERIFY(suggestedPlaces(0, 24, 20).empty());
        QVERIFY(suggestedPlaces(12, 0, 20).empty());
    }
    void allAreDifferentAndOnTheEnvelope() {
        QVERIFY(rc::check("any number, any envelope", [] {
            const int gores = *rc::gen::inRange(1, 30);
            const int rows = *rc::gen::inRange(1, 25);
            const int count = *rc::gen::inRange(0, 120);
            auto places = suggestedPlaces(count, gores, rows);
            RC_ASSERT(static_cast<int>(places.size()) == std::min(count, gores * rows));
            for (const auto& place : places)
                RC_ASSERT(place.gore >= 1 && place.gore <= gores && place.row >= 1 && place.row <= rows);
            std::ranges::sort(places, {}, [](const auto& place) { return std::pair(place.gore, place.row); });
            RC_ASSERT(std::ranges::adjacent_find(places) == places.end());
        }));
    }
};

CROWNRING_TEST(PlacePlanTest)

}

#include "place_plan_test.moc"

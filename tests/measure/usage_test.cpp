// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/compiles.h"
#include "measure/name.h"
#include "measure/usage.h"
#include "test_class.h"

#include <QtTest>

#include <type_traits>

namespace usage_test {

using namespace crownring;
using namespace crownring::test;

// That wrong pairs do not compile is proven in tests/lint/must_not_compile.txt; here, that a template asks and gets no.
static_assert(Adds<Minutes, Minutes> && !Adds<Minutes, Landings> && !Adds<Landings, Inflations> && !Adds<Minutes, int>);
static_assert(Compares<ItemId, ItemId> && !Compares<ItemId, Registration> && !Compares<RequirementId, ProgrammeId>);
static_assert(!std::is_convertible_v<int, Minutes> && !std::is_convertible_v<std::string, ItemId>);
static_assert(Adds<Figures, Usage> && !Adds<Usage, Figures>);

class UsageTest : public QObject {
    Q_OBJECT
private slots:
    // The swap of a basket between two envelopes: worked case 7.F of the rules sheet, arithmetic on tenths of an hour.
    void aBasketKeepsItsOwnHoursWhenItChangesTheBalloon() {
        const auto hours = [](int tenths) { return Figures{Minutes(tenths * 6), Landings(0), Inflations(0)}; };
        const Usage first{Minutes(90), Landings(1), Inflations(1)};
        const Usage second{Minutes(120), Landings(1), Inflations(1)};
        QCOMPARE((hours(6400) + first + second).minutes->value(), 6435 * 6);
        QCOMPARE((hours(2000) + first).minutes->value(), 2015 * 6);
        QCOMPARE((hours(500) + second).minutes->value(), 520 * 6);
    }

    void whatIsUnknownStaysUnknown() {
        const Figures figures =
            Figures{std::nullopt, Landings(3), std::nullopt} + Usage{Minutes(60), Landings(2), Inflations(1)};
        QVERIFY(!figures.minutes);
        QCOMPARE(figures.landings->value(), 5);
        QVERIFY(!figures.inflations);
    }

    void useAddsAndSubtractsPerClock() {
        const Usage sum =
            Usage{Minutes(60), Landings(1), Inflations(1)} + Usage{Minutes(35), Landings(4), Inflations(0)};
        QVERIFY((sum == Usage{Minutes(95), Landings(5), Inflations(1)}));
        QVERIFY((sum - sum == Usage{}));
        QVERIFY((newFigures + sum == Figures{Minutes(95), Landings(5), Inflations(1)}));
    }

    void namesCompareAsBytes() {
        QVERIFY(ItemId("Z") < ItemId("a"));
        QVERIFY(ItemId("a") < ItemId("\xC3\xA9"));
        QVERIFY(ItemId("10") < ItemId("9"));
    }
};

CROWNRING_TEST(UsageTest)

}

#include "usage_test.moc"

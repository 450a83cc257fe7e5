// SPDX-License-Identifier: GPL-3.0-or-later

/// Wear on the page of a basket: its places, the worst of each, and what is said of a trend. Figures by
/// tests/answers/wear_test.

#include "screen/form/form_hand.h"
#include "screen/wear/wear_desk.h"
#include "test_class.h"

#include <QTest>

namespace wear_desk_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* entries = R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","type":"T"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"basket","quantity":"runner-thickness","least":12,"unit":"mm","source":"invented for tests"}
{"entry":"reading.taken","on":"2025-01-02","item":"B1","quantity":"runner-thickness","value":20,"unit":"mm","place":"runner-1"}
{"entry":"flight.logged","on":"2025-02-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2025-02-02","item":"B1","quantity":"runner-thickness","value":18.9,"unit":"mm","place":"runner-1"}
{"entry":"flight.logged","on":"2025-03-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2025-03-02","item":"B1","quantity":"runner-thickness","value":18.1,"unit":"mm","place":"runner-1"}
{"entry":"flight.logged","on":"2025-04-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2025-04-02","item":"B1","quantity":"runner-thickness","value":16.8,"unit":"mm","place":"runner-1"}
{"entry":"reading.taken","on":"2025-04-02","item":"B1","quantity":"wicker-break","value":40,"unit":"mm","place":"long-side-2"})";

}

class WearDeskTest : public QObject {
    Q_OBJECT

private slots:
    void aBasketShowsItsPlacesWithTheirTrends() {
        FormHand hand;
        auto& house = hand.house();
        QVERIFY(isPosted(house, entries));
        QVERIFY(QTest::qWaitFor([&] { return hand.item("B1") != nullptr; }, 20'000));
        In<WearDesk> desk(house);
        desk.setItem(QStringLiteral("B1"));
        QVERIFY(QTest::qWaitFor([&] { return desk.series()->count() == 2; }, 20'000));
        QVERIFY(desk.isBasket() && desk.isWorth());
        QCOMPARE(desk.places()->count(), basketPlaceCount);
        const auto runner = desk.places()->choices()[static_cast<std::size_t>(BasketPlace::Runner1)];
        QCOMPARE(runner.value, QStringLiteral("runner-1"));
        QCOMPARE(runner.number, 1);
        QVERIFY2(runner.detail.contains(QStringLiteral("16.8 mm")) && runner.detail.contains(QStringLiteral("470 h")),
                 qPrintable(runner.detail));
        const auto side = desk.places()->choices()[static_cast<std::size_t>(BasketPlace::LongSide2)];
        QVERIFY(side.number == 1 && side.standing == -1); // one reading foretells nothing
        desk.setPlace(QStringLiteral("runner-1"));
        QCOMPARE(desk.series()->count(), 1);
        const auto detail = desk.series()->choices().front().detail;
        for (const char* words : {"limit 12 mm", "-1.04 each 100 h", "-1.32 to -0.76", "4 readings", "336 to 700 h",
                                  "at the pace of the last two years"})
            QVERIFY2(detail.contains(QString::fromUtf8(words)), qPrintable(detail));
        QCOMPARE(desk.givenFor(QStringLiteral("floor")).value(QStringLiteral("quantity")).toString(),
                 QStringLiteral("floor-thickness"));
        desk.setPlace(QStringLiteral("long-side-2"));
        QVERIFY(desk.series()->choices().front().detail.contains(QStringLiteral("fewer than three readings")));
    }
};

CROWNRING_TEST(WearDeskTest, QCoreApplication)

}

#include "wear_desk_test.moc"

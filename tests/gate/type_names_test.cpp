// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "problem/faults/entry_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

/// What is stated for "Kite-90" is asked of no "Kite 90". All of it is invented.
namespace type_names_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string limitOf(const char* type, bool confirmed = false) {
    return nlohmann::json{{"entry", "limit.stated"},     {"on", "2016-05-01"}, {"kind", "envelope"},
                          {"quantity", "grab-strength"}, {"unit", "N"},        {"least", 100},
                          {"source", "Manual, 6.3"},     {"type", type},       {"confirmed", confirmed}}
        .dump();
}
std::string described(const char* type) {
    return nlohmann::json{{"entry", "type.described"}, {"on", "2016-05-01"}, {"kind", "envelope"},
                          {"manual", "Manual"},        {"revision", "1"},    {"type", type}}
        .dump();
}

void expectAsked(Shop& shop, const std::string& lines) {
    const auto problems = problemsOf(shop.record(), lines);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(EntryFault::NearlyATypeKnown), qPrintable(words::line(problems.front())));
    QCOMPARE(problems.front().where.key, std::string("type"));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

const char* const kite = R"({"entry":"item.entered","on":"2016-05-01","item":"E9","kind":"envelope","type":"Kite 90"})";

}

class TypeNamesTest : public QObject {
    Q_OBJECT
private slots:
    void aNameThatIsNearlyOneThatIsKnownIsAskedBack() {
        Shop shop; // which has the type T-77
        for (const char* near : {"T 77", "t-77", "T77", "T.77"})
            expectAsked(shop, limitOf(near));
        expectAsked(shop, described("T 77"));
    }
    void withinOneBatchToo() {
        Shop shop;
        expectAsked(shop, described("Kite 90") + "\n" + limitOf("Kite-90"));
    }
    void ofATypeThatOnlyItemsHave() {
        Shop shop;
        shop.say(kite);
        expectAsked(shop, limitOf("Kite-90"));
        QVERIFY(problemsOf(shop.record(), limitOf("Kite 90")).empty());
    }
    void whoStandsByItIsTaken() {
        Shop shop;
        shop.say(limitOf("T 77", true));
        QVERIFY(problemsOf(shop.record(), limitOf("T 77")).empty()); // known from now on
    }
    void anotherNameIsNone() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), limitOf("T-78") + "\n" + described("T-78")).empty());
    }
};

CROWNRING_TEST(TypeNamesTest, QCoreApplication)

}

#include "type_names_test.moc"

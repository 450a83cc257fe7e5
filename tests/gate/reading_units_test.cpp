// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "problem/faults/reading_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace reading_units_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const char* text) { return '"' + std::string(text) + '"'; }

std::string pullOf(const char* unit) {
    return R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","value":0.05,"unit":)" +
           quoted(unit) + R"(,"gore":3,"row":16,"direction":"warp"})";
}

const char* const ofNobodysQuantity =
    R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"colour","value":3,"unit":"shades"})";

}

/// A reading in no unit of its quantity would pass for one that was never taken: the fabric would stand by the pull
/// before it.
class ReadingUnitsTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsNoUnitOfItIsRefused() {
        Shop shop;
        for (const auto& [unit, fault] :
             {std::pair{"parsec", ReadingFault::NoUnit}, std::pair{"degC", ReadingFault::OtherDimension}}) {
            const auto problems = problemsOf(shop.record(), pullOf(unit));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(fault));
            QCOMPARE(problems.front().where.key, std::string("unit"));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
        QVERIFY(problemsOf(shop.record(), pullOf("daN")).empty());
    }
    void whatTheBenchDoesNotKnowIsKept() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), ofNobodysQuantity).empty());
    }
};

CROWNRING_TEST(ReadingUnitsTest, QCoreApplication)

}

#include "reading_units_test.moc"

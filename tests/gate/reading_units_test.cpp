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

std::string pullOf(const char* unit, const char* value = "30") {
    return R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","value":)" +
           std::string(value) + R"(,"unit":)" + quoted(unit) + R"(,"gore":3,"row":16,"direction":"warp"})";
}

std::string with(std::string entry, const char* more) { return entry.insert(entry.size() - 1, more); }

const char* const envelopeOfNoType = R"({"entry":"item.entered","on":"2024-01-01","item":"E9","kind":"envelope"})";
std::string pullAt(const char* place) {
    return with(
        R"({"entry":"reading.taken","on":"2026-06-01","item":"E9","quantity":"grab-strength","value":300,"unit":"N"})",
        place);
}

const char* const heldForThree =
    R"({"entry":"limit.stated","on":"2017-05-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","proof":133.4,"places":2,"hold_s":3,"source":"Manual 77, 6.3"})";

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
    void aFigureThatNoTestGivesIsConfirmedOrRefused() {
        // The ranges are those of bench/reading/quantity: common practice, no source.
        Shop shop;
        for (const auto& [value, fault] :
             {std::pair{"-5", ReadingFault::CannotBeNegative}, std::pair{"1334", ReadingFault::Unconfirmed},
              std::pair{"3", ReadingFault::Unconfirmed}}) {
            const auto problems = problemsOf(shop.record(), pullOf("N", value));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(fault));
            QCOMPARE(problems.front().where.key, std::string("value"));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
        QVERIFY(problemsOf(shop.record(), with(pullOf("N", "1334"), R"(,"confirmed":true)")).empty());
        const auto id = shop.say(with(pullOf("N", "300"), R"(,"id":"pull")")).ids.at(0).text();
        const auto corrected = problemsOf(shop.record(), correction(id, R"({"value":3000})"));
        QCOMPARE(corrected.size(), std::size_t{1});
        QCOMPARE(corrected.front().where.key, std::string("with/value"));
    }
    void heldForNothingIsNotHeld() {
        Shop shop;
        const auto held = [](const char* seconds) {
            return with(pullOf("N", "300"), (R"(,"hold_s":)" + std::string(seconds)).c_str());
        };
        const auto problems = problemsOf(shop.record(), with(held("0"), R"(,"confirmed":true)"));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReadingFault::HeldForNothing));
        QCOMPARE(problems.front().where.key, std::string("hold_s"));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY(problemsOf(shop.record(), held("1")).empty());
    }
    void aLoadIsHeldAsLongAsTheManualHasIt() {
        // The manual's own time, as `limit.stated` has it; that less is asked back is common practice, no source.
        Shop shop;
        shop.say(heldForThree);
        const auto held = [](const char* more) {
            return with(
                R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","held_at":140,"unit":"N","gore":3,"row":16,"direction":"warp"})",
                more);
        };
        for (const auto* more : {R"(,"note":"nothing said")", R"(,"hold_s":2)"}) {
            const auto problems = problemsOf(shop.record(), held(more));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(ReadingFault::Unconfirmed));
            QCOMPARE(problems.front().where.key, std::string("hold_s"));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
        QVERIFY(problemsOf(shop.record(), held(R"(,"hold_s":3)")).empty());
        QVERIFY(problemsOf(shop.record(), held(R"(,"hold_s":2,"confirmed":true)")).empty());
    }
    void noEnvelopeHasSuchAGore() {
        // 64 gores, 60 rows: common practice, no source.
        Shop shop;
        shop.say(envelopeOfNoType);
        for (const auto& [place, fault] : {std::pair{R"(,"gore":500,"row":3)", ReadingFault::NoSuchGore},
                                           std::pair{R"(,"gore":3,"row":61)", ReadingFault::NoSuchRow}}) {
            const auto problems = problemsOf(shop.record(), pullAt(place));
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(fault));
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        }
        QVERIFY(problemsOf(shop.record(), pullAt(R"(,"gore":64,"row":60)")).empty());
    }
    void whatTheBenchDoesNotKnowIsKept() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), ofNobodysQuantity).empty());
    }
};

CROWNRING_TEST(ReadingUnitsTest, QCoreApplication)

}

#include "reading_units_test.moc"

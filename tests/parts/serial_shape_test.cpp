// SPDX-License-Identifier: GPL-3.0-or-later

/// Serial numbers against ranges, with letters and leading zeros, as people write them. Ranges are invented.

#include "parts/serial_shape.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace serial_shape_test {

using namespace crownring;

namespace {

std::vector<SerialRange> range(std::optional<std::string> from, std::optional<std::string> to) {
    return {{std::move(from), std::move(to)}};
}

std::string written(const std::string& letters, int number) {
    std::string text = letters;
    if (*rc::gen::inRange(0, 2) == 1)
        for (auto& c : text)
            c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (!text.empty())
        text += *rc::gen::element(std::string(), std::string("-"), std::string(" "), std::string("/"));
    return text + std::string(static_cast<std::size_t>(*rc::gen::inRange(0, 4)), '0') + std::to_string(number);
}

}

class SerialShapeTest : public QObject {
    Q_OBJECT

private slots:
    void caseDashesAndLeadingZerosDoNotMatter() {
        const auto ranges = range("A100", "A200");
        for (const char* inside : {"A100", "a-0150", "A 00200", "A/199"})
            QVERIFY2(isAmong(inside, ranges) == Truth::Yes, inside);
        for (const char* outside : {"A99", "A-0201", "a0001000"})
            QVERIFY2(isAmong(outside, ranges) == Truth::No, outside);
    }
    void whatIsWrittenOtherwiseIsUnknownAndNeverNo() {
        const auto ranges = range("A100", "A200");
        for (const char* other : {"150", "B150", "AB150", "A150-2", "", "-", "BAL 150/77"})
            QVERIFY2(isAmong(other, ranges) != Truth::No, other);
        QVERIFY(isAmong("150", ranges) == Truth::Unknown);
        QVERIFY(isAmong("", ranges) == Truth::Unknown);
    }
    void anOpenEndReachesOverItsOwnShapeOnly() {
        QVERIFY(isAmong("150", range("100", {})) == Truth::Yes);
        QVERIFY(isAmong("99", range("100", {})) == Truth::No);
        QVERIFY(isAmong("B150", range("100", {})) == Truth::Unknown);
        QVERIFY(isAmong("0012", range({}, "12")) == Truth::Yes);
    }
    void whatPartsTwoNumbersIsKept() {
        QVERIFY(isAmong("10-5", range("100", "110")) != Truth::Yes); // not 105
        QVERIFY(isAmong("10-5", range("10-1", "10-9")) == Truth::Yes);
        QVERIFY(isAmong("10 12", range("10-1", "10-9")) == Truth::No);
    }
    void ofSeveralRangesOneIsEnough() {
        const std::vector<SerialRange> ranges{{"A1", "A9"}, {"B1", {}}};
        QVERIFY(isAmong("B400", ranges) == Truth::Yes);
        QVERIFY(isAmong("A12", ranges) == Truth::Unknown); // no B: perhaps one that is written otherwise
    }
    /// However it is written, it is inside exactly when its number is.
    void aSerialOfTheShapeIsDecidedByItsNumber() {
        const bool holds = rc::check("a serial of the shape is decided by its number", [] {
            const auto letters = *rc::gen::element(std::string(), std::string("A"), std::string("HB"));
            const auto from = *rc::gen::inRange(0, 3000);
            const auto to = from + *rc::gen::inRange(0, 3000);
            const auto number = *rc::gen::inRange(0, 7000);
            const auto found = isAmong(written(letters, number), range(written(letters, from), written(letters, to)));
            RC_ASSERT((found == (from <= number && number <= to ? Truth::Yes : Truth::No)));
        });
        QVERIFY(holds);
    }
    void otherLettersAreNeverNo() {
        const bool holds = rc::check("other letters are never no", [] {
            const auto number = [] { return *rc::gen::inRange(0, 3000); };
            const auto own = *rc::gen::element(std::string("K"), std::string("Z"), std::string("AX"));
            const auto theirs = *rc::gen::element(std::string(), std::string("A"), std::string("HB"));
            const auto from = number();
            RC_ASSERT((isAmong(written(own, number()),
                               range(written(theirs, from), written(theirs, from + number()))) != Truth::No));
        });
        QVERIFY(holds);
    }
};

CROWNRING_TEST(SerialShapeTest)

}

#include "serial_shape_test.moc"

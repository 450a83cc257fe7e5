// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/decimal_text.h"
#include "test_class.h"

#include <QtTest>

namespace decimal_text_test {

using namespace crownring;

class DecimalTextTest : public QObject {
    Q_OBJECT
private slots:
    void commaAndPointDivide() {
        QCOMPARE(parseDecimal("98.5"), std::optional(98.5));
        QCOMPARE(parseDecimal("98,5"), std::optional(98.5));
        QCOMPARE(parseDecimal(" -40 "), std::optional(-40.0));
        QCOMPARE(parseDecimal("0,001"), std::optional(0.001));
        QCOMPARE(parseDecimal("1e-06"), std::optional(1e-6)); // as the record writes it
    }
    void whatIsNoFigureIsNone() {
        for (const auto* text :
             {"", " ", "-", "1,334.5", "1.334,5", "12 N", "nan", "inf", "0x10", "5.", ".", "--5", "1 000"})
            QVERIFY2(!parseDecimal(text), text);
    }
};

CROWNRING_TEST(DecimalTextTest)

}

#include "decimal_text_test.moc"

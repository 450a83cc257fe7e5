// SPDX-License-Identifier: GPL-3.0-or-later
#include "test_class.h"
#include "text/legible.h"

#include <QtTest>

namespace legible_test {

using namespace crownring;

class LegibleTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsSeenIsLegible() {
        for (const char* name : {"N1", "QE-OAK", "Korb 1", "\xC3\x96rt", "\xF0\x9F\x8E\x88"})
            QVERIFY2(isLegible(name), name);
    }
    void whatIsNotSeenIsNot() {
        for (const char* name : {"", " ", "N1 ", " N1", "N1\t", "\x7F", "N\xC2\x85", "N\xC2\xA0N", "N\xC2\xAD",
                                 "N\xE2\x80\x8B", "N\xE2\x80\xA8", "N\xE2\x80\xAEN", "N\xE3\x80\x80N", "N\xEF\xB8\x8F",
                                 "N\xEF\xBB\xBF", "N\xF3\xA0\x80\xA1"})
            QVERIFY2(!isLegible(name), name);
    }
    void whatIsNoUtf8IsNot() { QVERIFY(!isLegible("N\x9F")); }
};

CROWNRING_TEST(LegibleTest)

}

#include "legible_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// Months as they are stamped on cylinders. ADR 6.2.2.7.7 and 49 CFR 180.213, from memory.

#include "civil/civil_date.h"
#include "civil/stamped_month.h"
#include "problem/faults/components/part_fault.h"
#include "test_class.h"

#include <QtTest>

namespace stamped_month_test {

using namespace crownring;

using Months = std::vector<std::string>;

class StampedMonthTest : public QObject {
    Q_OBJECT
private slots:
    /// regulations.md 7.D, D7
    void aStampThatMayBeReadInTwoOrdersIsAskedAndNeverGuessed() {
        for (const char* stamp : {"05 06", "05/06", "05-06", "05.06"}) {
            QCOMPARE(monthsStamped(stamp), (Months{"2005-06", "2006-05"}));
            const auto read = DayOrMonth::parse(stamp);
            QVERIFY(!read);
            QVERIFY(read.error().fault == Fault(PartFault::StampAmbiguous));
            QVERIFY(read.error().arguments == (Arguments{stamp, "2005-06", "2006-05"}));
        }
    }
    void whereOneOrderAloneMakesAMonthItIsToldAndStillNotTaken() {
        QCOMPARE(monthsStamped("16/05"), Months{"2016-05"});
        QCOMPARE(monthsStamped("05/16"), Months{"2016-05"});
        QCOMPARE(monthsStamped("2016/05"), Months{"2016-05"});
        QCOMPARE(monthsStamped("05 2016"), Months{"2016-05"});
        QCOMPARE(monthsStamped("05/05"), Months{"2005-05"});
        QVERIFY(DayOrMonth::parse("2016/05").error().fault == Fault(PartFault::StampOfOneMonth));
    }
    /// Month, tester's mark, year: 49 CFR 180.213.
    void aTestersMarkBetweenThemTellsTheOrder() { QCOMPARE(monthsStamped("05 A123 06"), Months{"2006-05"}); }
    /// D8
    void aYearInTwoDigitsIsNotInTheFuture() { QCOMPARE(monthsStamped("97/03"), Months{"1997-03"}); }
    /// D2
    void aMonthThatIsWrittenOutKeepsItsPrecision() {
        QCOMPARE(DayOrMonth::parse("2016-05").value().iso(), std::string("2016-05"));
    }
    void whatIsNoStampIsNone() {
        for (const char* text :
             {"", "2016", "13/14", "5/6", "2016-05-01", "05 06 07", "spring 16", "2016-05 x", "0000-01"})
            QVERIFY2(monthsStamped(text).empty(), text);
    }
};

CROWNRING_TEST(StampedMonthTest, QCoreApplication)

}

#include "stamped_month_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table/fabric_table.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace fabric_table_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string heading = "envelope,lot,fabric,hours,row,dose,load,outcome\n";

std::vector<Problem> problemsOf(const std::string& rows) {
    auto table = readFabricTable(heading + rows, "pulls.csv");
    return table ? std::vector<Problem>{} : table.error();
}

}

/// A bare table of pulls: what becomes of its rows, and which rows are sent back.
class FabricTableTest : public QObject {
    Q_OBJECT
private slots:
    void pullsOfAnEnvelopeAndLotAreOneSet() {
        const auto table = readFabricTable(heading + "E1,L1,F,120,1,0.5,150,held\n"
                                                     "E2,L1,F,300,0.4,0,98.5,broke\n"
                                                     "E1,L2,F,10,1,0,200,held\n"
                                                     "E1,L1,F,80,0,0,150,held\n"
                                                     ",L2,F,0,,0,310,broke\n",
                                           "pulls.csv");
        QVERIFY(table.has_value());
        QCOMPARE(table->envelopes, (std::vector<std::string>{"E1", "E2"}));
        QCOMPARE(table->lots, (std::vector<std::string>{"L1", "L2"}));
        QCOMPARE(table->envelopeOfSet, (std::vector<std::size_t>{0, 1, 0}));
        QCOMPARE(table->fleet.lotOfSet, (std::vector<std::size_t>{0, 0, 1}));
        QCOMPARE(table->fleet.coupons.size(), std::size_t{1});
        QCOMPARE(table->fleet.coupons[0].lot, std::size_t{1});
        std::vector<std::size_t> sets;
        for (const auto& reading : table->fleet.readings)
            sets.push_back(reading.set);
        QCOMPARE(sets, (std::vector<std::size_t>{0, 0, 1, 2}));
        QCOMPARE(table->useOfSet[0].hours, 120.0);
        QCOMPARE(table->useOfSet[0].dose, 0.5);
        QCOMPARE(table->fleet.readings[0].observed, (Observation{Seen::AtLeast, std::log(150.0), 0}));
        QCOMPARE(table->fleet.readings[2].observed, (Observation{Seen::Exactly, std::log(98.5), 0}));
    }
    void aLotNameOfAnotherFabricIsAnotherLot() {
        const auto table = readFabricTable(heading + "E1,1,F,1,1,0,50,held\nE2,1,G,1,1,0,50,held\n", "pulls.csv");
        QCOMPARE(table->fleet.fabricOfLot, (std::vector<std::size_t>{0, 1}));
    }
    void columnsMayStandInAnyOrderWithOthersBetween() {
        const auto table =
            readFabricTable("outcome;load;colour;dose;row;hours;fabric;lot;envelope\nheld;50;red;0;1;7;F;L;E\n", "p");
        QVERIFY(table.has_value());
        QCOMPARE(table->fleet.readings[0].hours, 7.0);
    }
    void whatCannotBeIsSentBackWithLineAndColumn_data() {
        QTest::addColumn<QString>("row");
        QTest::addColumn<QString>("column");
        const auto row = [](const char* name, const char* text, const char* column) {
            QTest::newRow(name) << QString::fromLatin1(text) << QString::fromLatin1(column);
        };
        row("minus hours", "E,L,F,-1,1,0,50,held", "hours");
        row("a row above the crown", "E,L,F,1,1.01,0,50,held", "row");
        row("no load", "E,L,F,1,1,0,0,held", "load");
        row("a load in words", "E,L,F,1,1,0,fifty,held", "load");
        row("an infinite load", "E,L,F,1,1,0,inf,held", "load");
        row("minus dose", "E,L,F,1,1,-2,50,held", "dose");
        row("passed says neither", "E,L,F,1,1,0,50,passed", "outcome");
        row("no lot", "E,,F,1,1,0,50,held", "lot");
        row("no fabric", "E,L,,1,1,0,50,held", "fabric");
        row("a coupon that flew", ",L,F,5,1,0,50,broke", "hours");
        row("too short", "E,L,F", "hours");
    }
    void whatCannotBeIsSentBackWithLineAndColumn() {
        QFETCH(QString, row);
        QFETCH(QString, column);
        const auto problems = problemsOf("E,L,F,1,1,0,50,held\n" + row.toStdString() + "\n");
        QVERIFY(!problems.empty());
        QCOMPARE(problems[0].code(), Code::CsvBadRow);
        QCOMPARE(problems[0].where.line, 3);
        QCOMPARE(problems[0].where.key, column.toStdString());
        QVERIFY2(isSaid(problems[0]), qPrintable(words::line(problems[0])));
    }
    void aSlipOfTheDecimalPointIsAsked() {
        const auto problems = problemsOf("E,L,F,1,1,0,150,held\nE,L,F,2,1,0,140,broke\nE,L,F,3,1,0,145000,broke\n");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems[0].where.line, 4);
        QCOMPARE(problems[0].where.key, std::string("load"));
    }
    void everyBadRowIsNamedNotOnlyTheFirst() {
        QCOMPARE(problemsOf("E,L,F,1,1,0,50,x\nE,L,F,1,1,0,50,held\nE,L,F,1,1,0,50,y\n").size(), std::size_t{2});
    }
    void withoutAColumnNothingIsRead() {
        const auto table = readFabricTable("envelope,lot,fabric,hours,row,dose,load\nE,L,F,1,1,0,50\n", "p.csv");
        QVERIFY(!table.has_value());
        QCOMPARE(table.error()[0].code(), Code::CsvNoHeader);
        QCOMPARE(table.error()[0].where.key, std::string("outcome"));
        QCOMPARE(readFabricTable("", "p.csv").error()[0].code(), Code::CsvNoHeader);
    }
};

CROWNRING_TEST(FabricTableTest)

}

#include "fabric_table_test.moc"

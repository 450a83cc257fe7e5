// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table/csv_table.h"
#include "exchange/text/plain_text.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace csv_table_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

using Fields = std::vector<std::string>;

CsvTable read(std::string_view text) {
    auto table = readCsv(text, "log.csv");
    return table ? std::move(*table) : CsvTable{};
}

}

/// Checked against RFC 4180, section 2 (rule numbers in the names).
class CsvTableTest : public QObject {
    Q_OBJECT
private slots:
    void rule1And2LinesMayEndInCrLfAndTheLastMayNot() {
        const auto table = read("aaa,bbb,ccc\r\nzzz,yyy,xxx");
        QCOMPARE(table.rows.size(), std::size_t{2});
        QCOMPARE(table.rows[0].fields, (Fields{"aaa", "bbb", "ccc"}));
        QCOMPARE(table.rows[1].fields, (Fields{"zzz", "yyy", "xxx"}));
        QCOMPARE(table.rows[1].line, 2);
    }

    void rule5And6QuotesHoldSeparatorsAndLineEnds() {
        const auto table = read("\"aaa\",\"b \r\nbb\",\"c,cc\"\r\nzzz,yyy,xxx\r\n");
        QCOMPARE(table.rows.size(), std::size_t{2});
        QCOMPARE(table.rows[0].fields, (Fields{"aaa", "b \r\nbb", "c,cc"}));
        QCOMPARE(table.rows[1].line, 3);
    }

    void rule7AQuoteInsideIsDoubled() {
        QCOMPARE(read("\"aaa\",\"b\"\"bb\",\"ccc\"").rows[0].fields, (Fields{"aaa", "b\"bb", "ccc"}));
        QCOMPARE(read("\"\"\"\",x").rows[0].fields, (Fields{"\"", "x"}));
        QCOMPARE(read("5\" hose,x").rows[0].fields, (Fields{"5\" hose", "x"}));
    }

    void rule4BlanksBelongToTheFieldAndEmptyFieldsStay() {
        QCOMPARE(read(" a ,,\"\"").rows[0].fields, (Fields{" a ", "", ""}));
    }

    void theSeparatorIsFoundFromTheHeader_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<char>("separator");
        QTest::newRow("comma") << QByteArray("a,b,c\n1,2,3") << ',';
        QTest::newRow("semicolon, decimal commas below") << QByteArray("a;b\n1,5;2,5") << ';';
        QTest::newRow("tab") << QByteArray("a\tb\n1,5\t2;5") << '\t';
        QTest::newRow("bar") << QByteArray("a|b|c\n") << '|';
        QTest::newRow("a title above") << QByteArray("Flights of the year\n\na;b;c\n1;2;3") << ';';
        QTest::newRow("quoted ones do not count") << QByteArray("\"a;b;c;d\",e,f\n") << ',';
        QTest::newRow("stated") << QByteArray("sep=;\na;b,c,d\n") << ';';
        QTest::newRow("a tie goes to the one that is no decimal mark") << QByteArray("max, temp;b\n") << ';';
        QTest::newRow("none") << QByteArray("minutes\n55\n") << ',';
    }
    void theSeparatorIsFoundFromTheHeader() {
        QFETCH(QByteArray, text);
        QFETCH(char, separator);
        const auto table = read(text.toStdString());
        QCOMPARE(table.separator, separator);
        QVERIFY(!table.rows.empty());
        QVERIFY(!table.rows[0].fields[0].starts_with("sep="));
    }

    void aByteOrderMarkIsNoPartOfTheFirstHeading() {
        QCOMPARE(read("\xEF\xBB\xBF"
                      "a,b\n")
                     .rows[0]
                     .fields[0],
                 std::string("a"));
    }

    void blankRowsAreLeftOutAndTheLinesStillCount() {
        const auto table = read("a,b\r\r , \r1,2\r");
        QCOMPARE(table.rows.size(), std::size_t{2});
        QCOMPARE(table.rows[1].line, 4);
    }

    void aQuoteThatNeverClosesIsToldByTheLineWhereItOpens() {
        const auto table = read("a,b\n1,2\n3,\"four\n5,6\n");
        QCOMPARE(table.rows.size(), std::size_t{2});
        QCOMPARE(table.badRows.size(), std::size_t{1});
        QCOMPARE(table.badRows[0].code(), Code::CsvBadRow);
        QCOMPARE(table.badRows[0].where, (Where{"log.csv", 3, ""}));
    }

    void textBehindAClosingQuoteIsABadRowAndTheNextRowsAreRead() {
        const auto table = read("a,b\n\"x\"y,2\n3,4\n");
        QCOMPARE(table.badRows.size(), std::size_t{1});
        QCOMPARE(table.badRows[0].where.line, 2);
        QCOMPARE(table.rows.back().fields, (Fields{"3", "4"}));
    }

    void latin1IsReadAndTold() {
        const auto table = read("H\xF6"
                                "chsttemperatur;Ger\xE4t \x80\n1;2\n");
        QVERIFY(table.converted);
        QCOMPARE(table.rows[0].fields, (Fields{"Höchsttemperatur", "Gerät €"}));
        QVERIFY(!read("Höchsttemperatur;b\n").converted);
    }

    void whatIsNoTextOfOneByteALetterIsRefused() {
        using namespace std::string_view_literals;
        for (const auto bytes : {"\xFF\xFE\x61\x00"sv, "PK\x03\x04\x00\x00"sv}) {
            const auto table = readCsv(bytes, "log.xlsx");
            QVERIFY(!table);
            QCOMPARE(table.error().code(), Code::FileUnreadable);
            QCOMPARE(table.error().where.file, std::string("log.xlsx"));
            QVERIFY2(isSaid(table.error()), qPrintable(words::line(table.error())));
        }
    }

    void aFileBeyondTheLimitIsRefused() {
        const auto table = readCsv(std::string(largestImport + 1, 'a'), "log.csv");
        QVERIFY(!table);
        QCOMPARE(table.error().code(), Code::FileUnreadable);
        std::string many;
        for (std::size_t i = 0; i <= mostCsvRows; ++i)
            many += "a\n";
        QVERIFY(!readCsv(many, "log.csv"));
    }

    void accentsAndCaseFoldAway() {
        QCOMPARE(folded("Durée  (h:mm)"), std::string("duree h mm"));
        QCOMPARE(folded("FÜLLUNGEN – Größe"), std::string("fullungen grosse"));
        QCOMPARE(folded("Max. temp °C"), std::string("max temp c"));
        QCOMPARE(trimmed("\xC2\xA0 a b \xC2\xA0\t"), std::string_view("a b"));
    }
};

CROWNRING_TEST(CsvTableTest)

}

#include "csv_table_test.moc"

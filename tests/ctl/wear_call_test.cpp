// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl wear: the keys of its answer. Figures by tests/parts/wear_test.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace wear_call_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* entries = R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","type":"T"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"basket","quantity":"runner-thickness","least":12,"unit":"mm","source":"invented for tests"}
{"entry":"reading.taken","on":"2024-01-02","item":"B1","quantity":"runner-thickness","value":20,"unit":"mm","place":"runner-1"}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2024-02-02","item":"B1","quantity":"runner-thickness","value":1.89,"unit":"cm","place":"runner-1"}
{"entry":"reading.taken","on":"2024-02-02","item":"B1","quantity":"broken-strands","value":0,"unit":"count","place":"corner-3"}
{"entry":"flight.logged","on":"2024-03-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2024-03-02","item":"B1","quantity":"runner-thickness","value":18.1,"unit":"mm","place":"runner-1"}
{"entry":"flight.logged","on":"2024-04-01","balloon":"QE-ONE","minutes":6000}
{"entry":"reading.taken","on":"2024-04-02","item":"B1","quantity":"runner-thickness","value":16.8,"unit":"mm","place":"runner-1"}
)";

}

class WearCallTest : public QObject, OwnRecord {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(ctl({"post", "-"}, entries).code, 0); }

    void aSeriesHasTheKeysOfTheContract() {
        const auto answer = ctl({"wear", "B1", "--on", "2024-05-01", "--json"});
        QCOMPARE(answer.code, 0);
        const auto document = answer.document();
        QCOMPARE(document["series"].size(), std::size_t{2});
        const auto runner = document["series"][1];
        QCOMPARE(runner["quantity"].get<std::string>(), std::string("runner-thickness"));
        QCOMPARE(runner["place"].get<std::string>(), std::string("runner-1"));
        QCOMPARE(runner["n"].get<int>(), 4);
        QCOMPARE(runner["value"].get<double>(), 16.8);
        QVERIFY(std::abs(runner["slope_per_100h"].get<double>() + 1.04) < 1e-9);
        QVERIFY(std::abs(runner["interval"][0].get<double>() + 1.3188437665785) < 1e-8);
        QVERIFY(std::abs(runner["interval"][1].get<double>() + 0.7611562334215) < 1e-8);
        QCOMPARE(runner["limit"].get<double>(), 12.0);
        QVERIFY(std::abs(runner["hours_to_limit"][0].get<double>() - 336.38285033781888) < 1e-6);
        QVERIFY(std::abs(runner["hours_to_limit"][1].get<double>() - 470.19230769230768) < 1e-6);
        QVERIFY(std::abs(runner["hours_to_limit"][2].get<double>() - 700.07691978491084) < 1e-6);
        QVERIFY(!runner.contains("why"));
    }

    void whereNothingIsForetoldItSaysWhy() {
        const auto strands = ctl({"wear", "B1", "--on", "2024-05-01", "--json"}).document()["series"][0];
        QCOMPARE(strands["quantity"].get<std::string>(), std::string("broken-strands"));
        QCOMPARE(strands["place"].get<std::string>(), std::string("corner-3"));
        QVERIFY(strands["hours_to_limit"].is_null() && strands["slope_per_100h"].is_null());
        QVERIFY(strands["interval"].is_null() && strands["limit"].is_null());
        QVERIFY(strands["why"].get<std::string>().find("fewer than three") != std::string::npos);
    }

    void forPeopleItIsALineASeries() {
        const auto said = ctl({"wear", "B1", "--on", "2024-05-01"});
        QCOMPARE(said.code, 0);
        QVERIFY(said.out.contains("thickness left of the runner, runner 1: 16.8 mm, -1.04 each 100 h"));
        QVERIFY(said.out.contains("no forecast"));
    }

    void anItemThatIsNotThereIsRefused() {
        QCOMPARE(ctl({"wear", "B2", "--on", "2024-05-01", "--json"}).code, 2);
        QCOMPARE(ctl({"wear", "B1", "--on", "2023-05-01", "--json"}).code, 2);
    }
};

CROWNRING_TEST(WearCallTest)

}

#include "wear_call_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// What papers and the inspection's JSON say of where a test was made and with what. All of it is invented.

#include "acts/shop.h"
#include "answers/bench_file.h"
#include "paper/document_text.h"
#include "said.h"
#include "sheets/sheets.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace where_and_with_what_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

BenchFile fileOn(const Shop& shop) { return benchFile(shop.record(), shop.inspection, day("2026-06-02")).value(); }

QString reportOf(const Shop& shop) {
    return QString::fromStdString(paper::toText(inspectionReport(fileOn(shop), english), english, 2000));
}

const char* const measuring =
    R"({"entry":"tester.calibrated","on":"2026-01-02","tester":"F-1","until":"2026-12-31","measures":["grab-strength"],"unit":"N","from":50,"to":500})";
const char* const inParachute =
    R"(,"tester":"F-1","zone":"parachute","hold_s":3,"dry":true,"side":"inside","temp_c":18)";

}

class WhereAndWithWhatTest : public QObject {
    Q_OBJECT
private slots:
    void anInstrumentThatDoesNotSayWhatItMeasuresIsSaidToBeSuch() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(reportOf(shop).contains(QStringLiteral("the record does not say what it measures")));
        shop.say(measuring);
        const auto report = reportOf(shop);
        QVERIFY(!report.contains(QStringLiteral("the record does not say what it measures")));
        QVERIFY2(report.contains(QStringLiteral("grab strength, 50 N to 500 N")), qPrintable(report));
        const auto tester = inspectionJson(fileOn(shop), english)["testers"].front();
        QCOMPARE(tester["calibrated_until"].get<std::string>(), std::string("2026-12-31"));
        QCOMPARE(tester["measures"].get<std::string>(), std::string("grab strength, 50 N to 500 N"));
    }
    void aReadingSaysInWhichPartAndHow() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.pull(3, R"("value":200)", inParachute);
        const auto report = reportOf(shop);
        QVERIFY2(report.contains(QStringLiteral("parachute vent, gore 3")), qPrintable(report));
        QVERIFY2(report.contains(QStringLiteral("for 3 s, dry, from inside, 18 °C")), qPrintable(report));
        const auto json = inspectionJson(fileOn(shop), english);
        const auto& last = json["readings"].back();
        QCOMPARE(last["zone"].get<std::string>(), std::string("parachute"));
        QCOMPARE(last["side"].get<std::string>(), std::string("inside"));
        QCOMPARE(json["readings"].front()["zone"].get<std::string>(), std::string("envelope"));
    }
    void whatItemsWithoutATypeAreNotAskedForStandsInTheAnswer() {
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlInspection);
        const auto json = inspectionJson(fileOn(shop), english);
        std::set<std::string> items;
        for (const auto& each : json["not_asked"])
            items.insert(each["item"].get<std::string>());
        QCOMPARE(items, (std::set<std::string>{"B1", "R1", "C1"}));
        const auto& quantities = json["not_asked"].back()["quantities"];
        QVERIFY(std::ranges::find(quantities, "cylinder-leak-test") != quantities.end());
    }
};

CROWNRING_TEST(WhereAndWithWhatTest, QCoreApplication)

}

#include "where_and_with_what_test.moc"

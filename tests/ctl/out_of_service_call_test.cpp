// SPDX-License-Identifier: GPL-3.0-or-later

/// States of life as a program hears them: left out unless asked for, told where they are.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

using namespace crownring::testing;
using nlohmann::json;

namespace {

constexpr const char* whatThereIs = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-TWO","item":"E2"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"plain","everything":true,"document":{"programme":"plain","revision":"1","title":"Plain","source":"invented for tests","requirements":[{"id":"plain.look","title":"Look at it","source":"invented for tests","kinds":["envelope"],"action":"inspect","limits":[{"clock":"months","every":12}],"starts_from":"entered"}]}}
{"entry":"balloon.state","on":"2024-03-01","balloon":"QE-ONE","state":"laid-up"}
{"entry":"balloon.entered","on":"2024-04-01","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2024-04-01","balloon":"QE-TWO","to":"QE-NEW"})";
constexpr const char* aSixth = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-SIX"}
{"entry":"item.entered","on":"2024-01-01","item":"E6","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"C6","kind":"cylinder"}
{"entry":"item.entered","on":"2024-01-01","item":"B6","kind":"basket","id":"b6"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-SIX","item":"E6"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-SIX","item":"C6"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-SIX","item":"B6"})";
constexpr const char* ofWhichTwoAreGone = R"({"entry":"item.state","on":"2024-05-01","item":"C6","state":"scrapped"}
{"entry":"entry.voided","on":"2024-05-01","voids":"b6","reason":"of another shop"})";

}

class OutOfServiceCallTest : public QObject, OwnRecord {
    Q_OBJECT

    std::vector<std::string> names(const QStringList& more) {
        std::vector<std::string> names;
        const auto answer = ctl(QStringList{"balloons", "--on", "2024-05-01", "--json"} + more).document();
        for (const auto& line : answer.at("balloons"))
            names.push_back(line.at("balloon"));
        return names;
    }

private slots:
    void initTestCase() { QCOMPARE(ctl({"post", "-"}, whatThereIs).code, 0); }

    void dueLeavesItOutUnlessAsked() {
        const auto due = ctl({"due", "--on", "2025-06-01", "--json"}).document().at("rows");
        QCOMPARE(due.size(), std::size_t(1));
        QCOMPARE(due[0]["balloon"].get<std::string>(), std::string("QE-NEW"));
        const auto all = ctl({"due", "--on", "2025-06-01", "--out-of-service", "--json"}).document().at("rows");
        QCOMPARE(all.size(), std::size_t(2));
        for (const auto& row : all)
            QCOMPARE(row["standing"].get<std::string>(), std::string("lapsed"));
    }

    void whatIsLeftOutIsSaid() {
        const auto told = ctl({"due", "--on", "2025-06-01", "--item", "E1"});
        QCOMPARE(told.code, 0);
        QVERIFY2(told.out.contains("E1 is out of service") && told.out.contains("--out-of-service"),
                 told.out.constData());
    }

    void balloonsLeavesItOutUnlessAsked() {
        QCOMPARE(names({}), std::vector<std::string>{"QE-NEW"});
        QCOMPARE(names({"--out-of-service"}), (std::vector<std::string>{"QE-NEW", "QE-ONE", "QE-TWO"}));
        QCOMPARE(names({"--balloon", "QE-ONE"}), std::vector<std::string>{"QE-ONE"});
    }

    void aLineSaysWhyAndSinceWhen() {
        const auto line =
            ctl({"balloons", "--on", "2024-05-01", "--balloon", "QE-ONE", "--json"}).document().at("balloons").at(0);
        QCOMPARE(line["state"].get<std::string>(), std::string("laid-up"));
        QCOMPARE(line["since"].get<std::string>(), std::string("2024-03-01"));
        QVERIFY(line["standing"].is_null());
        const auto former = ctl({"balloons", "--on", "2024-05-01", "--balloon", "QE-TWO", "--json"}).document();
        QCOMPARE(former.at("balloons").at(0)["renamed"].get<std::string>(), std::string("QE-NEW"));
        const auto anew = ctl({"balloons", "--on", "2024-05-01", "--balloon", "QE-NEW", "--json"}).document();
        QCOMPARE(anew.at("balloons").at(0)["before"].get<std::string>(), std::string("QE-TWO"));
        const auto text = ctl({"balloons", "--on", "2024-05-01", "--balloon", "QE-ONE"}).out;
        QVERIFY2(text.contains("laid up since 2024-03-01"), text.constData());
    }

    void rigUpSaysThatItIsOut() {
        const auto answer = ctl({"rig-up", "--kit", "E1", "--on", "2024-05-01", "--json"});
        QCOMPARE(answer.code, 1);
        const auto reasons = answer.document().at("reasons");
        QVERIFY(std::ranges::any_of(reasons, [](const json& reason) {
            return reason["reason"] == "out-of-service" && reason["item"] == "E1" &&
                   reason["text"] == "E1 is out of service: with QE-ONE, laid up since 2024-03-01";
        }));
    }

    void aLineWithAPartOutOrUnknownSaysSoAndIsNotClear() {
        QCOMPARE(ctl({"post", "-"}, aSixth).code, 0);
        const auto line = [&] {
            return ctl({"balloons", "--on", "2024-06-01", "--balloon", "QE-SIX", "--json"})
                .document()
                .at("balloons")
                .at(0);
        };
        QCOMPARE(line()["standing"].get<std::string>(), std::string("clear"));
        QVERIFY(!line().contains("reasons"));
        QCOMPARE(line()["unsupported"], json::array());
        QCOMPARE(ctl({"post", "-"}, ofWhichTwoAreGone).code, 0);
        const auto told = line();
        QCOMPARE(told["standing"].get<std::string>(), std::string("unproven"));
        QVERIFY(told["requirement"].is_null() && told["due"].is_null());
        QCOMPARE(told["reasons"].size(), std::size_t(2));
        QCOMPARE(told["reasons"][0]["reason"].get<std::string>(), std::string("out-of-service"));
        QCOMPARE(told["reasons"][0]["item"].get<std::string>(), std::string("C6"));
        QCOMPARE(told["reasons"][1]["reason"].get<std::string>(), std::string("cannot-say"));
        const auto text = ctl({"balloons", "--on", "2024-06-01", "--balloon", "QE-SIX"}).out;
        QVERIFY2(text.contains("unproven  C6 is out of service though fitted; else: 1 fitted item is not in the record"
                               " on that day, so nothing can be said; else: clear"),
                 text.constData());
    }

    void whatIsNoStateIsRefusedWithTheWords() {
        const auto answer =
            ctl({"post", "-"}, R"({"entry":"item.state","on":"2024-05-01","item":"E1","state":"retired"})");
        QCOMPARE(answer.code, 2);
        QVERIFY2(answer.err.contains("in-service, laid-up, sold, scrapped, lost"), answer.err.constData());
    }
};

CROWNRING_TEST(OutOfServiceCallTest)
#include "out_of_service_call_test.moc"

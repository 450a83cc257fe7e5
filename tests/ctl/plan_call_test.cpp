// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl plan: the keys of the contract (issue 15), and what is refused. Plans are judged in
/// tests/forecast/visits.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QtTest>

namespace plan_call_test {

using namespace crownring::testing;

namespace {

constexpr const char* balloon =
    R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"requirement.done","on":"2026-03-10","item":"E1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2026-05-20","item":"E1","requirement":"ml.arc-review"}
)";
/// One at the shed, two weeks early; one where nobody knows, one in the week that runs.
constexpr const char* planned =
    R"({"entry":"visit.planned","id":"early","on":"2026-11-20","balloon":"QE-ONE","station":"Shed","from":"2027-02-16","to":"2027-02-17"}
{"entry":"visit.planned","id":"lost","on":"2026-11-20","balloon":"QE-ONE","station":"Nowhere","from":"2027-02-02","to":"2027-02-03"}
{"entry":"visit.planned","id":"now","on":"2026-11-20","balloon":"QE-ONE","station":"Shed","from":"2026-11-24","to":"2026-11-26"}
)";
constexpr const char* shed = R"({"stations":[{"station":"Shed","visit":200,"at_once":1}]})";

}

class PlanCallTest : public QObject, private OwnRecord {
    Q_OBJECT

private slots:
    /// Annual and review in one visit, the review within its 90 days; bad files are refused with their place.
    void aPlanSaysWhereWhenWhatAndWhy() {
        QCOMPARE(ctl({"post", "-"}, balloon).code, 0);
        const auto programme = QStringLiteral(CROWNRING_SOURCE_DIR "/assets/programmes/part-ml-hot-air.json");
        QCOMPARE(ctl({"adopt", programme, "--all", "--on", "2024-01-01"}).code, 0);
        const QStringList asked{"plan", "--stations", "-", "--from", "2026-11-25"};
        const auto told = ctl(asked + QStringList{"--months", "6", "--json"}, shed).document();
        QCOMPARE(told["visits"].size(), std::size_t{1});
        const auto& visit = told["visits"][0];
        QCOMPARE(visit["week"].get<std::string>(), std::string("2027-03-01"));
        QCOMPARE(visit["covers"].size(), std::size_t{2});
        QVERIFY(visit["covers"][1]["keeps_date"].get<bool>());
        QVERIFY(told["cost"].get<double>() < told["cost_when_due"].get<double>());
        QVERIFY(told["gap"].get<double>() <= 0.01 && told["not_kept"].empty());

        const auto closed = ctl(
            asked + QStringList{"--months", "6", "--json"},
            R"({"stations":[{"station":"Shed","visit":200,"at_once":1,"open":[{"from":"2027-04-01","to":"2027-12-31"}]}]})");
        QCOMPARE(closed.document()["not_kept"][0]["due"].get<std::string>(), std::string("2027-03-10"));

        // What the record plans already holds its place, where it can; and does not where that is asked.
        QCOMPARE(ctl({"post", "-"}, planned).code, 0);
        const auto held = ctl(asked + QStringList{"--months", "6", "--json"}, shed).document();
        QCOMPARE(held["held"].size(), std::size_t{1});
        QCOMPARE(held["held"][0]["entry"].get<std::string>(), std::string("early"));
        QCOMPARE(held["visits"][0]["week"].get<std::string>(), std::string("2027-02-15"));
        QVERIFY(held["visits"][0]["pinned"].get<bool>());
        QVERIFY(held["cost"].get<double>() > told["cost"].get<double>());
        QCOMPARE(held["not_held"].size(), std::size_t{2});
        QVERIFY(!held["not_held"][0]["why"].get<std::string>().empty());
        const auto without = ctl(asked + QStringList{"--months", "6", "--without-planned", "--json"}, shed).document();
        QCOMPARE(without["visits"], told["visits"]);
        QVERIFY(without["held"].empty() && without["not_held"].empty());

        // Before anything was there nothing is promised of it; what nobody foretells is refused.
        const auto before = ctl({"plan", "--stations", "-", "--from", "2020-01-06"}, shed);
        QVERIFY2(before.out.contains("There is nothing to plan for") && !before.out.contains("chance"), before.out);
        QCOMPARE(ctl({"plan", "--stations", "-", "--from", "2100-01-04"}, shed).code, 2);

        const auto refused = ctl(asked, R"({"stations":[{"station":"Shed","visit":-1,"at_once":1}]})");
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("/stations/0/visit"), refused.err.constData());
    }
};

CROWNRING_TEST(PlanCallTest)

}

#include "plan_call_test.moc"

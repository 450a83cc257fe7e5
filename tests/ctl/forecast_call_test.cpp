// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl forecast, calendar, and `projected` of due: the keys of the contract (02, issue 15). Figures are told
/// in tests/forecast.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

namespace forecast_call_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* programme = R"({"programme":"p","revision":"1","title":"P","source":"invented for tests",
"requirements":[
{"id":"hours","title":"Every 100 hours","source":"invented for tests","kinds":["envelope","basket"],"action":"inspect",
 "starts_from":"entered","limits":[{"clock":"minutes","every":6000}]},
{"id":"month","title":"Every month","source":"invented for tests","kinds":["envelope"],"action":"inspect",
 "starts_from":"entered","limits":[{"clock":"months","every":26}]},
{"id":"either","title":"Either","source":"invented for tests","kinds":["envelope"],"action":"inspect",
 "starts_from":"entered","limits":[{"clock":"months","every":26},{"clock":"minutes","every":6000}]},
{"id":"never","title":"Never done","source":"invented for tests","kinds":["envelope"],"action":"inspect",
 "limits":[{"clock":"minutes","every":6000}]}]})";

QByteArray entries() {
    QByteArray lines = R"({"entry":"balloon.entered","on":"2023-12-31","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2023-12-31","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2023-12-31","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2023-12-31","item":"B2","kind":"basket"}
{"entry":"item.fitted","on":"2023-12-31","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2023-12-31","balloon":"QE-ONE","item":"B1"}
{"entry":"item.state","on":"2024-01-02","item":"B2","state":"laid-up"}
)";
    // 5 flights of 20 minutes a month for two years: 20 h a year each, 40 h by the end of 2025.
    for (int month = 0; month < 24; ++month)
        for (int flight = 0; flight < 5; ++flight)
            lines += QStringLiteral(R"({"entry":"flight.logged","on":"%1-%2-%3","balloon":"QE-ONE","minutes":20})")
                         .arg(2024 + month / 12)
                         .arg(month % 12 + 1, 2, 10, QLatin1Char('0'))
                         .arg(3 + flight * 5, 2, 10, QLatin1Char('0'))
                         .toUtf8() +
                     "\n";
    return lines;
}

}

class ForecastCallTest : public QObject, OwnRecord {
    Q_OBJECT

    nlohmann::json rowOf(const nlohmann::json& due, const std::string& item, const std::string& requirement) {
        for (const auto& row : due["rows"])
            if (row["item"] == item && row["requirement"] == requirement)
                return row;
        return {};
    }

private slots:
    void initTestCase() {
        QFile file(path("p.json"));
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write(programme) > 0);
        file.close();
        QCOMPARE(ctl({"post", "-"}, entries()).code, 0);
        QCOMPARE(ctl({"adopt", path("p.json"), "--all", "--on", "2023-12-31"}).code, 0);
    }

    void aRowThatUseLimitsHasABandOfDays() {
        const auto due = ctl({"due", "--on", "2025-12-31", "--json"}).document();
        const auto told = rowOf(due, "E1", "hours")["projected"];
        const auto p10 = told["p10"].get<std::string>(), p50 = told["p50"].get<std::string>(),
                   p90 = told["p90"].get<std::string>();
        QVERIFY(p10 < p50 && p50 < p90);
        // 60 h left at 20 h a year
        QVERIFY2(p50 > "2028-06" && p50 < "2029-07", p50.c_str());
    }
    void aDateIsCertainAndComesFirst() {
        const auto due = ctl({"due", "--on", "2025-12-31", "--json"}).document();
        for (const auto* requirement : {"month", "either"}) {
            const auto told = rowOf(due, "E1", requirement)["projected"];
            // 31 December 2023 and 26 months: the last day of a shorter month
            for (const auto* place : {"p10", "p50", "p90"})
                QCOMPARE(told[place].get<std::string>(), std::string("2026-02-28"));
        }
    }
    void whatIsUnprovenOrPastHasNone() {
        const auto due = ctl({"due", "--on", "2025-12-31", "--json"}).document();
        const auto never = rowOf(due, "E1", "never");
        QVERIFY(never.contains("projected") && never["projected"].is_null());
        const auto late = ctl({"due", "--on", "2026-03-10", "--json"}).document();
        QVERIFY(rowOf(late, "E1", "month")["projected"].is_null());
    }
    void oneBalloonIsToldAsInTheFleet() {
        const auto fleet = ctl({"due", "--on", "2025-12-31", "--json"}).document();
        const auto one = ctl({"due", "--on", "2025-12-31", "--balloon", "QE-ONE", "--json"}).document();
        const auto item = ctl({"due", "--on", "2025-12-31", "--item", "B1", "--json"}).document();
        QVERIFY(rowOf(one, "E1", "hours") == rowOf(fleet, "E1", "hours"));
        QVERIFY(rowOf(item, "B1", "hours") == rowOf(fleet, "B1", "hours"));
    }

    void theForecastHasTheKeysOfTheContract() {
        const QStringList asked{"forecast",  "--from", "2026-01-01", "--to", "2026-12-31",
                                "--balloon", "QE-ONE", "--seed",     "7",    "--json"};
        const auto answer = ctl(asked);
        QCOMPARE(answer.code, 0);
        const auto document = answer.document();
        QVERIFY(!document.contains("days"));
        QCOMPARE(document["months"].size(), std::size_t{12});
        QCOMPARE(document["known"].get<std::string>(), std::string("2025-12-31"));
        const auto march = document["months"][2];
        QCOMPARE(march["on"].get<std::string>(), std::string("2026-03-01"));
        for (const auto* clock : {"minutes", "landings", "inflations"})
            QVERIFY(march[clock]["p10"] <= march[clock]["p50"] && march[clock]["p50"] <= march[clock]["p90"]);
        const auto minutes = march["minutes"]["p50"].get<int>(); // 100 a month
        QVERIFY2(minutes >= 80 && minutes <= 120, qPrintable(QString::number(minutes)));
        QCOMPARE(ctl(asked).out, answer.out);
    }
    void twoMonthsAreToldDayByDay() {
        const auto days = ctl({"forecast", "--from", "2026-01-01", "--to", "2026-02-28", "--json"}).document()["days"];
        QCOMPARE(days.size(), std::size_t{59});
        QCOMPARE(days[58]["on"].get<std::string>(), std::string("2026-02-28"));
    }
    /// What came later is not looked at: a forecast of the past is one.
    void itIsToldFromWhatWasKnown() {
        const QStringList asked{"forecast", "--on", "2024-12-31", "--to", "2025-12-31", "--item", "E1", "--json"};
        const auto document = ctl(asked).document();
        QCOMPARE(document["from"].get<std::string>(), std::string("2025-01-01"));
        QCOMPARE(document["flights"].get<int>(), 60);
    }
    void aPlanOverridesTheLog() {
        const QStringList asked{"forecast",   "--from",    "2026-01-01", "--to",
                                "2026-12-31", "--balloon", "QE-ONE",     "--json"};
        const auto told =
            ctl(asked + QStringList{"--plan", "2026-03-01..2026-03-31=0", "--plan", "2026-05-01..2026-05-31=14/week"})
                .document();
        QCOMPARE(told["months"][2]["minutes"]["p90"].get<int>(), 0);
        const auto may = told["months"][4]["landings"]["p50"].get<int>(); // two a day
        QVERIFY2(may > 55 && may < 70, qPrintable(QString::number(may)));
        QVERIFY(told["months"][3] == ctl(asked).document()["months"][3]);
    }
    void whatIsLaidUpIsNotFlown() {
        const auto told = ctl({"forecast", "--from", "2026-01-01", "--to", "2026-12-31", "--item", "B2", "--json"});
        QVERIFY(told.document()["out_of_service"].get<bool>());
        QCOMPARE(told.document()["months"][6]["minutes"]["p90"].get<int>(), 0);
    }

    void whatMakesNoSenseIsRefused_data() {
        QTest::addColumn<QStringList>("asked");
        QTest::addColumn<QByteArray>("code");
        const QStringList forecast{"forecast", "--from", "2026-01-01"};
        QTest::newRow("turned round") << forecast + QStringList{"--to", "2025-12-01"} << QByteArray("[bad-use]");
        QTest::newRow("already known") << QStringList{"forecast",   "--on", "2025-06-30", "--from",
                                                      "2025-06-01", "--to", "2025-12-01"}
                                       << QByteArray("[bad-use]");
        QTest::newRow("too far") << forecast + QStringList{"--to", "2060-01-01"} << QByteArray("[bad-use]");
        QTest::newRow("no date") << forecast + QStringList{"--to", "2026-02-30"} << QByteArray("[bad-date]");
        QTest::newRow("no plan") << forecast + QStringList{"--to", "2026-12-31", "--plan", "summer=2"}
                                 << QByteArray("[bad-use]");
        QTest::newRow("a plan that ends before it begins")
            << forecast + QStringList{"--to", "2026-12-31", "--plan", "2026-05-02..2026-05-01=2"}
            << QByteArray("[bad-use]");
        QTest::newRow("less than nothing")
            << forecast + QStringList{"--to", "2026-12-31", "--plan", "2026-05-01..2026-05-02=-1"}
            << QByteArray("[bad-use]");
        QTest::newRow("no such balloon") << forecast + QStringList{"--to", "2026-12-31", "--balloon", "QE-TWO"}
                                         << QByteArray("[unknown-reference]");
        QTest::newRow("no such item") << forecast + QStringList{"--to", "2026-12-31", "--item", "E2"}
                                      << QByteArray("[unknown-reference]");
        QTest::newRow("a calendar beyond what calendars hold")
            << QStringList{"calendar", "--on", "2999-01-01", "--out", "never.ics"} << QByteArray("[bad-use]");
    }
    void whatMakesNoSenseIsRefused() {
        QFETCH(const QStringList, asked);
        QFETCH(const QByteArray, code);
        const auto refused = ctl(asked);
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains(code), refused.err.constData());
        QVERIFY(refused.out.isEmpty());
    }

    void theCalendarHasEachDueOnItsDay() {
        const auto out = path("dues.ics");
        QCOMPARE(ctl({"calendar", "--on", "2025-12-31", "--out", out}).code, 0);
        QFile file(out);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto text = file.readAll();
        QVERIFY(text.contains("UID:due.E1.month@crownring"));
        QVERIFY(text.contains("DTSTART;VALUE=DATE:20260228"));
        // Unproven: it will not wait, so it stands on the day asked. Due after 24 months, so it is not in it.
        const auto never = text.mid(text.indexOf("UID:due.E1.never@crownring"));
        QVERIFY(never.left(200).contains("DTSTART;VALUE=DATE:20251231"));
        QVERIFY(!text.contains("UID:due.E1.hours@crownring"));
        QCOMPARE(ctl({"calendar", "--on", "2025-12-31", "--out", out}).code, 2); // it is there
        QCOMPARE(ctl({"calendar", "--on", "2025-12-31", "--out", out, "--months", "60", "--force"}).code, 0);
        QFile longer(out);
        QVERIFY(longer.open(QIODevice::ReadOnly));
        QVERIFY(longer.readAll().contains("UID:due.E1.hours@crownring"));
    }
    void anOpenVisitIsInTheCalendar() {
        QCOMPARE(
            ctl({"post", "-"},
                R"({"entry":"inspection.opened","on":"2026-01-05","inspection":"V 1","visit":"part-ml-rectification","items":["E1"]})")
                .code,
            0);
        const auto out = path("visit.ics");
        QCOMPARE(ctl({"calendar", "--on", "2026-01-07", "--out", out}).code, 0);
        QFile file(out);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto text = file.readAll();
        const auto visit = text.mid(text.indexOf("UID:visit.V%201@crownring"), 300);
        QVERIFY2(visit.contains("DTSTART;VALUE=DATE:20260105") && visit.contains("DTEND;VALUE=DATE:20260108"),
                 visit.constData());
        QVERIFY(visit.contains("TRANSP:OPAQUE") || text.contains("TRANSP:OPAQUE"));
    }

    void forPeopleItIsALineAMonth() {
        const auto said = ctl({"forecast", "--from", "2026-01-01", "--to", "2026-12-31", "--balloon", "QE-ONE"});
        QCOMPARE(said.code, 0);
        QVERIFY(said.out.contains("From the log of 120 flights"));
        QVERIFY(said.out.contains("2026-12-01  "));
    }
};

CROWNRING_TEST(ForecastCallTest)

}

#include "forecast_call_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// What is planned and what is supposed (issue 15): crownringctl agenda and due --if. The envelope has flown 97:10 h of
/// its 100 (invented for tests), twenty hours a year in the last two.

#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

#include <map>
#include <string>

namespace plans_call_test {

using namespace crownring;
using namespace crownring::testing;
using nlohmann::json;

namespace {

constexpr const char* programme = R"({"programme":"p","revision":"1","title":"P","source":"invented for tests",
"requirements":[
{"id":"hours","title":"Every 100 hours","source":"invented for tests","kinds":["envelope"],"action":"inspect",
 "starts_from":"entered","limits":[{"clock":"minutes","every":6000}]},
{"id":"year","title":"Every year","source":"invented for tests","kinds":["basket","burner","cylinder"],"action":"inspect",
 "starts_from":"entered","limits":[{"clock":"months","every":26}]}]})";

QByteArray entries() {
    QByteArray lines = R"({"entry":"balloon.entered","on":"2023-12-31","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2023-12-31","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2023-12-31","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2023-12-31","item":"R1","kind":"burner"}
{"entry":"item.entered","on":"2023-12-31","item":"C1","kind":"cylinder"}
)";
    for (const auto* item : {"E1", "B1", "R1", "C1"})
        lines += QByteArray(R"({"entry":"item.fitted","on":"2023-12-31","balloon":"QE-ONE","item":")") + item + "\"}\n";
    for (int month = 0; month < 24; ++month)
        for (int flight = 0; flight < 5; ++flight)
            lines += QStringLiteral(R"({"entry":"flight.logged","on":"%1-%2-%3","balloon":"QE-ONE","minutes":%4})")
                         .arg(2024 + month / 12)
                         .arg(month % 12 + 1, 2, 10, QLatin1Char('0'))
                         .arg(3 + flight * 5, 2, 10, QLatin1Char('0'))
                         .arg(month == 0 && flight == 0 ? 118 : 48)
                         .toUtf8() +
                     "\n";
    return lines; // 118 + 119 x 48 = 5830
}

constexpr const char* plans =
    R"({"entry":"flight.planned","id":"sat","on":"2026-01-03","balloon":"QE-ONE","minutes":120}
{"entry":"flight.planned","id":"sun","on":"2026-01-04","balloon":"QE-ONE","minutes":120,"landings":3}
{"entry":"visit.planned","id":"visit","on":"2025-12-31","balloon":"QE-ONE","station":"Station of the tests","from":"2026-03-02","to":"2026-03-06","covers":[{"item":"E1","requirement":"hours"},{"item":"B1","requirement":"year"}]}
)";

constexpr const char* moved =
    R"({"entry":"entry.corrected","on":"2026-01-01","replaces":"visit","with":{"from":"2026-02-09","to":"2026-02-11"}})";
constexpr const char* takenBack =
    R"({"entry":"entry.voided","on":"2025-12-31","voids":"sat","reason":"rain"}
{"entry":"entry.voided","on":"2025-12-31","voids":"sun","reason":"rain"}
)";
constexpr const char* pause =
    R"({"entry":"use.planned","id":"pause","on":"2025-12-31","balloon":"QE-ONE","from":"2026-01-01","to":"2026-05-31","times":0})";
constexpr const char* ofItsOwn =
    R"({"entry":"use.planned","id":"own","on":"2025-12-31","item":"E1","from":"2026-01-01","to":"2026-01-31","flights_a_week":7})";

}

class PlansCallTest : public QObject, OwnRecord {
    Q_OBJECT

    [[nodiscard]] json asked(const QStringList& call) const { return ctl(call).document(); }
    /// What nobody plans away: the due list without what is foretold, the clock, whether the kit may fly.
    [[nodiscard]] json standing() const {
        auto due = asked({"due", "--on", "2026-01-04", "--json"});
        for (auto& row : due["rows"])
            row.erase("projected");
        return {due, asked({"clock", "E1", "--on", "2026-01-04", "--json"}),
                asked({"rig-up", "--kit", "E1,B1,R1,C1", "--on", "2026-01-04", "--minutes", "120", "--json"})};
    }
    [[nodiscard]] static json rowOf(const json& due, const std::string& item) {
        for (const auto& row : due["rows"])
            if (row["item"] == item)
                return row;
        return {};
    }
    [[nodiscard]] std::string likelyDue() const {
        return rowOf(asked({"due", "--on", "2025-12-31", "--json"}), "E1")["projected"]["p50"].get<std::string>();
    }

private slots:
    void initTestCase() {
        QFile file(path("p.json"));
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write(programme) > 0);
        file.close();
        QCOMPARE(ctl({"post", "-"}, entries()).code, 0);
        QCOMPARE(ctl({"adopt", path("p.json"), "--all", "--on", "2023-12-31"}).code, 0);
    }

    void whatIsSupposedIsMarkedAndNothingIsWritten() {
        const auto before = standing();
        const auto due = asked(
            {"due", "--if", "QE-ONE:120:2026-01-03", "--if", "QE-ONE:120:2026-01-04", "--balloon", "QE-ONE", "--json"});
        QCOMPARE(due["on"], json("2026-01-04")); // the day of the last of them
        QCOMPARE(due["supposed"].size(), std::size_t{2});
        const auto row = rowOf(due, "E1");
        QCOMPARE(row["standing"], json("lapsed"));
        QCOMPARE(row["standing_before"], json("nearing"));
        QCOMPARE(row["limits"][0]["left"], json(6000 - 5830 - 240));
        QVERIFY(row["supposed"] == true && row.contains("projected"));
        // Of the second nothing is flown by Saturday.
        const auto saturday = asked(
            {"due", "--if", "QE-ONE:120:2026-01-03", "--if", "QE-ONE:120:2026-01-04", "--on", "2026-01-03", "--json"});
        QCOMPARE(rowOf(saturday, "E1")["limits"][0]["left"], json(50));
        QVERIFY(!rowOf(saturday, "E1").contains("standing_before"));
        QVERIFY(ctl({"due", "--if", "QE-ONE:240:2026-01-03"}).out.contains("Makes due: Every 100 hours of E1"));
        QCOMPARE(standing(), before);
    }
    void whatIsNoFlightIsRefused() {
        for (const auto* flight : {"QE-ONE", "QE-ONE:0:2026-01-03", "QE-ONE:4h:2026-01-03", ":60:2026-01-03",
                                   "QE-ONE:60:2026-02-30", "QE-ONE:60:2026-01-03:x"})
            QVERIFY2(ctl({"due", "--if", flight, "--json"}).code == 2, flight);
        QCOMPARE(ctl({"due", "--if", "QE-TWO:60:2026-01-03", "--json"}).code, 2);
    }

    /// 02: nothing is done by a plan. It changes forecasts alone.
    void aPlanChangesNoStandingNoClockAndNoAnswerAboutAKit() {
        const auto before = standing();
        const auto usual = likelyDue();
        QCOMPARE(ctl({"post", "-"}, plans).code, 0);
        QCOMPARE(standing(), before);
        QCOMPARE(likelyDue(), std::string("2026-01-04")); // both flights use up what is left
        QVERIFY2(usual > "2026-01-04", usual.c_str());
    }
    void theAgendaHoldsEachFlightAgainstWhatIsPlannedBeforeIt() {
        const auto agenda = asked({"agenda", "--on", "2025-12-31", "--to", "2026-03-31", "--json"});
        QCOMPARE(agenda["flights"].size(), std::size_t{2});
        const auto saturday = agenda["flights"][0], sunday = agenda["flights"][1];
        QCOMPARE(saturday["entry"], json("sat"));
        QVERIFY(saturday["may_fly"] == true && saturday["makes_due"].empty());
        QVERIFY(sunday["may_fly"] == false);
        QCOMPARE(sunday["reasons"][0]["reason"], json("too-long"));
        QCOMPARE(sunday["makes_due"][0]["requirement"], json("hours"));
        QCOMPARE(sunday["makes_due"][0]["standing"], json("lapsed"));
    }
    void aVisitTellsWhatItCoversAndWhatIsDueBeforeIt() {
        const auto agenda = asked({"agenda", "--on", "2025-12-31", "--to", "2026-03-31", "--json"});
        const auto visit = agenda["visits"][0];
        QCOMPARE(visit["station"], json("Station of the tests"));
        QCOMPARE(visit["covers"].size(), std::size_t{2});
        std::map<std::string, std::string> before;
        for (const auto& row : visit["due_before"])
            before[row["item"]] = row["how"].get<std::string>() + (row["covered"] == true ? ", too late" : "");
        // 26 months after the last day of 2023 is the last of February 2026; the hours are flown on Sunday.
        const std::map<std::string, std::string> expected{
            {"E1", "surely, too late"}, {"B1", "surely, too late"}, {"R1", "surely"}, {"C1", "surely"}};
        QCOMPARE(before, expected);
        const auto text = ctl({"agenda", "--on", "2025-12-31", "--to", "2026-03-31"}).out;
        QVERIFY(text.contains("is due before it: Every year of C1, R1, 2026-02-28 (not covered by it)"));
    }
    void aFlightOnDaysOfAVisitIsSaid() {
        const auto inVisit =
            R"({"entry":"flight.planned","id":"wed","on":"2026-03-04","balloon":"QE-ONE","minutes":30})";
        QCOMPARE(ctl({"post", "-"}, inVisit).code, 0);
        const auto flights = asked({"agenda", "--on", "2025-12-31", "--to", "2026-03-31", "--json"})["flights"];
        QVERIFY(flights[0]["at_visit"].is_null());
        QCOMPARE(flights.back()["at_visit"]["from"], json("2026-03-02"));
        QVERIFY(ctl({"agenda", "--on", "2025-12-31", "--to", "2026-03-31"})
                    .out.contains("but its visit to Station of the tests is planned from 2026-03-02 to 2026-03-06"));
        QCOMPARE(
            ctl({"post", "-"}, R"({"entry":"entry.voided","on":"2025-12-31","voids":"wed","reason":"tried"})").code, 0);
    }
    /// What lapsed before the first month of a sheet stands at its head, never "nothing".
    void aTableBeginsWithWhatWasDueBefore() {
        QCOMPARE(ctl({"calendar", "--on", "2026-06-10", "--months", "1", "--out", path("late.csv")}).code, 0);
        QFile table(path("late.csv"));
        QVERIFY(table.open(QIODevice::ReadOnly));
        const auto text = table.readAll();
        QVERIFY2(text.contains("2026-02-28,2026-02-28,due,QE-ONE,C1,Every year"), text);
        QVERIFY(text.indexOf("2026-02-28") < text.indexOf("2026-06-") || !text.contains("2026-06-"));
    }
    /// RFC 5545 3.8.4.7: the UID stays when the visit is moved, so that a calendar that reads it again updates.
    void whatIsPlannedStandsInCalendarsUnderTheNameOfItsEntry() {
        QCOMPARE(ctl({"calendar", "--on", "2025-12-31", "--out", path("c.ics")}).code, 0);
        QFile before(path("c.ics"));
        QVERIFY(before.open(QIODevice::ReadOnly));
        const auto text = before.readAll();
        for (const auto* line : {"UID:visit-planned.visit@crownring", "DTSTART;VALUE=DATE:20260302",
                                 "DTEND;VALUE=DATE:20260307", "UID:flight-planned.sat@crownring"})
            QVERIFY2(text.contains(line), line);
        QCOMPARE(ctl({"post", "-"}, moved).code, 0);
        QCOMPARE(ctl({"calendar", "--on", "2026-01-01", "--out", path("c.ics"), "--force"}).code, 0);
        QFile after(path("c.ics"));
        QVERIFY(after.open(QIODevice::ReadOnly));
        const auto again = after.readAll();
        QVERIFY(again.contains("UID:visit-planned.visit@crownring") && again.contains("DTSTART;VALUE=DATE:20260209"));
        QCOMPARE(ctl({"calendar", "--on", "2025-12-31", "--months", "3", "--out", path("c.csv")}).code, 0);
        QFile table(path("c.csv"));
        QVERIFY(table.open(QIODevice::ReadOnly));
        QVERIFY(table.readAll().contains("2026-02-09,2026-02-11,visit,QE-ONE,,Visit to Station of the tests"));
    }
    /// What comes and what is wanted, and nothing that happens to be due besides.
    void aLetterIsOpenedAsAnInspection() {
        const auto letter = ctl({"letter", "visit", "--on", "2025-12-31"}).out;
        QVERIFY(letter.contains("Every 100 hours") && letter.contains("Station of the tests") &&
                letter.contains("97:10"));
        QCOMPARE(ctl({"letter", "visit", "--on", "2025-12-31", "--out", path("l.json")}).code, 0);
        const auto opened = ctl({"inspection", "open", "--letter", path("l.json"), "--visit", "part-ml-inspection",
                                 "--by", "A", "--on", "2026-01-02"});
        QVERIFY2(opened.code == 0, opened.err.constData());
        const json wanted{{{"item", "E1"}, {"requirement", "hours"}}, {{"item", "B1"}, {"requirement", "year"}}};
        QCOMPARE(opened.document()["work"], wanted);
        QCOMPARE(ctl({"letter", "no-such-visit", "--on", "2025-12-31"}).code, 2);
        QCOMPARE(
            ctl({"inspection", "open", "--letter", path("p.json"), "--visit", "part-ml-inspection", "--by", "A"}).code,
            2);
    }
    void aWinterPauseMovesWhatUseMakesDue() {
        QCOMPARE(ctl({"post", "-"}, takenBack).code, 0);
        QVERIFY(asked({"agenda", "--on", "2025-12-31", "--json"})["flights"].empty());
        const auto usual = likelyDue();
        QCOMPARE(ctl({"post", "-"}, pause).code, 0);
        QVERIFY2(usual < "2026-06-01", usual.c_str());
        QVERIFY2(likelyDue() > "2026-05-31", likelyDue().c_str());
        const QStringList january{"forecast",   "--from",    "2026-01-01", "--to",
                                  "2026-01-31", "--balloon", "QE-ONE",     "--json"};
        QCOMPARE(asked(january)["days"][9]["minutes"]["p90"], json(0));
        // What is said of the item itself comes before what is said of its balloon.
        QCOMPARE(ctl({"post", "-"}, ofItsOwn).code, 0);
        QVERIFY2(likelyDue() < "2026-01-31", likelyDue().c_str());
    }
};

CROWNRING_TEST(PlansCallTest)

}

#include "plans_call_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl fabric fit, against the reference fleet: case 40 of tests/reference (a long chain of an independent
/// sampler in R) on the same table.

#include "ctl/demo_record.h"
#include "ctl/own_record.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>

namespace fabric_call_test {

using namespace crownring;
using namespace crownring::testing;
using nlohmann::json;

class FabricCallTest : public QObject, OwnRecord {
    Q_OBJECT

    QString written(const QString& name, const QByteArray& text) {
        const auto path = m_folder.filePath(name);
        QFile file(path);
        return file.open(QIODevice::WriteOnly) && file.write(text) == text.size() ? path : QString();
    }
    Answer fit(const QString& readings, const QStringList& more = {}) {
        return ctl(QStringList{"fabric", "fit", "--readings", readings, "--limit", "30"} + more);
    }
    /// Counted in the entries themselves.
    static int pullsInTheDemo(const std::string& envelope) {
        QFile fleet(QStringLiteral(CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl"));
        int pulls = 0;
        if (fleet.open(QIODevice::ReadOnly))
            for (const auto& line : fleet.readAll().split('\n'))
                if (line.contains("\"grab-strength\"") && line.contains("reading.taken"))
                    pulls += json::parse(line.toStdString())["item"] == envelope ? 1 : 0;
        return pulls;
    }
    /// The reference fleet as such a table.
    static QByteArray referenceTable() {
        const auto rows = reference::table("37_fleet_readings.csv");
        QByteArray text = "envelope,lot,fabric,hours,row,dose,load,outcome\n";
        for (std::size_t row = 0; row < rows.at("env").size(); ++row) {
            const auto figure = [&](const char* column) { return QByteArray::number(rows.at(column)[row], 'g', 17); };
            const bool isCoupon = rows.at("env")[row] == 0;
            text += (isCoupon ? QByteArray() : "E" + figure("env")) + ",L" + figure("lot") + ",F" + figure("fab") +
                    "," + figure("hours") + "," + figure("row") + "," + figure("dose") + "," + figure("load") + "," +
                    (rows.at("kind")[row] == 1 ? "held" : "broke") + "\n";
        }
        return text;
    }

private slots:
    void theReferenceFleet() {
        const auto table = written(QStringLiteral("fleet.csv"), referenceTable());
        const auto answer = fit(table, {"--json", "--seed", "7"});
        QCOMPARE(answer.code, 0);
        const auto told = json::parse(answer.out.toStdString());
        QVERIFY(told["convergence"]["rhat_max"].get<double>() < 1.05);
        QVERIFY(told["convergence"]["draws"].get<int>() >= 1000);
        QCOMPARE(told["envelopes"].size(), std::size_t{24});
        for (int number = 1; number <= 6; ++number) {
            const auto& envelope = told["envelopes"][static_cast<std::size_t>(number - 1)];
            QCOMPARE(envelope["envelope"].get<std::string>(), "E" + std::to_string(number));
            const auto row = QStringLiteral("env%1_life_q50_h").arg(number, 2, 10, QChar(u'0')).toStdString();
            const auto& expected = reference::expected("40_fleet_gibbs_phi", row);
            // The reference asks nothing of those that are past their hours; it is compared where that does not matter.
            if (envelope["hours_now"].get<double>() > 0.8 * expected.value)
                continue;
            const double found = envelope["life"]["p50"].get<double>();
            QVERIFY2(std::abs(found - expected.value) <= 0.04 * expected.value,
                     qPrintable(QStringLiteral("E%1: %2 for %3").arg(number).arg(found).arg(expected.value)));
            QVERIFY(envelope["life"]["p05"].get<double>() < found && found < envelope["life"]["p95"].get<double>());
            const double fails = envelope["fails_next"].get<double>();
            QVERIFY(fails >= 0 && fails <= 1);
        }
        QCOMPARE(told["lots"].size(), std::size_t{6});
        for (const auto& lot : told["lots"]) {
            QVERIFY(lot["rate_ratio"]["p05"].get<double>() < lot["rate_ratio"]["p95"].get<double>());
            QVERIFY(lot["faster"].get<double>() >= 0 && lot["faster"].get<double>() <= 1);
        }
    }
    void oneSeedGivesOneAnswer() {
        const auto table = written(QStringLiteral("small.csv"), "envelope,lot,fabric,hours,row,dose,load,outcome\n"
                                                                "E1,L1,F,300,1,0,48,broke\nE1,L1,F,400,1,0,45,held\n");
        const auto once = fit(table, {"--json", "--seed", "3"});
        QCOMPARE(once.code, 0);
        QCOMPARE(fit(table, {"--json", "--seed", "3"}).out, once.out);
        QVERIFY(fit(table, {"--json", "--seed", "4"}).out != once.out);
    }
    void heldTestsAloneWarrantNoNumber() {
        const auto table = written(QStringLiteral("held.csv"), "envelope,lot,fabric,hours,row,dose,load,outcome\n"
                                                               "E1,L1,F,100,1,0,30,held\nE1,L1,F,200,1,0,30,held\n");
        const auto told = json::parse(fit(table, {"--json"}).out.toStdString());
        QCOMPARE(told["envelopes"][0]["enough"].get<bool>(), false);
        QVERIFY(told["lots"][0]["rate_ratio"].is_null());
        QVERIFY(fit(table).out.contains("only held tests bound this"));
    }
    void testsOfOneDayAndASingleOneWarrantNoNumber() {
        QByteArray table = "envelope,lot,fabric,hours,row,dose,load,outcome\n";
        for (int pull = 0; pull < 8; ++pull)
            table += "E" + QByteArray::number(pull) + ",L1,F,150,1,0," + QByteArray::number(70 + pull) + ",broke\n";
        const auto told = json::parse(fit(written(QStringLiteral("day.csv"), table), {"--json"}).out.toStdString());
        for (const auto& envelope : told["envelopes"])
            QCOMPARE(envelope["enough"].get<bool>(), false);
        const auto one = fit(written(QStringLiteral("one.csv"), "envelope,lot,fabric,hours,row,dose,load,outcome\n"
                                                                "E1,L1,F,150,1,0,70,broke\n"));
        QVERIFY2(one.out.contains("hardly any test was pulled until it broke"), one.out.constData());
    }
    void anEnvelopeOfTheDemoFleet() {
        QVERIFY(copyDemoRecord(m_folder.filePath(QStringLiteral("r"))));
        const auto answer = ctl({"fabric", "forecast", "ENV-1009", "--on", "2026-11-25", "--json"});
        QVERIFY2(answer.code == 0, answer.err.constData());
        const auto told = json::parse(answer.out.toStdString());
        const auto clock = ctl({"clock", "ENV-1009", "--on", "2026-11-25", "--json"}).document();
        QCOMPARE(told["hours_now"].get<double>(), clock["minutes"].get<double>() / 60);
        int readings = 0;
        for (const auto& set : told["sets"])
            readings += set["readings"].get<int>();
        QCOMPARE(readings, pullsInTheDemo("ENV-1009"));
        QVERIFY(told["next"]["hours"].get<double>() >= 0);
        QVERIFY(told["next_reading"].size() == 4);
        QVERIFY(told["convergence"]["effective_draws"].get<double>() > 400);
        QVERIFY(told["limit"]["value"].get<double>() > 0);
        QVERIFY(!told["limit"]["source"].get<std::string>().empty());
        QVERIFY(told["strength"]["p05"].get<double>() < told["strength"]["p95"].get<double>());
        QVERIFY(told["convergence"]["rhat_max"].get<double>() < 1.1);
        const double fails = told["fails_next"].get<double>();
        QVERIFY(fails > 0 && fails < 1);
        QVERIFY(told["below_by_next"].get<double>() <= 1);
        if (told["enough"].get<bool>())
            QVERIFY(told["dates"]["p05"].get<std::string>() <= told["dates"]["p50"].get<std::string>());
        else
            QVERIFY(told["dates"].is_null());
        QVERIFY(ctl({"fabric", "forecast", "ENV-1009", "--on", "2026-11-25"}).out.contains("takes the place of none"));

        // A place that failed is said before what is forecast of the whole.
        QCOMPARE(json::parse(answer.out.toStdString())["failed"], json::array());
        const auto failed = ctl({"fabric", "forecast", "ENV-1007", "--on", "2026-11-25", "--json"});
        const auto places = json::parse(failed.out.toStdString())["failed"];
        QCOMPARE(places.size(), std::size_t{1});
        QCOMPARE(places[0]["quantity"].get<std::string>(), std::string("grab-strength"));
        QVERIFY(places[0]["text"].get<std::string>().find("121 N, gore 11, row 16") != std::string::npos);
        const auto text = ctl({"fabric", "forecast", "ENV-1007", "--on", "2026-11-25"}).out;
        QVERIFY(text.contains("a place failed"));
        QVERIFY(text.indexOf("a place failed") < text.indexOf("at the weakest place now"));
        QCOMPARE(ctl({"fabric", "forecast", "BRN-301", "--on", "2026-11-25"}).code, 2);
        QCOMPARE(ctl({"fabric", "forecast", "nobody", "--on", "2026-11-25"}).code, 2);
    }
    void eachChannelLotsAndScoreOfTheDemoFleet() {
        const auto air =
            ctl({"fabric", "forecast", "ENV-1009", "--on", "2026-11-25", "--quantity", "air-permeability", "--json"});
        QVERIFY2(air.code == 0, air.err.constData());
        const auto told = json::parse(air.out.toStdString());
        QCOMPARE(told["limit"]["unit"].get<std::string>(), std::string("mm/s"));
        QVERIFY(told["strength"]["p05"].get<double>() < told["strength"]["p95"].get<double>());
        QCOMPARE(ctl({"fabric", "forecast", "ENV-1009", "--on", "2026-11-25", "--quantity", "tear-strength"}).code, 2);

        // How the demo fleet is made: the four envelopes of lot 19-03 age a quarter faster.
        const auto lots = ctl({"fabric", "lots", "--on", "2026-11-25", "--json"}).document();
        QCOMPARE(lots["fabrics"][0]["lots"][0]["lot"].get<std::string>(), std::string("19-03"));
        QCOMPARE(lots["fabrics"][0]["lots"][0]["envelopes"].get<int>(), 4);
        QVERIFY(lots["fabrics"][0]["lots"][0]["rate_ratio"]["p05"].get<double>() > 1);
        QVERIFY(lots["fabrics"][0]["smallest_detectable_ratio"].get<double>() > 1);
        for (std::size_t at = 1; at < lots["fabrics"][0]["lots"].size(); ++at)
            QVERIFY(lots["fabrics"][0]["lots"][at]["standing"].get<std::string>() != "alarm");

        // On a day on which hardly anything was known before, so that it is soon done.
        const auto score = ctl({"fabric", "score", "--on", "2023-03-01", "--json"}).document();
        QVERIFY(score["tests"].get<int>() > 0);
        QVERIFY(score["brier"].get<double>() <= 1);
    }
    void badTablesAreSentBack() {
        const auto bad = fit(written(QStringLiteral("bad.csv"), "envelope,lot,fabric,hours,row,dose,load,outcome\n"
                                                                "E1,L1,F,100,2,0,30,held\n"));
        QCOMPARE(bad.code, 2);
        QVERIFY(bad.out.isEmpty() && bad.err.contains("bad.csv:2"));
        QCOMPARE(fit(written(QStringLiteral("new.csv"), "envelope,lot,fabric,hours,row,dose,load,outcome\n"
                                                        ",L1,F,0,1,0,100,broke\n"))
                     .code,
                 2);
        QCOMPARE(fit(QStringLiteral("/nowhere/at/all.csv")).code, 2);
    }
};

CROWNRING_TEST(FabricCallTest, QCoreApplication)

}

#include "fabric_call_test.moc"

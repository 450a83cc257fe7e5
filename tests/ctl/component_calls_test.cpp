// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl pool, replace, send, return and tags. Who and what is invented.

#include "ctl/answer.h"
#include "test_class.h"

#include <QFile>
#include <QTemporaryDir>
#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string twelveCylinders() {
    std::string lines = R"({"entry":"balloon.entered","on":"2020-01-01","balloon":"QE-ONE"}
{"entry":"programme.adopted","on":"2020-01-01","programme":"lpg-us-dot","everything":true}
{"entry":"programme.adopted","on":"2020-01-01","programme":"cylinder-airworthiness","everything":true}
{"entry":"item.entered","on":"2020-01-01","item":"V1","kind":"other","lot":"L 7"}
{"entry":"item.entered","on":"2020-01-01","item":"V2","kind":"other"}
{"entry":"item.entered","on":"2020-01-01","item":"E1","kind":"envelope"}
{"entry":"repair.made","on":"2020-02-01","item":"E1","method":"patched","lot":"L 7"}
)";
    for (int number = 1; number <= 12; ++number) {
        const auto item = "C" + std::to_string(number);
        lines += R"({"entry":"item.entered","on":"2020-01-01","kind":"cylinder","made":"2012-06","item":")" + item +
                 R"(","vessel":{"material":"aluminium","specification":"DOT 4E 240","water_litres":51,"tare_kg":14}})" +
                 "\n";
    }
    return lines + R"({"entry":"item.fitted","on":"2020-01-01","balloon":"QE-ONE","item":"C1"}
{"entry":"item.fitted","on":"2020-01-01","to":"C1","item":"V1"}
)";
}

const char* const allTwelve = "C1,C2,C3,C4,C5,C6,C7,C8,C9,C10,C11,C12";
const char* const elevenBack = "C1,C2,C3,C4,C5,C6,C7,C8,C9,C10,C11";

}

class ComponentCallsTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    Answer ctl(const QStringList& arguments, const QByteArray& input = {}) {
        return answerOf(QStringLiteral(CROWNRINGCTL),
                        QStringList{"--record", m_folder->filePath(QStringLiteral("r"))} + arguments, input);
    }
    nlohmann::json pooled(const QStringList& asked, const std::string& item) {
        const auto document = ctl(QStringList{"pool", "--json"} + asked).document();
        for (const auto& each : document["items"])
            if (each["item"] == item)
                return each;
        return {};
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        const auto posted = ctl({"post", "-"}, QByteArray::fromStdString(twelveCylinders()));
        QVERIFY2(posted.code == 0, posted.err.constData());
    }

    void tagsAreWrittenForWhatIsInTheRecordAlone() {
        const auto file = m_folder->filePath(QStringLiteral("tags.pdf"));
        QCOMPARE(ctl({"tags", "--items", "C1,C99", "--to", file}).code, 2);
        QVERIFY(!QFile::exists(file));
        const auto written = ctl({"tags", "--items", "C1,V1", "--to", file});
        QVERIFY2(written.code == 0, written.err.constData());
        QFile tags(file);
        QVERIFY(tags.open(QIODevice::ReadOnly) && tags.read(5) == "%PDF-");
        QCOMPARE(ctl({"tags", "--items", "C1", "--to", file}).code, 2); // a file that is there is not replaced unasked
    }
    void thePoolHasTheKeysOfTheContract() {
        const auto cylinder = pooled({"--kind", "cylinder", "--on", "2022-06-30"}, "C1");
        for (const char* key :
             {"item", "where", "airworthy_until", "transport_until", "fillable", "condemned", "kind", "serial"})
            QVERIFY2(cylinder.contains(key), key);
        QCOMPARE(cylinder["where"], nlohmann::json("QE-ONE"));
        QCOMPARE(cylinder["airworthy_until"], nlohmann::json("2022-06-30"));
        QCOMPARE(cylinder["transport_until"], nlohmann::json("2024-06-30"));
        QCOMPARE(cylinder["fillable"], nlohmann::json(true));
        QCOMPARE(cylinder["condemned"], nlohmann::json(false));
        QCOMPARE(cylinder["quarter"], nlohmann::json("2022-Q2"));
        const auto table = ctl({"pool", "--kind", "cylinder", "--on", "2022-06-30"});
        QVERIFY(table.out.contains("2022-Q2") && table.out.contains("QE-ONE"));
        QCOMPARE(ctl({"pool", "--kind", "tank"}).code, 2);
    }
    void timeSinceNewAndSinceOverhaulIsThePiecesOwn() {
        QVERIFY(pooled({"--on", "2022-06-30"}, "V1")["since_overhaul"].is_null());
        QCOMPARE(ctl({"post", "-"}, R"({"entry":"flight.logged","on":"2022-01-02","balloon":"QE-ONE","minutes":90}
{"entry":"requirement.done","on":"2022-02-01","item":"V1","requirement":"valve.overhaul"}
{"entry":"flight.logged","on":"2022-03-02","balloon":"QE-ONE","minutes":60}
)")
                     .code,
                 0);
        const auto valve = pooled({"--on", "2022-06-30"}, "V1"); // which flew in its cylinder
        QCOMPARE(valve["since_new"].dump(), std::string(R"({"inflations":2,"landings":2,"minutes":150})"));
        QCOMPARE(valve["since_overhaul"].dump(),
                 std::string(R"({"inflations":1,"landings":1,"minutes":60,"on":"2022-02-01"})"));
    }
    void twelveGoToTheTestHouseAndElevenComeBackInOneActEach() {
        const auto sent = ctl({"send", "--items", allTwelve, "--to", "Test House", "--on", "2022-07-01"});
        QVERIFY2(sent.code == 0, sent.err.constData());
        QCOMPARE(sent.document()["posted"], nlohmann::json(13)); // one was fitted
        auto away = pooled({"--on", "2022-07-02"}, "C1");
        QCOMPARE(away["where"], nlohmann::json("Test House"));
        QCOMPARE(away["fillable"], nlohmann::json(false));
        const auto back = ctl({"return", "--items", elevenBack, "--condemned", "C12", "--requirement",
                               "dot.requalification", "--method", "external-visual", "--mark", "A123", "--ref", "T 7",
                               "--tested", "2022-07-05", "--on", "2022-07-11"});
        QVERIFY2(back.code == 0, back.err.constData());
        QCOMPARE(back.document()["posted"], nlohmann::json(23));
        QCOMPARE(pooled({"--on", "2022-07-12"}, "C1")["transport_until"], nlohmann::json("2027-07-31"));
        QCOMPARE(pooled({"--on", "2022-07-12"}, "C1")["where"], nlohmann::json("pool"));
        QCOMPARE(pooled({"--on", "2022-07-12"}, "C12")["condemned"], nlohmann::json(true));
    }
    void ofWhatIsLooseTheListSaysWhereItIsBound() {
        const auto said = "bound only on a balloon";
        QVERIFY(!ctl({"pool", "--kind", "cylinder", "--on", "2022-06-30"}).out.contains(said));
        QVERIFY(ctl({"pool", "--kind", "envelope", "--on", "2022-06-30"}).out.contains(said)); // it was never fitted
    }
    void whatHappensTodayCarriesTheTimeAndItsPaperIsOne() {
        const auto yesterday = QDateTime::currentDateTimeUtc().date().addDays(-1).toString(Qt::ISODate);
        QCOMPARE(ctl({"send", "--items", "C2", "--to", "Test House", "--on", yesterday}).code, 0);
        const auto back = ctl({"return", "--items", "C2", "--requirement", "dot.requalification", "--method",
                               "external-visual", "--ref", "T 7", "--signatory", "T. Ester", "--licence", "A 123"});
        QVERIFY2(back.code == 0, back.err.constData());
        const auto then = QDateTime::currentDateTimeUtc().addSecs(60);
        const auto kept = ctl({"post", "-"}, R"({"entry":"item.state","item":"C2","state":"quarantined","on":")" +
                                                 then.date().toString(Qt::ISODate).toUtf8() + R"(","time":")" +
                                                 then.toString(QStringLiteral("HH:mm")).toUtf8() + R"(Z"})");
        QVERIFY2(kept.code == 0, kept.err.constData());
        const auto rows = ctl({"due", "--item", "C2", "--json"}).document()["rows"];
        for (const auto& row : rows)
            if (row["requirement"] == "dot.requalification")
                QCOMPARE(row["evidence"], nlohmann::json("paper"));
    }
    void oneThatWasNotSentStopsTheWholeReturn() {
        QCOMPARE(ctl({"send", "--items", "C2,C3", "--to", "Test House", "--on", "2022-07-01"}).code, 0);
        const auto back = ctl({"return", "--items", "C2,C3,C4", "--on", "2022-07-11"});
        QCOMPARE(back.code, 2);
        QVERIFY(back.err.contains("C4"));
        QCOMPARE(pooled({"--on", "2022-07-12"}, "C2")["where"], nlohmann::json("Test House"));
    }
    void aPartIsReplacedAsOneAct() {
        const auto act = ctl({"replace", "--off", "V1", "--with", "V2", "--release", "easa-form-1:QE 12", "--lot",
                              "L 8", "--unserviceable", "--on", "2022-07-01"});
        QVERIFY2(act.code == 0, act.err.constData());
        QCOMPARE(act.document()["posted"], nlohmann::json(3));
        const auto on = pooled({"--on", "2022-07-01"}, "V2");
        QCOMPARE(on["part_of"], nlohmann::json("C1"));
        QCOMPARE(on["where"], nlohmann::json("QE-ONE"));
        QCOMPARE(on["lot"], nlohmann::json("L 8"));
        QCOMPARE(on["release"]["number"], nlohmann::json("QE 12"));
        QCOMPARE(pooled({"--on", "2022-07-01"}, "V1")["state"], nlohmann::json("unserviceable"));
        QCOMPARE(ctl({"replace", "--off", "V1", "--with", "V2", "--on", "2022-07-02"}).code, 2);
        QCOMPARE(ctl({"replace", "--off", "V2", "--with", "V1", "--release", "form-1", "--on", "2022-07-02"}).code, 2);
    }
    void ofALotEveryPieceIsTold() {
        const auto document = ctl({"pool", "--lot", "L 7", "--on", "2022-01-01", "--json"}).document();
        QCOMPARE(document["items"].size(), std::size_t{2});
        QCOMPARE(pooled({"--lot", "L 7", "--on", "2022-01-01"}, "V1")["where"], nlohmann::json("QE-ONE"));
        QCOMPARE(pooled({"--lot", "L 7", "--on", "2022-01-01"}, "E1")["material_of_lot"], nlohmann::json(true));
    }
};

CROWNRING_TEST(ComponentCallsTest, QCoreApplication)

#include "component_calls_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
/// The headless contract, call by call, as another program would use it.
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <set>

namespace contract_test {

using nlohmann::json;

namespace {

struct Answer {
    int status = 0;
    std::string out;
    std::string errors;
    [[nodiscard]] json document() const { return json::parse(out); }
};

bool saysNotIntact(const Answer& answer) { return answer.errors.find("not intact") != std::string::npos; }

constexpr const char* shed =
    R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","serial":"101","made":"2016-05","brought_forward":{"minutes":12000,"landings":190}}
{"entry":"item.entered","on":"2024-01-01","item":"C1","kind":"cylinder","serial":"7","made":"2016-05","brought_forward":{"minutes":null}}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE","operations":["for-hire"]}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"C1","place":"tank 1"}
{"entry":"requirement.done","id":"annual","on":"2024-04-10","item":"E1","requirement":"ml.inspection","clock":{"minutes":18744}}
{"entry":"requirement.done","on":"2024-04-10","item":"E1","requirement":"ml.arc-review"}
{"entry":"requirement.done","on":"2024-04-10","item":"E1","requirement":"fabric.strength-test"}
{"entry":"flight.logged","id":"f","on":"2024-05-01","balloon":"QE-ONE","minutes":60}
)";

}

/// What makes a balloon of E1: each with what part-ml-hot-air asks of it done.
constexpr const char* wholeBalloon =
    R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket","serial":"1","made":"2023-01-10"}
{"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner","serial":"2","made":"2023-01-10"}
{"entry":"item.entered","on":"2024-01-01","item":"C2","kind":"cylinder","serial":"8","made":"2023-01-10"}
{"entry":"requirement.done","on":"2024-05-10","item":"B1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2024-05-10","item":"R1","requirement":"ml.inspection"}
{"entry":"requirement.done","on":"2024-05-10","item":"C2","requirement":"ml.inspection"}
)";

class ContractTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_record;

    QString path(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    void write(const char* name, const std::string& text) const {
        QFile file(path(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(text));
    }
    Answer bare(const QStringList& arguments, const QByteArray& input = {}) const {
        QProcess process;
        process.start(QStringLiteral(CROWNRINGCTL), arguments);
        process.write(input);
        process.closeWriteChannel();
        if (!process.waitForFinished(60'000))
            return {-1, {}, "no answer"};
        return {process.exitCode(), process.readAllStandardOutput().toStdString(),
                process.readAllStandardError().toStdString()};
    }
    Answer call(QStringList arguments, const QByteArray& input = {}) const {
        arguments.prepend(m_record);
        arguments.prepend(QStringLiteral("--record"));
        return bare(arguments, input);
    }

private slots:
    void init() {
        m_record = path("shed.crownring");
        for (const auto* ending : {"", "-wal", "-shm"})
            QFile::remove(m_record + QLatin1String(ending));
        const auto posted = call({"post", "-"}, shed);
        QCOMPARE(posted.errors, std::string());
        QCOMPARE(posted.document()["posted"], 9);
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--all", "--on", "2024-01-01"}).status, 0);
    }
    void postTakesAFileAndCounts() {
        write("more.jsonl", R"({"entry":"flight.logged","on":"2024-05-02","balloon":"QE-ONE","minutes":30})");
        const auto answer = call({"post", path("more.jsonl")});
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.document()["posted"], 1);
    }
    void postRefusesWithFileLineAndKey() {
        write("bad.jsonl",
              std::string(R"({"entry":"flight.logged","on":"2024-05-02","balloon":"QE-ONE","minutes":30})") + "\n\n" +
                  R"({"entry":"flight.logged","on":"2024-05-02","balloon":"QE-ONE","minuts":30,"minutes":3})");
        const auto answer = call({"post", path("bad.jsonl")});
        QCOMPARE(answer.status, 2);
        QCOMPARE(answer.out, std::string());
        QVERIFY(answer.errors.find("bad.jsonl:3: key 'minuts'") != std::string::npos);
        QVERIFY(answer.errors.find("[unknown-key]") != std::string::npos);
        QCOMPARE(call({"clock", "E1", "--on", "2024-12-01", "--json"}).document()["minutes"], 12060);
    }
    void whatHasNoEndIsNotRead() {
        for (const auto& asked :
             {QStringList{"post", "/dev/zero"}, QStringList{"adopt", "/dev/zero", "--all"},
              QStringList{"import", "/dev/zero", "--balloon", "QE-ONE"},
              QStringList{"verify", "--expect-from", "/dev/zero"}, QStringList{"plan", "--stations", "/dev/zero"},
              QStringList{"tag", "/dev/zero"}, QStringList{"post", "/dev"}}) {
            const auto answer = call(asked);
            QCOMPARE(answer.status, 2);
            QVERIFY2(answer.errors.find("this is no file but a folder or a device. Mend: name a file") !=
                         std::string::npos,
                     answer.errors.c_str());
        }
    }
    void clockIsThatOfTheEndOfTheDay() {
        QCOMPARE(call({"clock", "E1", "--on", "2024-05-01", "--json"}).document(),
                 (json{{"item", "E1"}, {"minutes", 12060}, {"landings", 191}, {"inflations", 1}}));
        QCOMPARE(call({"clock", "E1", "--on", "2024-04-30", "--json"}).document()["minutes"], 12000);
        QCOMPARE(call({"clock", "C1", "--on", "2024-05-01", "--json"}).document()["minutes"], nullptr);
    }
    void dueHasTheRowsOfTheContract() {
        const auto answer = call({"due", "--on", "2025-04-28", "--json"}).document();
        QCOMPARE(answer["on"], "2025-04-28");
        for (const auto& row : answer["rows"])
            for (const auto* key :
                 {"balloon", "item", "kind", "requirement", "title", "source", "standing", "governs", "limits"})
                QVERIFY2(row.contains(key), key);
        json inspection;
        for (const auto& row : answer["rows"])
            if (row["item"] == "E1" && row["requirement"] == "ml.inspection")
                inspection = row;
        // regulations 7.B, case B1: inspected 2024-04-10 at 312.4 h
        QCOMPARE(inspection["standing"], "tolerance");
        QCOMPARE(inspection["governs"], "months");
        for (const auto& limit : inspection["limits"]) {
            if (limit["clock"] == "months") {
                QCOMPARE(limit, (json{{"clock", "months"},
                                      {"last", "2024-04-10"},
                                      {"due", "2025-04-10"},
                                      {"left", -18},
                                      {"tolerance_left", 12},
                                      {"standing", "tolerance"}}));
            } else {
                QCOMPARE(limit["last"], 18744);
                QCOMPARE(limit["due"], 24744);
                QCOMPARE(limit["left"], 24744 - 12060);
            }
        }
    }
    void dueMayBeAskedForOneBalloonOrItem() {
        const auto item = call({"due", "--on", "2025-04-28", "--item", "C1", "--json"}).document();
        QVERIFY(!item["rows"].empty());
        for (const auto& row : item["rows"]) {
            QCOMPARE(row["item"], "C1");
            if (row["requirement"] != "ml.inspection")
                continue;
            QCOMPARE(row["standing"], "unproven");
            QCOMPARE(row["limits"][0]["left"], nullptr);
        }
        QCOMPARE(call({"due", "--on", "2025-04-28", "--balloon", "QE-ONE", "--json"}).document()["rows"].size(),
                 call({"due", "--on", "2025-04-28", "--json"}).document()["rows"].size());
        QCOMPARE(call({"due", "--on", "2025-04-28", "--balloon", "QE-NONE", "--json"}).status, 2);
    }
    void theWorstStandsFirst() {
        const std::vector<std::string> order = {"spent",   "lapsed", "unproven", "tolerance",
                                                "nearing", "clear",  "closed"};
        std::ptrdiff_t last = 0;
        const auto answer = call({"due", "--on", "2025-04-28", "--json"}).document();
        for (const auto& row : answer["rows"]) {
            const auto place =
                std::find(order.begin(), order.end(), row["standing"].get<std::string>()) - order.begin();
            QVERIFY(place >= last);
            last = place;
        }
    }
    void rigUpSaysYesAndWhatGoverns() {
        const auto parts = call({"post", "-"}, wholeBalloon);
        QCOMPARE(parts.errors, std::string());
        const auto answer = call({"rig-up", "--kit", "E1,B1,R1,C2", "--on", "2024-06-01", "--minutes", "60", "--json"});
        QVERIFY2(answer.status == 0, answer.out.c_str());
        const auto document = answer.document();
        QCOMPARE(document["may_fly"], true);
        QCOMPARE(document["governs"]["item"], "E1");
        QVERIFY(document["governs"]["left"].is_number());
        QVERIFY(document["reasons"].empty());
    }
    void aKitThatIsNoBalloonMayNotFly() {
        const auto answer = call({"rig-up", "--kit", "E1", "--on", "2024-06-01", "--json"});
        QCOMPARE(answer.status, 1);
        const auto document = answer.document();
        QCOMPARE(document["may_fly"], false);
        std::vector<std::string> missing;
        for (const auto& reason : document["reasons"])
            if (reason["reason"] == "incomplete")
                missing.push_back(reason["kind"]);
        QCOMPARE(missing, (std::vector<std::string>{"basket", "burner", "cylinder"}));
    }
    void rigUpSaysNoWithAReason() {
        const auto answer = call({"rig-up", "--kit", "E1,C1", "--on", "2024-06-01", "--json"});
        QCOMPARE(answer.status, 1);
        QCOMPARE(answer.document()["may_fly"], false);
        QCOMPARE(answer.document()["reasons"][0]["item"], "C1");
        QCOMPARE(call({"rig-up", "--kit", "E1,NONE", "--on", "2024-06-01", "--json"}).status, 2);
    }
    void whereTheRecordIsDamagedNobodyCanSayThatAKitMayFly() {
        QCOMPARE(call({"post", "-"}, wholeBalloon).status, 0);
        const QStringList asked{"rig-up", "--kit", "E1,B1,R1,C2", "--on", "2024-06-01"};
        QCOMPARE(call(asked).status, 0);
        QCOMPARE(QProcess::execute("sqlite3", {m_record, "UPDATE adoption SET bound = 'x'"}), 0);
        QCOMPARE(call(asked).status, 1);
        const auto answer = call(asked + QStringList("--json"));
        QCOMPARE(answer.status, 1);
        QCOMPARE(answer.document()["may_fly"], false);
        QCOMPARE(answer.document()["reasons"][0]["reason"], "cannot-say");
        QCOMPARE(call({"due", "--on", "2024-06-01", "--json"}).status, 2);
        QCOMPARE(call({"rebuild"}).status, 0);
        QCOMPARE(call(asked).status, 0);
    }
    /// Nothing that is answered rests on the text of the entry itself, and nobody asked for a verification.
    void whereAnEntryWasAlteredNothingIsSaidAndNothingWritten() {
        QCOMPARE(call({"post", "-"}, wholeBalloon).status, 0);
        const QStringList asked{"rig-up", "--kit", "E1,B1,R1,C2", "--on", "2024-06-01"};
        QCOMPARE(call(asked).status, 0);
        QFile file(m_record);
        QVERIFY(file.open(QIODevice::ReadWrite));
        auto bytes = file.readAll();
        QVERIFY(bytes.contains(R"("minutes":60)"));
        bytes.replace(R"("minutes":60)", R"("minutes":50)");
        QVERIFY(file.seek(0) && file.write(bytes) == bytes.size());
        file.close();
        const auto answer = call(asked + QStringList("--json"));
        QCOMPARE(answer.status, 1);
        QCOMPARE(answer.document()["may_fly"], false);
        QCOMPARE(answer.document()["reasons"][0]["reason"], "cannot-say");
        for (const QStringList& call : {QStringList{"due"}, QStringList{"clock", "E1"}, QStringList{"balloons"},
                                        QStringList{"forecast", "--to", "2027-01-01"}, QStringList{"agenda"}}) {
            const auto refused = this->call(call);
            QVERIFY2(refused.status == 2 && saysNotIntact(refused), refused.errors.c_str());
            QCOMPARE(refused.out, std::string());
        }
        const auto posted = call({"post", "-"}, R"({"entry":"balloon.entered","on":"2024-01-02","balloon":"QE-OAK"})");
        QVERIFY2(posted.status == 2 && saysNotIntact(posted), posted.errors.c_str());
        QCOMPARE(call({"journal", "--json"}).status, 0);
        QCOMPARE(call({"verify", "--json"}).document()["intact"], false);
    }
    void verifyAnswersAndFails() {
        const auto good = call({"verify", "--json"});
        QCOMPARE(good.status, 0);
        QCOMPARE(good.document()["entries"], 10);
        QCOMPARE(good.document()["intact"], true);
        QCOMPARE(good.document()["first_bad"], nullptr);
        QProcess::execute("sqlite3", {m_record, "DROP TRIGGER entry_is_never_changed; UPDATE entry SET body ="
                                                " replace(body, '18744', '18000') WHERE entry_id = 'annual';"});
        const auto bad = call({"verify", "--json"});
        QCOMPARE(bad.status, 1);
        QCOMPARE(bad.document()["first_bad"], "annual");
    }
    void adoptRefusesABrokenProgrammeWithItsPath() {
        write(
            "broken.json",
            R"({"programme":"x","revision":"1","title":"t","source":"s","requirements":[{"id":"r","title":"t","source":"s","kinds":["envelope"],"action":"inspect","limits":[{"clock":"weeks","every":1}]}]})");
        const auto answer = call({"adopt", path("broken.json"), "--balloon", "QE-ONE", "--on", "2024-01-01"});
        QCOMPARE(answer.status, 2);
        QVERIFY(answer.errors.find("/requirements/0/limits/0/clock") != std::string::npos);
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--on", "2024-01-01"}).status, 2); // binds nobody
    }
    void importShowsFirstAndPostsWhenAccepted() {
        write("log.csv", "Registration;Date;Duration\nQE-ONE;31.05.2024;0:45\nQE-ONE;32.05.2024;0:45\n");
        const auto shown = call({"import", path("log.csv"), "--json"}).document();
        QCOMPARE(shown["posted"], 0);
        QCOMPARE(shown["flights"][0]["state"], "new");
        QCOMPARE(shown["refused"][0]["line"], 3);
        QCOMPARE(call({"import", path("log.csv"), "--accept"}).status, 2);
        QCOMPARE(call({"import", path("log.csv"), "--accept", "--skip-bad", "--json"}).document()["posted"], 1);
        QCOMPARE(call({"clock", "E1", "--on", "2024-06-01", "--json"}).document()["minutes"], 12105);
        QCOMPARE(call({"import", path("log.csv"), "--accept", "--skip-bad", "--json"}).document()["posted"], 0);
    }
    void aWrongUseIsSaidAndWritesNothing() {
        QCOMPARE(bare({"due"}).status, 2);
        QVERIFY(bare({"due"}).errors.find("[bad-use]") != std::string::npos);
        QCOMPARE(bare({"nonsense"}).status, 2);
        QCOMPARE(bare({"--record", path("absent"), "due"}).status, 2);
        QVERIFY(!QFile::exists(path("absent")));
        QCOMPARE(call({"due", "--on", "2024-02-30"}).status, 2);
        QCOMPARE(call({"post", path("no-such-file")}).status, 2);
    }
    void whatIsNoTextIsRefusedWithItsPlace() {
        write("bad.jsonl", "{\"entry\":\"balloon.entered\",\"on\":\"2024-01-01\",\"balloon\":\"QE-\xff\"}\n");
        const auto entries = call({"verify", "--json"}).document()["entries"];
        const auto file = call({"post", path("bad.jsonl")});
        QCOMPARE(file.status, 2);
        QVERIFY2(file.errors.find("bad.jsonl:1") != std::string::npos, file.errors.c_str());
        QProcess shell; // it alone hands on bytes as they are
        shell.start(QStringLiteral("sh"),
                    {QStringLiteral("-c"), QStringLiteral("exec \"$0\" clock \"$(printf 'E\\377')\" --on 2024-01-01"),
                     QStringLiteral(CROWNRINGCTL)});
        QVERIFY(shell.waitForFinished(60'000));
        QCOMPARE(shell.exitCode(), 2);
        const auto said = shell.readAllStandardError();
        QVERIFY2(said.contains("argument 2 is not UTF-8 from its byte 2 on"), said.constData());
        QCOMPARE(call({"verify", "--json"}).document()["entries"], entries);
    }
    void helpTeaches() {
        const auto help = bare({"--help"});
        QCOMPARE(help.status, 0);
        for (const auto* word :
             {"post", "adopt", "due", "clock", "rig-up", "verify", "import", "never declares a balloon airworthy"})
            QVERIFY2(help.out.find(word) != std::string::npos, word);
        for (const auto* name :
             {"post", "adopt", "due", "clock", "rig-up", "verify", "import", "journal", "backup", "rebuild"})
            QCOMPARE(bare({name, "--help"}).status, 0);
    }
    void backupAndRebuild() {
        QCOMPARE(call({"backup", path("copy.crownring")}).status, 0);
        QCOMPARE(bare({"--record", path("copy.crownring"), "verify", "--json"}).document()["entries"], 10);
        const auto before = call({"due", "--on", "2025-04-28", "--json"}).out;
        QCOMPARE(call({"rebuild"}).status, 0);
        QCOMPARE(call({"due", "--on", "2025-04-28", "--json"}).out, before);
        QFile::remove(path("copy.crownring"));
    }
    void flightsAreImportedOnceTheyAreAccepted() {
        const auto minutes = [&] {
            return call({"clock", "E1", "--on", "2026-11-25", "--json"}).document()["minutes"].get<int>();
        };
        write("log.csv", "Registration;Date;Duration (h:mm);Colour\n"
                         "QE-ONE;2026-05-02;0:55;red\n"
                         "QE-ONE;2026-02-30;0:40;red\n");
        const auto before = minutes();
        const auto preview = call({"import", path("log.csv"), "--json"}).document();
        QCOMPARE(preview["posted"], 0);
        QCOMPARE(preview["flights"].size(), std::size_t{1});
        QCOMPARE(preview["refused"][0]["line"], 3);
        QCOMPARE(preview["columns"][0]["read_as"], "balloon");
        QVERIFY(preview["columns"][3]["read_as"].is_null());
        QCOMPARE(call({"import", path("log.csv"), "--accept"}).status, 2); // a bad row, and nobody said to skip it
        QCOMPARE(minutes(), before);
        QCOMPARE(call({"import", path("log.csv"), "--accept", "--skip-bad"}).status, 0);
        QCOMPARE(minutes(), before + 55);
        const auto* track = CROWNRING_SOURCE_DIR "/demo_data/evening.igc"; // 55 minutes aloft by its own making
        QCOMPARE(call({"import", track, "--balloon", "QE-ONE", "--accept"}).status, 0);
        QCOMPARE(minutes(), before + 55 + 55);
        QCOMPARE(call({"import", track, "--balloon", "QE-ONE", "--json"}).document()["flights"][0]["state"],
                 "already-logged");
    }
    void theDemoFleetIsTaken() {
        QFile::remove(path("demo"));
        const auto posted = bare({"--record", path("demo"), "post", CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl"});
        QCOMPARE(posted.status, 0);
        const auto rows = bare({"--record", path("demo"), "due", "--on", "2026-11-25", "--json"}).document()["rows"];
        std::set<std::string> standings;
        for (const auto& row : rows)
            standings.insert(row["standing"]);
        for (const auto* expected : {"lapsed", "unproven", "tolerance", "nearing", "clear"})
            QVERIFY2(standings.contains(expected), expected);
    }
};

CROWNRING_TEST(ContractTest, QCoreApplication)

}

#include "contract_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl inspection: what a shop's own system, a terminal and a printer get of an inspection. The demo fleet
/// holds one that was released (OL-2026-017), one closed with discrepancies (KS-2026-015) and one that is open
/// (OL-2026-018).

#include "ctl/demo_record.h"
#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QTemporaryDir>
#include <QtTest>

namespace inspection_call_test {

using namespace crownring::testing;
using nlohmann::json;

class InspectionCallTest : public QObject, OwnRecord {
    Q_OBJECT

private:
    /// Counted in the entries themselves.
    static std::ptrdiff_t heldInTheDemo(const char* inspection) {
        QFile fleet(QStringLiteral(CROWNRING_SOURCE_DIR "/demo_data/fleet.jsonl"));
        if (!fleet.open(QIODevice::ReadOnly))
            return -1;
        const auto lines = fleet.readAll().split('\n');
        return std::count_if(lines.begin(), lines.end(), [&](const QByteArray& line) {
            return line.contains(inspection) && line.contains("\"held_at\"");
        });
    }
    /// The text of a PDF as poppler reads it, one text a page.
    QStringList pagesOf(const QString& file) {
        const auto text = QString::fromUtf8(answerOf(QStringLiteral("pdftotext"), {"-layout", file, "-"}).out);
        return text.split(u'\f', Qt::SkipEmptyParts);
    }

private slots:
    void initTestCase() { QVERIFY(copyDemoRecord(m_folder.filePath(QStringLiteral("r")))); }

    void aRecordIsNeverPrintedOver() {
        const auto record = m_folder.filePath(QStringLiteral("r"));
        QFile plain(m_folder.filePath(QStringLiteral("notes.txt")));
        QVERIFY(plain.open(QIODevice::WriteOnly) && plain.write("kept") == 4);
        plain.close();
        for (const auto& beside : {record, record + QStringLiteral("-wal")}) {
            QCOMPARE(ctl({"inspection", "print", "OL-2026-017", "--to", beside}).code, 2);
            QCOMPARE(ctl({"inspection", "print", "OL-2026-017", "--to", beside, "--force"}).code, 2);
        }
        QCOMPARE(ctl({"backup", record}).code, 2);
        QCOMPARE(ctl({"backup", plain.fileName()}).code, 2);
        QCOMPARE(ctl({"inspection", "print", "OL-2026-017", "--to", plain.fileName()}).code, 2);
        QVERIFY(plain.open(QIODevice::ReadOnly));
        QCOMPARE(plain.readAll(), QByteArray("kept"));
        plain.close();
        QCOMPARE(ctl({"verify"}).code, 0);
        QCOMPARE(ctl({"inspection", "print", "OL-2026-017", "--to", plain.fileName(), "--force"}).code, 0);
        QVERIFY(plain.open(QIODevice::ReadOnly));
        QVERIFY(plain.read(4) == "%PDF");
    }

    /// A certificate is one page and a report at most eight, of the whole balloons of the demo fleet, too.
    void thePapersOfTheDemoFleetAreFiledOnFewPages() {
        const auto pages = [&](const QString& inspection, const QString& what, const QString& paper) {
            const auto file = m_folder.filePath(QStringLiteral("p.pdf"));
            const auto answer = ctl({"inspection", "print", inspection, "--to", file, "--force", "--what", what,
                                     "--paper", paper, "--on", "2026-11-25"});
            return answer.code == 0 ? pagesOf(file) : QStringList();
        };
        for (const QString inspection : {"OL-2026-017", "KS-2026-015", "OL-2026-018"})
            for (const QString paper : {"a4", "letter"}) {
                for (const QString what : {"release", "logbook"})
                    QVERIFY2(pages(inspection, what, paper).size() == 1,
                             qPrintable(inspection + u' ' + what + u' ' + paper));
                const auto report = pages(inspection, QStringLiteral("report"), paper).size();
                QVERIFY2(report > 0 && report <= 8, qPrintable(inspection + u' ' + paper));
            }
    }

    void listHasOpenOnesFirst() {
        const auto answer = ctl({"inspection", "list", "--on", "2026-11-25", "--json"});
        QCOMPARE(answer.code, 0);
        const auto list = json::parse(answer.out.toStdString()).at("inspections");
        QCOMPARE(list.size(), std::size_t(3));
        QVERIFY(list[0].at("outcome").is_null());
        QCOMPARE(list[0].at("inspection").get<std::string>(), std::string("OL-2026-018"));
        // Before the first was opened there is nothing, which is no error.
        const auto before = ctl({"inspection", "list", "--on", "2026-01-01", "--json"});
        QCOMPARE(before.code, 0);
        QVERIFY(json::parse(before.out.toStdString()).at("inspections").empty());
    }

    void aListOfDiscrepanciesIsPendingUntilItsReturnIsApproved() {
        // 14 CFR 43.11(a)(5), (b) (read): the annual signed on 2026-11-18 counts from its day once the list is
        // answered.
        QTemporaryDir folder;
        const auto shop = [&](const QStringList& arguments) {
            return answerOf(QStringLiteral(CROWNRINGCTL),
                            QStringList{QStringLiteral("--record"), folder.filePath(QStringLiteral("r"))} + arguments);
        };
        const auto post = [&](const char* lines) {
            QFile file(folder.filePath(QStringLiteral("lines")));
            QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
            file.write(lines);
            file.close();
            QCOMPARE(shop({"post", file.fileName()}).code, 0);
        };
        QVERIFY(copyDemoRecord(folder.filePath(QStringLiteral("r"))));
        const auto listed = [&](const char* on) {
            const auto all = json::parse(shop({"inspection", "list", "--on", on, "--json"}).out.toStdString());
            for (const auto& each : all.at("inspections"))
                if (each.at("inspection") == "KS-2026-015")
                    return each;
            return json();
        };
        const auto governs = [&](const char* on) {
            const auto all =
                json::parse(shop({"balloons", "--on", on, "--balloon", "QN190R", "--json"}).out.toStdString());
            return all.at("balloons").at(0).at("standing").get<std::string>();
        };
        const auto annual = [&](const char* on) {
            const auto all = json::parse(shop({"due", "--on", on, "--item", "BSK-227", "--json"}).out.toStdString());
            for (const auto& row : all.at("rows"))
                if (row.at("requirement") == "us.annual")
                    return row.at("limits").at(0).at("last").dump();
            return std::string();
        };
        const auto isGrounded = [&](const char* on) {
            return shop({"due", "--on", on, "--item", "ENV-1032", "--json"}).out.contains("list/KS-2026-015");
        };
        QVERIFY(listed("2026-11-25").at("pending").get<bool>());
        QCOMPARE(listed("2026-11-25").at("discrepancies").size(), std::size_t(3));
        QVERIFY(shop({"inspection", "list", "--on", "2026-11-25"}).out.contains("pending: 3"));
        QCOMPARE(governs("2026-11-25"), std::string("lapsed"));
        QVERIFY(isGrounded("2026-11-25") && !isGrounded("2026-11-17"));
        QCOMPARE(shop({"rig-up", "--kit", "ENV-1032,BSK-227,BRN-327,CYL-4063", "--on", "2026-11-25"}).code, 1);
        post( // a reading found it, so it is read again first
            R"({"entry":"reading.taken","on":"2026-12-01","by":"insp. K5","item":"BSK-227","quantity":"broken-strands","value":0,"unit":"count"}
{"entry":"defect.cleared","on":"2026-12-01","by":"insp. K5","defect":"KS-2026-015/1","item":"BSK-227","what":"wire 2 replaced"})");
        // The strength test that had run out was named on the list too.
        post(
            R"({"entry":"requirement.done","on":"2026-12-02","item":"ENV-1032","requirement":"fabric.strength-test","ref":"T 77","signatory":"lab 2","licence":"L 2"})");
        const auto early = shop({"inspection", "approve", "KS-2026-015", "--by", "insp. K3", "--as",
                                 "inspection-authorization", "--on", "2026-12-04"});
        QCOMPARE(early.code, 2);
        QVERIFY2(early.err.contains("outer rope handle frayed"), early.err.constData());
        post(
            R"({"entry":"defect.cleared","on":"2026-12-03","by":"insp. K5","defect":"KS-2026-015/2","item":"BSK-227","what":"handle replaced"})");
        const auto otherRules = shop({"inspection", "approve", "KS-2026-015", "--by", "insp. 14", "--as",
                                      "organisation-certifying-staff", "--on", "2026-12-04"});
        QCOMPARE(otherRules.code, 2);
        const auto before = annual("2026-12-04");
        const auto approved = shop({"inspection", "approve", "KS-2026-015", "--by", "insp. K3", "--as",
                                    "inspection-authorization", "--on", "2026-12-04"});
        QVERIFY2(approved.code == 0, approved.err.constData());
        const auto answer = json::parse(approved.out.toStdString());
        QCOMPARE(answer.at("counts_from").get<std::string>(), std::string("2026-11-18"));
        QVERIFY(!answer.at("accomplished").empty());
        QCOMPARE(annual("2026-12-04"), std::string("\"2026-11-18\""));
        QVERIFY(before != annual("2026-12-04") && annual("2026-12-03") == before);
        QVERIFY(!isGrounded("2026-12-04") && isGrounded("2026-12-03"));
        QVERIFY(!listed("2026-12-04").at("pending").get<bool>());
        QCOMPARE(listed("2026-12-04").at("approved").get<std::string>(), std::string("2026-12-04"));
        QCOMPARE(shop({"inspection", "approve", "KS-2026-015", "--by", "insp. K3", "--as", "inspection-authorization",
                       "--on", "2026-12-05"})
                     .code,
                 2);
        QCOMPARE(shop({"inspection", "approve", "OL-2026-017", "--by", "insp. 14", "--as",
                       "organisation-certifying-staff", "--on", "2026-12-05"})
                     .code,
                 2);
        QCOMPARE(shop({"verify"}).code, 0);
        // A release that lost its ground says so in the list, too.
        const auto supported = [&] {
            const auto all =
                json::parse(shop({"inspection", "list", "--on", "2026-12-05", "--json"}).out.toStdString());
            for (const auto& each : all.at("inspections"))
                if (each.at("inspection") == "OL-2026-017")
                    return each.at("supported").get<bool>();
            return false;
        };
        QVERIFY(supported());
        post(
            R"({"entry":"entry.corrected","on":"2026-12-05","by":"insp. 14","note":"never looked at","replaces":"line-OL-2026-017-basket.identification-BSK-209","with":{"state":"open"}})");
        QVERIFY(!supported());
        QVERIFY(shop({"inspection", "list", "--on", "2026-12-05"}).out.contains("no longer"));
        const auto fleet = json::parse(shop({"balloons", "--on", "2026-12-05", "--json"}).out.toStdString());
        int told = 0;
        for (const auto& each : fleet.at("balloons")) {
            QCOMPARE(each.contains("unsupported"), each.at("balloon") == "QE-MIST");
            told += each.contains("unsupported") ? 1 : 0;
        }
        QCOMPARE(told, 1);
    }

    void showAnswersAsJsonAndCsv() {
        const auto shown = json::parse(ctl({"inspection", "show", "OL-2026-017", "--json"}).out.toStdString());
        QCOMPARE(shown.at("closed").at("outcome").get<std::string>(), std::string("released"));
        QCOMPARE(shown.at("readings").size(), std::size_t(50));
        const auto held = std::count_if(shown.at("readings").begin(), shown.at("readings").end(),
                                        [](const json& reading) { return reading.contains("held_at"); });
        QVERIFY(held > 0);
        QCOMPARE(held, heldInTheDemo("OL-2026-017"));
        const auto lines = ctl({"inspection", "show", "OL-2026-017", "--csv", "lines"}).out;
        QVERIFY(lines.startsWith("line,item,title,state,finding,by,on,source,why,page\r\n"));
        QCOMPARE(lines.count("\r\n"), static_cast<int>(shown.at("lines").size()) + 1);
        QVERIFY(
            ctl({"inspection", "show", "OL-2026-017", "--csv", "readings"}).out.contains(",grab-strength,,135,,N,"));
    }

    void whatIsNotThereIsRefused() {
        const auto answer = ctl({"inspection", "show", "OL-1999-001"});
        QCOMPARE(answer.code, 2);
        QVERIFY(answer.err.contains("OL-1999-001"));
        const auto unwritable = ctl({"inspection", "print", "OL-2026-017", "--to", "/no/such/folder/x.pdf"});
        QCOMPARE(unwritable.code, 2);
    }

    void thePaperReadsBack_data() {
        QTest::addColumn<QString>("inspection");
        QTest::addColumn<QString>("what");
        QTest::addColumn<QStringList>("says");
        // AMC M.A.801(e)1(a), read in a UK-retained copy of Part-M; its Part-ML twin is from memory.
        QTest::newRow("European release")
            << "OL-2026-017"
            << "release"
            << QStringList{"Certificate of release to service",
                           "Certifies that the work specified except as otherwise specified was carried out in",
                           "Licence or certificate no."};
        // 14 CFR 43.11(a)(5) and (b), read.
        QTest::newRow("United States, not airworthy")
            << "KS-2026-015"
            << "release" << QStringList{"a list of discrepancies and unairworthy items dated 2026-11-18"};
        QTest::newRow("list of discrepancies")
            << "KS-2026-015"
            << "discrepancies" << QStringList{"Dated 2026-11-18", "grounds the balloon"};
        QTest::newRow("an open one is a draft") << "OL-2026-018"
                                                << "report" << QStringList{"DRAFT, not signed", "Readings"};
        QTest::newRow("map") << "OL-2026-017"
                             << "map" << QStringList{"Mouth at the foot", "grab strength"};
        QTest::newRow("logbook") << "OL-2026-017"
                                 << "logbook" << QStringList{"Total time in service", "Data used"};
    }
    void thePaperReadsBack() {
        QFETCH(QString, inspection);
        QFETCH(QString, what);
        QFETCH(QStringList, says);
        for (const bool letter : {false, true}) {
            const auto file = m_folder.filePath(QStringLiteral("p.pdf"));
            QStringList call{"inspection", "print", inspection, "--to", file, "--force", "--what", what};
            call += {"--paper", letter ? "letter" : "a4"};
            const auto answer = ctl(call);
            QVERIFY2(answer.code == 0, answer.err);
            const auto pages = pagesOf(file);
            QVERIFY(!pages.isEmpty());
            const auto all = pages.join(u'\n').simplified();
            for (const auto& each : says)
                QVERIFY2(all.contains(each), qPrintable(each + u'\n' + all.left(1500)));
            for (qsizetype i = 0; i < pages.size(); ++i) {
                QVERIFY(pages[i].contains(inspection));
                QVERIFY(pages[i].contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())));
                QVERIFY(pages[i].simplified().contains(QStringLiteral("it never declares a balloon airworthy")));
            }
        }
    }
};

CROWNRING_TEST(InspectionCallTest, QCoreApplication)

}

#include "inspection_call_test.moc"

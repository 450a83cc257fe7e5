// SPDX-License-Identifier: GPL-3.0-or-later

/// A shop's own system posts a whole inspection, by the list that the shop adopted; crownringctl lists it, shows it and
/// prints its papers. All of it is invented.

#include "acts/confirmed_wording.h"
#include "ctl/own_record.h"
#include "test_class.h"

#include <QFile>
#include <QtTest>

namespace posted_inspection_test {

using namespace crownring::testing;
using nlohmann::json;

namespace {

constexpr const char* shed =
    R"({"entry":"item.entered","on":"2020-01-01","item":"E9","kind":"envelope","type":"Q-90","serial":"906","brought_forward":{"minutes":15125,"landings":200,"inflations":210}}
{"entry":"item.entered","on":"2020-01-01","item":"C4","kind":"cylinder","serial":"44","brought_forward":{"minutes":null}}
{"entry":"balloon.entered","on":"2020-01-01","balloon":"QE-FIN","title":"Finch"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-FIN","item":"E9"}
{"entry":"item.fitted","on":"2020-01-01","balloon":"QE-FIN","item":"C4","place":"tank 1"}
{"entry":"limit.stated","on":"2020-01-01","type":"Q-90","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"source":"Manual Q, 6.3"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ines Holt","capacity":"inspection-authorization","licence":"4471, A&P with IA"}
{"entry":"checklist.adopted","on":"2026-01-01","checklist":"finch-shop","document":{"checklist":"finch-shop","revision":"1","title":"Shop list","source":"Repair station manual 4","sections":[{"id":"all","title":"All"}],"lines":[{"id":"Load tapes and crown ring","section":"all","kinds":["envelope"],"title":"Load tapes and crown ring","look_for":"Chafing.","sources":{"us-14cfr":"14 CFR Part 43, Appendix D"}},{"id":"Valve and shell of the cylinder","section":"all","kinds":["cylinder"],"title":"Valve and shell of the cylinder","look_for":"Dents.","sources":{"us-14cfr":"14 CFR Part 43, Appendix D"}}]}}
{"entry":"tester.calibrated","on":"2026-01-01","tester":"F-1","until":"2026-12-31","what":"force gauge"}
)";

constexpr const char* bench =
    R"({"entry":"inspection.opened","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","visit":"us-annual","items":["E9","C4"],"balloon":"QE-FIN","work":[{"item":"E9","requirement":"us.annual"}],"checklist":{"checklist":"finch-shop","revision":"1","title":"Shop list","source":"Repair station manual 4","sections":[{"id":"all","title":"All"}],"lines":[{"id":"Load tapes and crown ring","section":"all","kinds":["envelope"],"title":"Load tapes and crown ring","look_for":"Chafing.","sources":{"us-14cfr":"14 CFR Part 43, Appendix D"}},{"id":"Valve and shell of the cylinder","section":"all","kinds":["cylinder"],"title":"Valve and shell of the cylinder","look_for":"Dents.","sources":{"us-14cfr":"14 CFR Part 43, Appendix D"}}]}}
{"entry":"line.settled","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","line":"Load tapes and crown ring","item":"E9","state":"done","finding":"chafed at tape 7, within limits"}
{"entry":"line.settled","on":"2026-05-04","by":"Mia Oak","inspection":"SH-7","line":"Valve and shell of the cylinder","item":"C4","state":"done"}
{"entry":"reading.taken","id":"pull-1","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","item":"E9","quantity":"grab-strength","held_at":133.4,"unit":"N","gore":3,"row":11,"direction":"warp","jaw_mm":25,"tester":"F-1"}
{"entry":"reading.taken","id":"pull-2","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","item":"E9","quantity":"grab-strength","value":170.1,"unit":"N","gore":9,"row":11,"direction":"warp","jaw_mm":25,"tester":"F-1"}
{"entry":"reading.taken","id":"tell","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","item":"E9","quantity":"tell-tale","value":110,"below":116,"unit":"degC"}
{"entry":"defect.found","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","defect":"SH-7/1","item":"E9","what":"hole of 20 mm","severity":"barring","gore":5,"row":2}
{"entry":"repair.made","on":"2026-05-04","by":"Lee Farr","inspection":"SH-7","item":"E9","method":"patch, sewn","gore":5,"row":2,"width_mm":120,"height_mm":120,"lot":"L-31","defect":"SH-7/1"}
{"entry":"defect.cleared","on":"2026-05-05","by":"Lee Farr","inspection":"SH-7","defect":"SH-7/1","item":"E9","what":"patched"}
{"entry":"part.replaced","on":"2026-05-05","by":"Mia Oak","inspection":"SH-7","item":"C4","part":"relief valve","removed_serial":"RV-1","fitted_serial":"RV-2","release_document":"8130-3 no. 12"}
)";

// 14 CFR 43.11(a)(4), read; neither basket nor burner is inspected, so no aircraft is certified.
constexpr const char* statement =
    "I certify that of this aircraft the following alone (envelope E9, serial number 906; cylinder C4, serial number "
    "44) "
    "has been inspected in accordance with annual inspection and was determined to be in airworthy condition.";

std::string closing() {
    return json{{"entry", "inspection.closed"},
                {"on", "2026-05-06"},
                {"by", "Ines Holt"},
                {"inspection", "SH-7"},
                {"outcome", "released"},
                {"signatory", "Ines Holt"},
                {"capacity", "inspection-authorization"},
                {"licence", "4471, A&P with IA"},
                {"statement", statement},
                {"manuals", {"Manual Q, revision 2"}}}
        .dump();
}

}

class PostedInspectionTest : public QObject, OwnRecord {
    Q_OBJECT

    Answer inspection(const QStringList& arguments) const {
        return ctl(QStringList{QStringLiteral("inspection")} + arguments);
    }
    QStringList printed(const QStringList& arguments) const {
        const auto file = m_folder.filePath(QStringLiteral("paper.pdf"));
        const auto answer = inspection(QStringList{"print", "SH-7", "--to", file, "--force"} + arguments);
        if (answer.code != 0)
            qWarning("%s", answer.err.constData());
        return QString::fromUtf8(answerOf(QStringLiteral("pdftotext"), {"-layout", "-enc", "UTF-8", file, "-"}).out)
            .split(QChar(u'\f'), Qt::SkipEmptyParts);
    }

private slots:
    void initTestCase() {
        QCOMPARE(ctl({"post", "-"}, shed).err, QByteArray());
        const auto wording = adoptedAsShipped("2026-01-02") +
                             confirmedBy("Ines Holt", crownring::Capacity::InspectionAuthorization, "2026-01-03");
        QCOMPARE(ctl({"post", "-"}, QByteArray::fromStdString(wording)).err, QByteArray());
    }

    void nothingOpenIsNoError() {
        const auto answer = inspection({"list", "--json"});
        QCOMPARE(answer.code, 0);
        QVERIFY(answer.document().at("inspections").empty());
        const auto said = inspection({"list", "--on", "2026-05-01"});
        QCOMPARE(said.code, 0);
        QCOMPARE(said.out, QByteArray("No inspection up to 2026-05-01.\n"));
    }

    void whileItIsOpenItsPapersAreDrafts() {
        QCOMPARE(ctl({"post", "-"}, bench).err, QByteArray());
        const auto shown = inspection({"show", "SH-7", "--json"}).document();
        QVERIFY(shown.at("closed").is_null());
        const auto pages = printed({"--what", "release"});
        QVERIFY(!pages.isEmpty());
        QVERIFY(pages[0].contains("DRAFT"));
        QVERIFY(!pages.join(u' ').contains("Ines Holt"));
    }

    void theGateTakesItAndItIsListed() {
        QVERIFY(ctl({"post", "-"}, QByteArray::fromStdString(closing()))
                    .err.contains("confirmed the checklist 'finch-shop'"));
        QCOMPARE(ctl({"text", "confirm", "finch-shop", "--against", inventedRule, "--by", "Ines Holt", "--as",
                      "inspection-authorization", "--on", "2026-05-04"})
                     .err,
                 QByteArray());
        QCOMPARE(ctl({"post", "-"}, QByteArray::fromStdString(closing())).err, QByteArray());
        const auto card = inspection({"list", "--on", "2026-11-25", "--json"}).document().at("inspections").at(0);
        QCOMPARE(card, (json{{"inspection", "SH-7"},
                             {"visit", "us-annual"},
                             {"balloon", "QE-FIN"},
                             {"items", {"E9", "C4"}},
                             {"opened", "2026-05-04"},
                             {"by", "Lee Farr"},
                             {"outcome", "released"},
                             {"closed", "2026-05-06"},
                             {"signatory", "Ines Holt"},
                             {"incomplete", nullptr},
                             {"order", ""},
                             {"revoked", false},
                             {"supported", true},
                             {"pending", false},
                             {"discrepancies", nullptr},
                             {"approved", nullptr}}));
        QVERIFY(inspection({"list", "--on", "2026-11-25"}).out.contains("released 2026-05-06"));
        QCOMPARE(inspection({"list", "--on", "2026-05-05", "--json"}).document().at("inspections").at(0).at("outcome"),
                 json());
    }

    void itIsShownAsJson() {
        const auto shown = inspection({"show", "SH-7", "--json"}).document();
        for (const auto* key : {"inspection", "visit", "title", "balloon", "items", "work", "opened", "by", "lines",
                                "readings", "defects", "repairs", "parts", "closed"})
            QVERIFY2(shown.contains(key), key);
        QCOMPARE(shown.at("lines").at(0), (json{{"line", "Load tapes and crown ring"},
                                                {"item", "E9"},
                                                {"title", "Load tapes and crown ring"},
                                                {"state", "done"},
                                                {"finding", "chafed at tape 7, within limits"},
                                                {"by", "Lee Farr"},
                                                {"on", "2026-05-04"},
                                                {"source", "14 CFR Part 43, Appendix D"},
                                                {"why", ""},
                                                {"page", ""}}));
        const auto& held = shown.at("readings").at(0);
        QCOMPARE(held.at("held_at"), 133.4);
        QVERIFY(!held.contains("value"));
        QCOMPARE(held.at("judgement"), "passes");
        QCOMPARE(held.at("direction"), "warp");
        QCOMPARE(held.at("tester"), "F-1");
        QCOMPARE(shown.at("readings").at(2).at("below"), 116);
        QCOMPARE(shown.at("defects").at(0).at("defect"), "SH-7/1");
        QCOMPARE(shown.at("defects").at(0).at("severity"), "barring");
        QCOMPARE(shown.at("defects").at(0).at("open"), false);
        QCOMPARE(shown.at("parts").at(0).at("fitted_serial"), "RV-2");
        QCOMPARE(shown.at("repairs").at(0).at("lot"), "L-31");
        QCOMPARE(shown.at("items").at(1).at("minutes"), json());
        const auto& closed = shown.at("closed");
        QCOMPARE(closed.at("statement"), statement);
        QCOMPARE(closed.at("on"), "2026-05-06");
        QCOMPARE(closed.at("seal"), json());
    }

    void itIsShownForASpreadsheet() {
        const auto readings = inspection({"show", "SH-7", "--csv", "readings"}).out.split('\n');
        QCOMPARE(readings.at(0),
                 QByteArray("item,quantity,value,held_at,below,unit,gore,row,direction,jaw_mm,pressure_pa,area_cm2,"
                            "tester,judgement,reason,limit,on,by,zone,hold_s,dry,side,temp_c,place\r"));
        QVERIFY2(readings.at(1).startsWith("E9,grab-strength,,133.4,,N,3,11,warp,25,,,F-1,passes,"), readings.at(1));
        QVERIFY2(readings.at(2).startsWith("E9,grab-strength,170.1,,,N,9,11,warp,25,,,F-1,passes,"), readings.at(2));
        QVERIFY2(readings.at(3).startsWith("E9,tell-tale,110,,116,degC,"), readings.at(3));
        const auto lines = inspection({"show", "SH-7", "--csv", "lines"}).out;
        QVERIFY(lines.startsWith("line,item,title,state,finding,by,on,source,why,page\r\n"));
        QVERIFY(lines.contains("\"chafed at tape 7, within limits\"")); // RFC 4180, section 2, rule 6
        QCOMPARE(inspection({"show", "SH-7", "--csv", "nonsense"}).code, 2);
        QCOMPARE(inspection({"show", "SH-7", "--csv", "lines", "--json"}).code, 2);
    }

    void allPapersThatApplyArePrinted() {
        for (const auto* size : {"a4", "letter"}) {
            const auto pages = printed({"--paper", size});
            const auto all = pages.join(u' ').simplified();
            QVERIFY(all.contains(statement));
            for (const auto* words :
                 {"Papers of inspection SH-7", "Logbook entry", "Inspection report", "Envelope map", "≥ 133.4 N",
                  "252:05 h", "relief valve", "off RV-1, on RV-2", "8130-3 no. 12", "hole of 20 mm",
                  "rectified: patched", "4471, A&P with IA", "Manual Q, revision 2", "at least 110, below 116 °C"})
                QVERIFY2(all.contains(QString::fromUtf8(words)), words);
            QVERIFY(!all.contains("DRAFT"));
            QVERIFY(!all.contains("List of discrepancies"));
            for (qsizetype i = 0; i < pages.size(); ++i) {
                const auto page = pages[i].simplified();
                QVERIFY(page.contains("SH-7"));
                QVERIFY(page.contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())));
                QVERIFY(page.contains("it never declares a balloon airworthy"));
            }
        }
        QVERIFY(printed({"--what", "all"}).join(u' ').contains("Envelope map"));
        QVERIFY(!printed({"--what", "logbook"}).join(u' ').contains("Envelope map"));
    }

    void aPrintOfTheSignedSaysTheSameAfterMoreFlights() {
        const auto before = printed({});
        const char* flight = R"({"entry":"flight.logged","on":"2026-06-01","balloon":"QE-FIN","minutes":60})";
        QCOMPARE(ctl({"post", "-"}, flight).err, QByteArray());
        QCOMPARE(printed({}), before);
    }

    void aCorrectionIsPrintedWithBothWordings() {
        const char* correction =
            R"({"entry":"entry.corrected","on":"2026-06-02","by":"Lee Farr","note":"misread","replaces":"pull-2","with":{"value":171.5}})";
        QCOMPARE(ctl({"post", "-"}, correction).err, QByteArray());
        const auto all = printed({"--what", "report"}).join(u' ').simplified();
        QVERIFY(all.contains("Corrected since"));
        QVERIFY(all.contains("170.1") && all.contains("171.5 N"));
    }

    void wrongUseIsSaid() {
        const auto unknown = inspection({"show", "SH-99"});
        QCOMPARE(unknown.code, 2);
        QVERIFY(unknown.err.contains("[unknown-reference]") && unknown.err.contains("SH-99"));
        QCOMPARE(unknown.err.count("crownringctl:"), 1);
        QCOMPARE(inspection({"show", "SH-7", "--on", "yesterday"}).code, 2);
        QCOMPARE(inspection({"print", "SH-7"}).code, 2);
        QCOMPARE(inspection({"print", "SH-7", "--to", m_folder.filePath("x.pdf"), "--what", "poem"}).code, 2);
        QVERIFY(!QFile::exists(m_folder.filePath("x.pdf")));
        QCOMPARE(inspection({}).code, 2);
    }
};

CROWNRING_TEST(PostedInspectionTest, QCoreApplication)

}

#include "posted_inspection_test.moc"

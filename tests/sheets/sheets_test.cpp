// SPDX-License-Identifier: GPL-3.0-or-later

/// An inspection as papers: what is not signed says so, both wordings of a correction stay, a load that was held is a
/// bound, and what was signed reads the same on any later day.

#include "acts/shop.h"
#include "answers/bench_file.h"
#include "bench/release/release_phrase.h"
#include "paper/document_text.h"
#include "said.h"
#include "sheets/sheets.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace sheets_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr SheetKind everyKind[] = {SheetKind::Report,        SheetKind::Release,   SheetKind::Logbook, SheetKind::Map,
                                   SheetKind::Discrepancies, SheetKind::Component, SheetKind::Labels};

BenchFile fileOf(const Shop& shop, const char* on = "2026-06-02") {
    return benchFile(shop.record(), shop.inspection, day(on)).value();
}

template <class Block>
std::vector<Block> blocksOf(const paper::Document& document) {
    std::vector<Block> found;
    for (const auto& block : document.blocks)
        if (const auto* each = std::get_if<Block>(&block))
            found.push_back(*each);
    return found;
}

/// In lines so long that none is broken.
QString textOf(const paper::Document& document) {
    return QString::fromStdString(paper::toText(document, english, 2000));
}

QString headingsOf(const paper::Document& document) {
    QStringList headings;
    for (const auto& each : blocksOf<paper::Heading>(document))
        headings << QString::fromStdString(each.text);
    return headings.join(QLatin1Char('|'));
}

QString labelsOf(const paper::Document& document) {
    QStringList labels;
    for (const auto& each : blocksOf<paper::Facts>(document))
        for (const auto& fact : each.facts)
            labels << QString::fromStdString(fact.label);
    return labels.join(QLatin1Char('|'));
}

constexpr const char* twoCylinders = R"({"entry":"item.entered","on":"2016-05-01","kind":"cylinder","item":"C8"}
{"entry":"item.entered","on":"2016-05-01","kind":"cylinder","item":"C9"})";
constexpr const char* scratched =
    R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":"work.item","item":"C9","finding":"a scratch")";

std::string cell(const paper::Table& table, std::size_t row, std::string_view column) {
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        if (table.columns[i].title == column)
            return table.rows.at(row).at(i);
    return "no such column";
}

}

class SheetsTest : public QObject {
    Q_OBJECT

private slots:
    void anOpenOneIsADraftAndSignedByNobody() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        for (const auto kind : everyKind) {
            const auto document = sheet(kind, fileOf(shop), english);
            QVERIFY2(document.title.find("DRAFT, not signed") != std::string::npos, document.title.c_str());
            const auto text = textOf(document);
            QVERIFY2(text.contains("Nothing on this page is signed or released"), qPrintable(text));
            for (const auto& signature : blocksOf<paper::Signature>(document)) {
                QCOMPARE(signature.title, std::string("To be signed"));
                for (const auto& line : signature.lines)
                    QVERIFY2(line.value.empty(), line.value.c_str());
            }
            QVERIFY(!text.contains("Signing as: "));
        }
    }

    void everyPaperNamesItsRecordAndCarriesTheCaution() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(shop.sign(Shop::signing()));
        for (const auto kind : everyKind) {
            const auto document = sheet(kind, fileOf(shop), english);
            QCOMPARE(document.recordId, shop.inspection.text());
            QCOMPARE(document.caution, english.say(ReleasePhrase::CautionText));
            QVERIFY(document.title.find("DRAFT") == std::string::npos);
        }
    }

    // AMC M.A.801(e)1(a), read in a UK-retained copy of Part-M; with "Part-ML" from memory.
    void theReleaseHasTheStatementAsItWasSigned() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(shop.sign(Shop::signing()));
        const auto file = fileOf(shop);
        for (const auto& document : {releasePaper(file, english), logbookPage(file, english)}) {
            const auto statements = blocksOf<paper::Statement>(document);
            QCOMPARE(statements.size(), std::size_t(1));
            QCOMPARE(statements[0].text, file.inspection.closed->body.statement);
            QVERIFY(statements[0].text.starts_with("Certifies that the work specified except as otherwise specified"));
            const auto lines = blocksOf<paper::Signature>(document).at(0).lines;
            QCOMPARE(lines.at(0).value, std::string("Ada Rhos"));
            QCOMPARE(lines.at(2).value, std::string("QE.66.1"));
            QCOMPARE(lines.at(3).value, std::string("2026-06-02"));
            QVERIFY(lines.at(4).byHand && lines.at(4).value.empty());
        }
        const auto& seal = *file.inspection.closed->body.seal;
        const auto text = textOf(releasePaper(file, english));
        QVERIFY(text.contains(QString::fromStdString(seal.digest)));
        QVERIFY(text.contains(QStringLiteral("covers %1 entries").arg(seal.entries.size())));
    }

    void whatWasSignedReadsTheSameOnAnyLaterDay() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.find("D-1", "minor");
        QVERIFY(shop.sign(Shop::signing()));
        std::vector<paper::Document> then;
        for (const auto kind : everyKind)
            then.push_back(sheet(kind, fileOf(shop, "2026-06-02"), english));
        shop.say(R"({"entry":"flight.logged","on":"2026-07-01","balloon":"QE-ONE","minutes":75}
{"entry":"defect.cleared","on":"2026-07-02","by":"Ada Rhos","item":"E1","defect":"D-1","what":"panel replaced"}
{"entry":"tester.calibrated","on":"2026-07-03","tester":"F-1","until":"2027-12-31"}
{"entry":"limit.stated","on":"2026-07-04","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":400,"source":"Manual 77, revision 5"})");
        for (std::size_t i = 0; i < then.size(); ++i)
            QVERIFY2(sheet(everyKind[i], fileOf(shop, "2036-01-01"), english) == then[i],
                     std::string(sheetName(everyKind[i])).c_str());
        // 12,000 minutes were brought forward, and nothing was flown before the signature.
        QVERIFY(textOf(logbookPage(fileOf(shop, "2036-01-01"), english)).contains("200:00 h"));
    }

    void aCorrectionShowsBothWordings() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto pulled = shop.pull(12, R"("value":250)").ids.front();
        QVERIFY(shop.sign(Shop::signing()));
        QVERIFY(!textOf(inspectionReport(fileOf(shop), english)).contains("First written"));
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-20","by":"Ada Rhos","note":"misread","replaces":")" +
                 pulled.text() + R"(","with":{"value":205,"note":"digits were swapped"}})");
        const auto report = inspectionReport(fileOf(shop), english);
        const auto corrections = blocksOf<paper::Table>(report).back();
        QCOMPARE(corrections.rows.size(), std::size_t(2));
        QCOMPARE(cell(corrections, 0, "Entry"), pulled.text());
        QCOMPARE(cell(corrections, 0, "What"), std::string("note"));
        QCOMPARE(cell(corrections, 0, "First written"), std::string("nothing"));
        QCOMPARE(cell(corrections, 0, "Says now"), std::string("digits were swapped"));
        QCOMPARE(cell(corrections, 1, "What"), std::string("value"));
        QCOMPARE(QString::fromStdString(cell(corrections, 1, "First written")).toDouble(), 250.0);
        QCOMPARE(QString::fromStdString(cell(corrections, 1, "Says now")).toDouble(), 205.0);
        QVERIFY(textOf(report).contains("205 N"));
        QVERIFY(textOf(releasePaper(fileOf(shop), english)).contains("were corrected since they were written"));
    }

    void aHeldPullIsABound() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        shop.pull(3, R"("held_at":133.4)");
        shop.pull(5, R"("value":133.4)");
        const auto file = fileOf(shop);
        const auto text = textOf(inspectionReport(file, english));
        QCOMPARE(text.count("≥ 133.4 N"), 1);
        QVERIFY(text.contains("In calibration until") && text.contains("2026-12-31"));
        const auto table = readingsTable(file, english);
        QCOMPARE(cell(table, 0, "held_at"), std::string("133.4"));
        QCOMPARE(cell(table, 0, "value"), std::string());
        QCOMPARE(cell(table, 1, "held_at"), std::string());
        QCOMPARE(cell(table, 1, "value"), std::string("133.4"));
        const auto map = blocksOf<paper::EnvelopeMapFigure>(envelopeMapPage(file, english)).at(0);
        QVERIFY(map.panels.at(0).bound && !map.panels.at(1).bound);
        const auto json = inspectionJson(file, english);
        QVERIFY(json["readings"][0].contains("held_at") && !json["readings"][0].contains("value"));
    }

    void warpAndWeftOfOnePanelAreTwoMaps() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        shop.pull(3);
        // 50 lbf are 222.4 N: 4.448 221 615 260 5 N each (NIST SP 811, appendix B.8; from memory).
        shop.say(
            R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","unit":"lbf","value":50,"direction":"weft","row":16,"gore":3,"tester":"F-1")" +
            shop.about() + "}");
        const auto maps = blocksOf<paper::EnvelopeMapFigure>(envelopeMapPage(fileOf(shop), english));
        QCOMPARE(maps.size(), std::size_t(2));
        QCOMPARE(maps[0].panels.size(), std::size_t(1));
        QCOMPARE(maps[1].panels.size(), std::size_t(1));
        QCOMPARE(maps[1].panels[0].text, std::string("222.4"));
        QVERIFY(maps[1].legend.at(0).find("in N") != std::string::npos);
        QCOMPARE(maps[0].gores, 24);
        QCOMPARE(maps[0].rows, 18);
    }

    void papersSpeakInTheUnitOfTheManual() {
        // "Fabric tested to 30 pounds" is how a manufacturer's instructions (FAA-approved, 2001, read) state it; one
        // pound-force is 4.448 221 615 260 5 N (NIST SP 811, appendix B.8; from memory).
        Shop shop;
        shop.say(
            R"({"entry":"limit.stated","on":"2016-05-02","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"lbf","least":30,"places":2,"source":"Manual 77, 6.3"})");
        shop.open(Visit::PartMlInspection).carriedOut();
        shop.pull(3, R"("held_at":177.9288646)");
        const auto low = shop.pull(9, R"("value":111.2055404)").ids.front();
        shop.tellTale(110, 116);
        shop.find("D-1", "grounding", low);
        const auto file = fileOf(shop);
        for (const auto& paper : {inspectionReport(file, english), releasePaper(file, english)}) {
            const auto text = QString::fromStdString(paper::toText(paper, english, 4000));
            QVERIFY2(text.contains("lbf") && !text.contains(QRegularExpression("[0-9] N\\b")), qPrintable(text));
        }
        const auto report = QString::fromStdString(paper::toText(inspectionReport(file, english), english, 4000));
        for (const char* said : {"≥ 40 lbf", "25 lbf", "at least 30 lbf"})
            QVERIFY2(report.contains(QString::fromUtf8(said)), qPrintable(report));
        const auto map = blocksOf<paper::EnvelopeMapFigure>(envelopeMapPage(file, english)).at(0);
        QCOMPARE(map.panels.at(0).text, std::string("40"));
        QVERIFY(map.legend.at(0).find("in lbf") != std::string::npos);
        const auto json = inspectionJson(file, english).at("readings").at(1); // as it was read, and as it is printed
        QCOMPARE(json.at("value").get<double>(), 111.2055404);
        QCOMPARE(json.at("unit").get<std::string>(), std::string("N"));
        QCOMPARE(json.at("printed").at("unit").get<std::string>(), std::string("lbf"));
    }

    void aReleaseTellsDeferredFromOpen() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.find("D-1", "barring");
        shop.say(shop.deferral("D-1", "Ada Rhos"));
        shop.find("D-2", "minor");
        QVERIFY(shop.sign(Shop::signing()));
        const auto file = fileOf(shop);
        const auto labels = labelsOf(releasePaper(file, english));
        // The certificate of airworthiness review was never proven: it stands between them as not covered.
        QVERIFY2(labels.contains("Deferred defects|Not covered") && labels.contains("|Open defects"),
                 qPrintable(labels));
        QVERIFY2(!labels.contains("unairworthy"), qPrintable(labels));
        const auto tables = blocksOf<paper::Table>(discrepancyList(file, english));
        QCOMPARE(tables.size(), std::size_t(2));
        QCOMPARE(cell(tables[0], 0, "Severity"), std::string("minor"));
        QCOMPARE(tables[0].rows.size(), std::size_t(1));
        QVERIFY(cell(tables[1], 0, "State").find("until 2026-07-31") != std::string::npos);
        QCOMPARE(cell(tables[1], 0, "No."), std::string("2"));
    }

    void aDefectIsToldWithItsPhotographsWhoeverFoundIt() {
        Shop shop;
        const std::string first(64, 'a');
        const std::string second(64, 'b');
        shop.say(R"({"entry":"defect.found","on":"2026-05-20","item":"E1","defect":"P-1","what":"torn",)"
                 R"("severity":"minor","photographs":[")" +
                 first + R"(",")" + second + R"("]})");
        shop.open(Visit::PartMlInspection);
        shop.find("D-1", "minor");
        const auto file = fileOf(shop);
        const auto report = textOf(inspectionReport(file, english));
        QVERIFY2(report.contains("torn; 2 photographs in the record"), qPrintable(report));
        std::map<std::string, std::vector<std::string>> told;
        const auto json = inspectionJson(file, english);
        for (const auto& defect : json.at("defects"))
            told[defect.at("defect")] = defect.at("photographs").get<std::vector<std::string>>();
        QCOMPARE(told.at("P-1"), (std::vector{first, second}));
        QVERIFY(told.at("D-1").empty());
    }

    // 14 CFR 43.11(a)(5) and (b), read: the statement names the date of a list that the owner is given.
    void aListOfDiscrepanciesIsDated() {
        Shop shop;
        shop.ready(Visit::UsAnnual);
        shop.find("D-1", "barring");
        auto signing = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        signing.outcome = Outcome::Discrepancies;
        QVERIFY(shop.sign(signing));
        const auto file = fileOf(shop);
        QVERIFY(textOf(releasePaper(file, english))
                    .contains("a list of discrepancies and unairworthy items dated 2026-06-02"));
        QVERIFY(textOf(discrepancyList(file, english)).contains("Dated 2026-06-02"));
        QVERIFY(std::ranges::count(sheetsOf(file), SheetKind::Discrepancies) == 1);
    }

    void anAbandonedVisitIsNoRelease() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        auto signing = Shop::signing();
        signing.outcome = Outcome::Abandoned;
        QVERIFY(shop.sign(signing));
        const auto file = fileOf(shop);
        QCOMPARE(sheetsOf(file), std::vector{SheetKind::Report});
        QVERIFY(blocksOf<paper::Statement>(releasePaper(file, english)).empty());
    }

    void itemsOnWhichALineCameOutAlikeShareItsRow() {
        Shop shop;
        shop.say(twoCylinders);
        Opening opening;
        opening.visit = Visit::PartMlComponent;
        opening.items = shop.items = {ItemId("C8"), ItemId("C9")};
        opening.on = day("2026-06-01");
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.carriedOut();
        const auto rowsOf = [&](const char* title) {
            QStringList rows;
            for (const auto& checks : blocksOf<paper::Checks>(inspectionReport(fileOf(shop), english)))
                for (const auto& line : checks.lines)
                    if (line.text == title)
                        rows << QString::fromStdString(line.items + ": " + line.finding);
            return rows;
        };
        const char* title = "The work and what it touches";
        QCOMPARE(rowsOf(title), QStringList{"all: "});
        shop.say(scratched + shop.about() + "}");
        QCOMPARE(rowsOf(title), (QStringList{"C8: ", "C9: a scratch"}));
    }

    void severalPapersHaveATitleThatIsTrueOfAll() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto whole =
            bound({releasePaper(fileOf(shop), english), inspectionReport(fileOf(shop), english)}, english);
        QCOMPARE(whole.title, "Papers of inspection " + shop.inspection.text());
        QCOMPARE(blocksOf<paper::PageBreak>(whole).size(), std::size_t(1));
        QVERIFY(headingsOf(whole).contains("Certificate of release to service (DRAFT, not signed)"));
        QVERIFY(headingsOf(whole).contains("Inspection report (DRAFT, not signed)"));
    }
};

CROWNRING_TEST(SheetsTest, QCoreApplication)

}

#include "sheets_test.moc"

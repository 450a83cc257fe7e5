// SPDX-License-Identifier: GPL-3.0-or-later

/// Each paper read line by line against its rule: a row a clause and visit, with what must stand on the paper.

#include "sheets/every_visit.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace clauses_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

bool is43_11(Visit visit) { return visit == Visit::UsAnnual || visit == Visit::UsHundredHour; }

/// What a release of this visit must say.
std::vector<Clause> clausesOf(Visit visit) {
    const auto work = isMaintenance(visit) || isOfOwnersTasks(visit)
                          ? QStringList{"patched a panel; to Manual 77, 4-12, revision 4"}
                          : QStringList{isPeriodic(visit) ? "by the checklist 'Hot-air balloon"
                                                          : "with the checklist 'Hot-air balloon"};
    if (is43_11(visit)) {
        const QString type = visit == Visit::UsAnnual ? "annual" : "100-hour";
        return {{"14 CFR 43.11(a)(1), read: the type of inspection and a brief description of its extent",
                 {visit == Visit::UsAnnual ? "Annual inspection" : "100-hour inspection", "by the checklist",
                  "carried out on: E1, B1, R1, C1", "2 readings, 300 N (limit at least 133.4 N)"}},
                {"14 CFR 43.11(a)(2), read: the date and the aircraft's total time in service",
                 {"Completed on: 2026-06-02", "200:00 h"}},
                {"14 CFR 43.11(a)(3), read: signature, certificate number and kind",
                 {"Ines Holt", "A&P 6, IA", "mechanic (A&P) with inspection authorization", "Signature"}},
                {"14 CFR 43.11(a)(4), read: the statement",
                 {"I certify that this aircraft has been inspected in accordance with " + type +
                  " inspection and was determined to be in airworthy condition."}}};
    }
    if (regimeOf(visit) == Regime::Us14Cfr) {
        const bool owners = isOfOwnersTasks(visit);
        std::vector<Clause> clauses{
            {"14 CFR 43.9(a)(1), from memory: a description of the work, or a reference to acceptable data", work},
            {"14 CFR 43.9(a)(2), from memory: the date of completion", {"Completed on: 2026-06-02"}},
            {"14 CFR 43.9(a)(4), from memory: signature, certificate number and kind; what it constitutes",
             {owners ? "Pia Lund" : "Ines Holt", owners ? "PP 7" : "A&P 6, IA", "Signature",
              "The signature constitutes the approval for return to service only for the work performed."}}};
        if (isMaintenance(visit) || owners)
            clauses.push_back(
                {"14 CFR 43.9(a)(3), from memory: who performed it, if another", {"performed by Bo Lind"}});
        return clauses;
    }
    const bool owners = isOfOwnersTasks(visit);
    std::vector<Clause> clauses{
        {"ML.A.801(e), from memory: the basic details of the maintenance", work + QStringList{"Manual 77, revision 4"}},
        {"ML.A.801(e), from memory: the date of completion", {"Completed on: 2026-06-02"}},
        {"ML.A.801(e), from memory: the identity of who issues it, with the licence",
         {owners ? "Ole Berg" : "Ada Rhos", owners ? "BPL 4" : "QE.66.1", "Signature"}},
        {"ML.A.801(e), from memory: the limitations", {"not above 2,000 m"}}};
    if (isOfComponents(visit))
        clauses.push_back(
            {"ML.A.802, from memory: a component is released by its name, beside the form of an authority",
             {"Certificate of release of components", "basket B9, serial number 88",
              "no EASA Form 1 and no FAA Form 8130-3"}});
    else
        clauses.push_back({"ML.A.801(e) and its AMC, wording from memory after AMC M.A.801(e)1, read: the statement",
                           {"carried out in accordance with Part-ML", "considered ready for release to service"}});
    return clauses;
}

SheetKind certificateOf(Visit visit) { return isOfComponents(visit) ? SheetKind::Component : SheetKind::Release; }

}

class ClausesTest : public QObject {
    Q_OBJECT

    SignedVisits m_signed;

private slots:
    void theReleaseSaysWhatItsRuleAsks_data() {
        QTest::addColumn<Visit>("visit");
        QTest::addColumn<QStringList>("says");
        for (const auto visit : allVisits)
            for (const auto& clause : clausesOf(visit))
                QTest::newRow((std::string(visitName(visit)) + ", " + clause.clause).c_str()) << visit << clause.says;
    }
    void theReleaseSaysWhatItsRuleAsks() {
        QFETCH(Visit, visit);
        QFETCH(QStringList, says);
        const auto& made = m_signed.of(visit);
        QVERIFY(made.file().inspection.closed);
        const auto paper = made.paper(certificateOf(visit));
        for (const auto& each : says)
            QVERIFY2(paper.contains(each), qPrintable(each + u'\n' + paper));
        // It is a copy of what was signed, under a seal, and no draft.
        QVERIFY2(paper.contains("Copy from the record of what was signed on 2026-06-02 by ") &&
                     paper.contains("digest") && !paper.contains("DRAFT"),
                 qPrintable(paper));
    }

    // 14 CFR 43.11(a)(5) and (b), read: the list is signed and dated, and items that may be inoperative (91.213(d),
    // from memory) have their placard on it.
    void theListOfDiscrepanciesIsSignedDatedAndHasThePlacards() {
        EveryVisit visit(Visit::UsAnnual);
        auto& shop = visit.shop;
        shop.find("D-1", "barring");
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-01","item":"B1","defect":"D-2","what":"altimeter reads high","severity":"barring")" +
            shop.about() + "}");
        shop.say(
            R"({"entry":"defect.deferred","on":"2026-06-01","by":"Ines Holt","item":"B1","defect":"D-2","reason":"not required for day flight","until":"2026-07-31","not_required":true,"placard":"removed; INOPERATIVE at its place","agreed_by":"Ines Holt")" +
            shop.about() + "}");
        const auto refused = visit.sign(Outcome::Discrepancies);
        QVERIFY2(refused.isEmpty(), qPrintable(refused));
        const auto release = visit.paper(SheetKind::Release);
        for (const char* each : {"a list of discrepancies and unairworthy items dated 2026-06-02 has been provided for "
                                 "the aircraft owner or operator.",
                                 "not approved for return to service", "a torn panel"})
            QVERIFY2(release.contains(each), qPrintable(each + release));
        const auto list = visit.paper(SheetKind::Discrepancies);
        for (const char* each :
             {"Dated 2026-06-02", "a torn panel", "altimeter reads high", "removed; INOPERATIVE at its place",
              "Ines Holt, 2026-06-01", "A&P 6, IA", "Signature"})
            QVERIFY2(list.contains(each), qPrintable(each + list));
        const auto json = inspectionJson(visit.file(), english);
        for (const auto& defect : json.at("defects"))
            QCOMPARE(defect.at("placard").get<std::string>().empty(), defect.at("defect") != "D-2");
    }

    // ML.A.801(f), from memory; 145.A.50(e), read.
    void aReleaseAfterIncompleteMaintenanceIsAPaperAsOfItsSignature() {
        EveryVisit visit(Visit::PartMlRepair);
        auto& shop = visit.shop;
        shop.say(R"({"entry":"line.settled","on":"2026-06-01","state":"open","line":"work.check-flight")" +
                 shop.about() + "}");
        const auto refused = visit.sign(Outcome::Incomplete);
        QVERIFY2(refused.isEmpty(), qPrintable(refused));
        const auto first = visit.paper(SheetKind::Incomplete);
        for (const char* each :
             {"Certificate of release to service after incomplete maintenance", "Maintenance not completed",
              "Copy from the record of what was signed on 2026-06-02 by Ada Rhos", "not above 2,000 m", "QE.66.1",
              "within the limitations stated.", "patched a panel", "digest", "Signature"})
            QVERIFY2(first.contains(each), qPrintable(each + first));
        QVERIFY2(!first.contains("DRAFT"), qPrintable(first));
        QVERIFY(visit.paper(SheetKind::Release).contains("DRAFT"));
        QCOMPARE(sheetsOf(visit.file()).front(), SheetKind::Incomplete);
        // What is said after it is not on it, and the papers of the visit say that there was one.
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-03","item":"E1","defect":"D-9","what":"a chafed line","severity":"minor")" +
            shop.about() + "}");
        shop.say(
            R"({"entry":"work.performed","on":"2026-06-03","what":"line adjusted","data":"Manual 77, 5","grade":"minor","item":"E1")" +
            shop.about() + "}");
        shop.say(R"({"entry":"line.settled","on":"2026-06-03","state":"done","line":"work.check-flight")" +
                 shop.about() + "}");
        shop.say(R"({"entry":"flight.logged","on":"2026-06-03","balloon":"QE-ONE","minutes":20})");
        auto closing = Shop::signing();
        closing.on = day("2026-06-04");
        QVERIFY(shop.sign(closing));
        const auto then = visit.paper(SheetKind::Incomplete, "2026-06-10");
        QVERIFY2(!then.contains("line adjusted") && !then.contains("a chafed line"), qPrintable(then));
        QVERIFY2(then.contains("The visit was closed on 2026-06-04"), qPrintable(then));
        for (const auto kind : {SheetKind::Release, SheetKind::Report, SheetKind::Logbook}) {
            const auto paper = visit.paper(kind, "2026-06-10");
            QVERIFY2(paper.contains("A release after incomplete maintenance was signed by Ada Rhos, 2026-06-02"),
                     qPrintable(paper));
            QVERIFY2(paper.contains("line adjusted"), qPrintable(paper));
        }
    }

    // "Within the limitations stated": then they are stated, their end too.
    void theEndOfALimitedReleaseStandsOnIt() {
        EveryVisit visit(Visit::PartMlRepair);
        visit.shop.say(R"({"entry":"line.settled","on":"2026-06-01","state":"open","line":"work.check-flight")" +
                       visit.shop.about() + "}");
        auto signing = visit.signing();
        signing.outcome = Outcome::Incomplete;
        signing.within = {day("2026-06-09"), Minutes(30), 2};
        QVERIFY(visit.shop.sign(signing));
        for (const auto kind : {SheetKind::Incomplete, SheetKind::Report, SheetKind::Logbook}) {
            const auto paper = visit.paper(kind, "2026-06-10");
            for (const char* each :
                 {"not above 2,000 m", "flown until 2026-06-09", "at most 0:30 aloft", "flights at most: 2"})
                QVERIFY2(paper.contains(each), qPrintable(each + paper));
        }
    }
    // Of what has no type no test is asked, and who reads the certificate later is told.
    void whatHasNoTypeSaysWhatItWasNotAskedFor() {
        EveryVisit visit(Visit::PartMlInspection);
        auto file = visit.file();
        for (auto& item : file.items)
            item.type.reset();
        const auto paper =
            QString::fromStdString(paper::toText(sheet(SheetKind::Release, file, english), english, 4000));
        QVERIFY2(paper.contains("Not asked for") && paper.contains("has no type in the record"), qPrintable(paper));
    }

    void oneJsonHoldsWhatThePapersSay() {
        for (const auto visit : {Visit::PartMlRepair, Visit::UsAnnual, Visit::UsComponent}) {
            const auto& made = m_signed.of(visit);
            const auto paper = made.paper(certificateOf(visit));
            const auto json = inspectionJson(made.file(), english);
            const auto& release = json.at("release");
            QVERIFY(!release.at("statement_source").get<std::string>().empty());
            QVERIFY(paper.contains(QString::fromStdString(release.at("statement").get<std::string>())));
            QVERIFY(!release.at("work").empty());
            for (const auto& work : release.at("work"))
                QVERIFY2(paper.contains(QString::fromStdString(work.get<std::string>())), work.dump().c_str());
            QCOMPARE(json.at("papers").size(), sheetsOf(made.file()).size());
            QCOMPARE(json.at("labels").size(), made.file().items.size());
        }
    }

    void withoutAReleaseAfterIncompleteMaintenanceThereIsNoSuchPaper() {
        const auto& made = m_signed.of(Visit::PartMlRepair);
        QVERIFY(std::ranges::count(sheetsOf(made.file()), SheetKind::Incomplete) == 0);
        const auto paper = made.paper(SheetKind::Incomplete);
        QVERIFY2(paper.contains("No release after incomplete maintenance was signed"), qPrintable(paper));
        QVERIFY(!paper.contains("Signed in the record"));
    }
};

CROWNRING_TEST(ClausesTest, QCoreApplication)

}

#include "clauses_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// The papers beside the certificate, each read against its rule: a row a clause, with what must stand on the paper.

#include "answers/review/reviews.h"
#include "gate/returned.h"
#include "gate/review_yard.h"
#include "sheets/every_visit.h"
#include "sheets/review_paper.h"
#include "test_class.h"

#include <QtTest>

namespace paper_clauses_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Of the entry that is kept in the logbook.
std::vector<Clause> logbookOf(Visit visit) {
    const bool owners = isOfOwnersTasks(visit);
    const bool partMl = regimeOf(visit) == Regime::PartMl;
    const QString signatory = partMl ? owners ? "Ole Berg" : "Ada Rhos" : owners ? "Pia Lund" : "Ines Holt";
    const QString licence = partMl ? owners ? "BPL 4" : "QE.66.1" : owners ? "PP 7" : "A&P 6, IA";
    const bool described = isMaintenance(visit) || owners;
    const QStringList work{described ? "patched a panel; to Manual 77, 4-12, revision 4; " : "the checklist 'Hot-air",
                           described ? "performed by Bo Lind" : "2 readings, 300 N (limit at least 133.4 N)"};
    if (isPeriodic(visit) && !partMl)
        return {{"14 CFR 43.11(a)(1), read: the type and extent of the inspection", work},
                {"14 CFR 43.11(a)(2), read: date and total time in service", {"2026-06-02", "200:00 h"}},
                {"14 CFR 43.11(a)(3), (4), read: signature, certificate, statement",
                 {signatory, licence, "Signature", "was determined to be in airworthy condition"}}};
    if (!partMl)
        return {{"14 CFR 43.9(a)(1), (3), from memory: the work and who did it",
                 described ? work : QStringList{"the checklist 'Hot-air"}},
                {"14 CFR 43.9(a)(2), from memory: the date of completion", {"2026-06-02"}},
                {"14 CFR 43.9(a)(4), from memory: signature, certificate, what it constitutes",
                 {signatory, licence, "Signature", "approval for return to service only for the work performed"}}};
    return {{"ML.A.305(b), (d), from memory: the maintenance with its date", work + QStringList{"2026-06-02"}},
            {"ML.A.801(e), from memory: who issues the release, and the limitations",
             {signatory, licence, "Signature", "not above 2,000 m"}}};
}

}

class PaperClausesTest : public QObject {
    Q_OBJECT

    SignedVisits m_signed;
    static void expect(const QString& paper, const QStringList& says) {
        for (const auto& each : says)
            QVERIFY2(paper.contains(each), qPrintable(each + u'\n' + paper));
    }
    /// A repair with a part off and on and a patch. @param lot `,"lot":"L-7"`
    static QString repaired(SheetKind kind, const std::string& lot) {
        EveryVisit visit(Visit::PartMlRepair);
        visit.shop.say(R"({"entry":"repair.made","on":"2026-06-01","by":"Bo Lind","item":"E1","method":"sewn patch",)" +
                       std::string(R"("gore":5,"row":3,"width_mm":180,"height_mm":120)") + lot + visit.shop.about() +
                       "}");
        visit.shop.say(
            R"({"entry":"part.replaced","on":"2026-06-01","by":"Bo Lind","item":"E1","part":"pulley","removed_serial":"P-1","fitted_serial":"P-2","release_document":"EASA Form 1 no. 7")" +
            visit.shop.about() + "}");
        const auto refused = visit.sign();
        return refused.isEmpty() ? visit.paper(kind) : refused;
    }

private slots:
    void theLogbookSaysWhatItsRuleAsks_data() {
        QTest::addColumn<Visit>("visit");
        QTest::addColumn<QStringList>("says");
        for (const auto visit : allVisits)
            for (const auto& clause : logbookOf(visit))
                QTest::newRow((std::string(visitName(visit)) + ", " + clause.clause).c_str()) << visit << clause.says;
    }
    void theLogbookSaysWhatItsRuleAsks() {
        QFETCH(Visit, visit);
        QFETCH(QStringList, says);
        expect(m_signed.of(visit).paper(SheetKind::Logbook), says);
    }

    void theReportSaysWhatItsRuleAsks_data() {
        QTest::addColumn<QStringList>("says");
        QTest::newRow("14 CFR 43.15(c)(1), from memory: a checklist was used, line by line")
            << QStringList{"Checklist", "Parachute", "done", "Ada Rhos, 2026-06-01"};
        QTest::newRow("14 CFR Part 43 App. D, from memory: each line with its clause")
            << QStringList{"Clauses", "14 CFR Part 43", "* from memory; check against the current text"};
        QTest::newRow("14 CFR 43.13(a), read in a third-party copy: tested with what, in calibration")
            << QStringList{"F-1", "force gauge", "2026-12-31"};
        QTest::newRow("14 CFR 43.11(a)(2), read: the items with their time in service")
            << QStringList{"envelope", "T-77", "101", "200:00 h"};
    }
    void theReportSaysWhatItsRuleAsks() {
        QFETCH(QStringList, says);
        expect(m_signed.of(Visit::UsAnnual).paper(SheetKind::Report), says);
    }

    // ML.A.501(a), read; ML.A.801(e) and 14 CFR 43.9(a)(1), from memory: parts off and on with serial number and
    // release document, the material of a patch.
    void partsAndMaterialStandOnReleaseAndReport() {
        const std::string lot = R"(,"lot":"L-2024-07")";
        expect(repaired(SheetKind::Release, lot),
               {"Repair of E1, gore 5, row 3: sewn patch, fabric of lot L-2024-07", "EASA Form 1 no. 7",
                "serial number off P-1, on P-2", "Manual 77, 4-12"});
        expect(repaired(SheetKind::Report, lot), {"180 × 120 mm", "L-2024-07", "EASA Form 1 no. 7", "off P-1, on P-2"});
    }
    /// Of a lot that nobody stated no paper speaks.
    void aLotThatNobodyKnowsIsNotPrinted() {
        for (const auto kind : {SheetKind::Release, SheetKind::Logbook}) {
            const auto paper = repaired(kind, {});
            expect(paper, {"sewn patch"});
            QVERIFY2(!paper.contains(QRegularExpression(QStringLiteral("\\blots?\\b"))), qPrintable(paper));
        }
    }

    void theReviewSaysWhatItsRuleAsks_data() {
        QTest::addColumn<QStringList>("says");
        QTest::newRow("ML.A.901(a), read: the form, its number, one year")
            << QStringList{"EASA Form 15c", "ARC 2", "2026-06-01", "2025-06-01"};
        QTest::newRow("ML.A.901(b), read: by whom, under which approval or authorisation") << QStringList{
            "Cai Mo", "ARS 3, Lakeside, QE.CAO.0031", "airworthiness review staff of an approved organisation"};
        QTest::newRow("ML.A.903(a) to (c), read: of which balloon and envelope") << QStringList{"QE-ONE", "E1"};
        QTest::newRow("it is no certificate itself")
            << QStringList{"The certificate itself is the form (EASA Form 15c) that was issued."};
    }
    void theReviewSaysWhatItsRuleAsks() {
        QFETCH(QStringList, says);
        Scratch scratch;
        posted(*scratch.record, reviews::yard());
        posted(*scratch.record, reviews::signedBy("2025-06-01", "2026-06-01"));
        const auto review = signedReviews(*scratch.record, Registration("QE-ONE"), day("2025-07-01")).value().at(0);
        expect(QString::fromStdString(paper::toText(reviewPaper(review, {}, english), english, 2000)), says);
    }

    /// An annual that ended with a list, all of it cleared, and approved weeks later.
    void theApprovalAfterAListSaysWhatItsRuleAsks_data() {
        QTest::addColumn<QStringList>("says");
        QTest::newRow("14 CFR 43.11(b), read: what was on the list, and that it is answered")
            << QStringList{"answered since", "Dated 2026-06-02"};
        QTest::newRow("14 CFR 43.9(a)(4), 91.407(a)(1), from memory: who approved, when, under which certificate")
            << QStringList{"The return to service was approved by Ines Holt", "2026-06-20, licence A&P 6, IA",
                           "approval for return to service only for the work performed"};
        QTest::newRow("14 CFR 43.11(a)(5), read: the inspection stays one that was not approved when it was signed")
            << QStringList{"what was open on that day"};
    }
    void theApprovalAfterAListSaysWhatItsRuleAsks() {
        QFETCH(QStringList, says);
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-06-20");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-21")).value();
        expect(QString::fromStdString(paper::toText(sheet(SheetKind::Discrepancies, file, english), english, 4000)) +
                   QString::fromStdString(paper::toText(sheet(SheetKind::Logbook, file, english), english, 4000)),
               says);
    }

    // ML.A.802, 14 CFR 43.9(a), from memory: what hangs on a component says what it is, the work, by whom and when.
    void theLabelSaysWhatItsRuleAsks() {
        for (const auto visit : {Visit::PartMlComponent, Visit::UsComponent})
            expect(
                m_signed.of(visit).paper(SheetKind::Labels),
                {"B9", "basket, B-4", "88", "patched a panel", "2026-06-02", "Released", "No EASA Form 1",
                 visit == Visit::UsComponent ? "Ines Holt, 2026-06-02, A&P 6, IA" : "Ada Rhos, 2026-06-02, QE.66.1"});
    }
};

CROWNRING_TEST(PaperClausesTest, QCoreApplication)

}

#include "paper_clauses_test.moc"

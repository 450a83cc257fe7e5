// SPDX-License-Identifier: GPL-3.0-or-later

/// What papers say of the code that they were signed with.

#include "acts/own_code.h"
#include "acts/revoke.h"
#include "answers/bench_file.h"
#include "gate/returned.h"
#include "paper/document_text.h"
#include "sheets/sheets.h"
#include "test_class.h"
#include "trust/codes_told.h"

#include <nlohmann/json.hpp>

namespace proven_papers_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

BenchFile fileOf(const Shop& shop) { return benchFile(shop.record(), shop.inspection, day("2026-06-30")).value(); }
QString paperOf(const Shop& shop, SheetKind kind) {
    return QString::fromStdString(paper::toText(sheet(kind, fileOf(shop), english), english, 2000));
}
QString without() { return QStringLiteral("Signed without a code of the signatory's own."); }
QString withKeyOf(const Shop& shop, std::size_t at = 0) {
    return QStringLiteral("Signed with the signatory's own code (key %1…).")
        .arg(QString::fromStdString(codesTold(shop.record()).value().at(at).said.key.substr(0, 16)));
}
const SaidCode first{"basket wire 7", true};
const SaidCode again{"basket wire 7", false};

}

class ProvenPapersTest : public QObject {
    Q_OBJECT
private slots:
    void whatWasSignedWithoutACodeSaysSo() {
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        for (const auto kind : {SheetKind::Release, SheetKind::Logbook, SheetKind::Report})
            QVERIFY2(paperOf(shop, kind).contains(without()), qPrintable(paperOf(shop, kind)));
        QVERIFY(inspectionJson(fileOf(shop), english).at("closed").at("proof").is_null());
    }
    void whatWasSignedWithOneSaysByWhichKey() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(crownring::sign(shop.record(), shop.record(), shop.inspection, Shop::signing(), {}, first));
        QVERIFY2(paperOf(shop, SheetKind::Release).contains(withKeyOf(shop)),
                 qPrintable(paperOf(shop, SheetKind::Release)));
        QVERIFY(!paperOf(shop, SheetKind::Release).contains(without()));
        const auto proof = inspectionJson(fileOf(shop), english).at("closed").at("proof");
        QCOMPARE(proof.at("key").get<std::string>(), codesTold(shop.record()).value().front().said.key);
        QCOMPARE(proof.at("signature").get<std::string>().size(), std::size_t{128});
    }
    void aWithdrawalSaysItOfItself() {
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        QVERIFY(setCode(shop.record(), shop.record(),
                        {PersonId("Ada Rhos"), "basket wire 7", {}, {}, {}, {}, day("2026-06-03")}));
        QVERIFY(revoke(shop.record(), shop.record(),
                       {shop.inspection, "the gauge was broken", PersonId("Ada Rhos"), day("2026-06-10")}, again));
        const auto paper = paperOf(shop, SheetKind::Release);
        QVERIFY2(paper.contains(without()) && paper.contains(withKeyOf(shop)), qPrintable(paper));
        QVERIFY(inspectionJson(fileOf(shop), english).at("revoked").at("proof").is_object());
    }
    void anApprovalSaysItOfItself() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-03");
        shop.cleared("D-2", "2026-06-03");
        QVERIFY(approveReturn(shop.record(), shop.record(), shop.inspection, ListedShop::approving("2026-06-04"), {},
                              first));
        const auto paper = paperOf(shop, SheetKind::Release);
        QVERIFY2(paper.contains(without()) && paper.contains(withKeyOf(shop)), qPrintable(paper));
        QVERIFY(inspectionJson(fileOf(shop), english).at("approved").at("proof").is_object());
    }
};

CROWNRING_TEST(ProvenPapersTest, QCoreApplication)

}

#include "proven_papers_test.moc"

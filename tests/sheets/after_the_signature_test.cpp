// SPDX-License-Identifier: GPL-3.0-or-later

/// What papers say of what came after they were signed, and of what was taken in and not done.

#include "answers/bench_file.h"
#include "gate/returned.h"
#include "paper/document_text.h"
#include "sheets/sheets.h"
#include "test_class.h"

namespace after_the_signature_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

QString paperOf(const Shop& shop, SheetKind kind, const char* on) {
    const auto file = benchFile(shop.record(), shop.inspection, day(on)).value();
    return QString::fromStdString(paper::toText(sheet(kind, file, english), english, 2000));
}

/// The organisation's own list, adopted before.
const char* const openedForMore =
    R"({"entry":"checklist.adopted","on":"2026-01-01","checklist":"short","document":{"checklist":"short","revision":"1","title":"Short","source":"invented","sections":[{"id":"all","title":"All"}],"lines":[{"id":"all-of-it","section":"all","kinds":["envelope"],"title":"All of it","look_for":"Holes.","sources":{"part-ml":"invented"}}]}}
{"entry":"inspection.opened","on":"2026-06-01","inspection":"V-9","visit":"part-ml-inspection","items":["E1"],"balloon":"QE-ONE","work":[{"item":"E1","requirement":"ml.inspection"},{"item":"E1","requirement":"fabric.strength-test"}],"checklist":{"checklist":"short","revision":"1","title":"Short","source":"invented","sections":[{"id":"all","title":"All"}],"lines":[{"id":"all-of-it","section":"all","kinds":["envelope"],"title":"All of it","look_for":"Holes.","sources":{"part-ml":"invented"}}]}})";
const char* const lookedAt =
    R"({"entry":"line.settled","on":"2026-06-01","inspection":"V-9","line":"all-of-it","item":"E1","state":"done"})";

std::string withdrawnOf(const Shop& shop) {
    return R"({"entry":"release.revoked","on":"2026-06-25","by":"Ines Holt","reason":"too early")" + shop.about() + "}";
}

}

class AfterTheSignatureTest : public QObject {
    Q_OBJECT
private slots:
    void aListSaysWhatIsAnsweredSince() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        QVERIFY(!paperOf(shop, SheetKind::Discrepancies, "2026-06-10").contains("answered since"));
        const auto later = paperOf(shop, SheetKind::Discrepancies, "2026-06-21");
        QCOMPARE(later.count("answered since"), 1);
    }
    void anApprovalIsInTheTitleAndItsWithdrawalIsNotOneOfTheRelease() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-06-20");
        QVERIFY(paperOf(shop, SheetKind::Release, "2026-06-20").contains("not approved for return to service"));
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        const auto approved = paperOf(shop, SheetKind::Release, "2026-06-21");
        QVERIFY(!approved.contains("not approved"));
        QVERIFY(approved.contains("approved since"));
        const auto list = paperOf(shop, SheetKind::Discrepancies, "2026-06-21");
        QVERIFY2(list.contains("The return to service was approved by") && list.contains("what was open on that day"),
                 qPrintable(list));
        shop.say(withdrawnOf(shop));
        const auto withdrawn = paperOf(shop, SheetKind::Release, "2026-06-26");
        QVERIFY(withdrawn.contains("The approval of the return to service was withdrawn by Ines Holt"));
        QVERIFY(!withdrawn.contains("This release was withdrawn"));
    }
    void whatWasTakenInAndNotDoneIsSaid() {
        Shop shop;
        shop.adopt("part-ml-hot-air");
        shop.say(openedForMore);
        const auto list = std::string(openedForMore, std::string_view(openedForMore).find('\n'));
        shop.say(confirmedLine(namedChecklist(nlohmann::json::parse(list)["document"].dump()).value(), "2026-01-02",
                               "Ada Rhos", Capacity::IndependentCertifyingStaff));
        shop.inspection = InspectionId("V-9");
        shop.say(lookedAt);
        shop.tellTale(110, 116);
        QVERIFY(shop.sign(Shop::signing()));
        const auto paper = paperOf(shop, SheetKind::Release, "2026-06-03");
        static const QRegularExpression notDone(QStringLiteral("so not certified +[^\n]* of E1\n"));
        QVERIFY2(paper.contains(notDone), qPrintable(paper));
        QVERIFY(!paperOf(shop, SheetKind::Report, "2026-06-03").contains("To be done"));
    }
};

CROWNRING_TEST(AfterTheSignatureTest, QCoreApplication)

}

#include "after_the_signature_test.moc"

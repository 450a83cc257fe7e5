// SPDX-License-Identifier: GPL-3.0-or-later
#include "returned.h"
#include "test_class.h"

namespace listed_rules_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string basketWithALife =
    R"({"entry":"programme.adopted","on":"2016-05-01","programme":"hoses","items":["B1"],"document":{"programme":"hoses","revision":"1","title":"T","source":"S","requirements":[{"id":"hose.life","title":"Life","source":"S 1","kinds":["basket"],"action":"retire","limits":[{"clock":"months","every":12}],"starts_from":"entered","once":true}]}})";
const std::string strengthForTheBalloon =
    R"({"entry":"programme.adopted","on":"2016-05-01","programme":"fabric-strength","balloons":["QE-ONE"]})";
const std::string basketIsScrapped =
    R"({"entry":"item.removed","on":"2026-06-16","balloon":"QE-ONE","item":"B1"}
{"entry":"item.state","on":"2026-06-16","item":"B1","state":"scrapped"})";

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string voided(const std::string& entry) {
    return R"({"entry":"entry.voided","on":"2026-06-16","by":"Ines Holt","reason":"not wanted","voids":)" +
           quoted(entry) + "}";
}

/// The line is corrected to open.
std::string opened(const std::string& line) {
    return R"({"entry":"entry.corrected","on":"2026-06-12","by":"Ines Holt","note":"cracked","replaces":)" +
           quoted(line) + R"(,"with":{"state":"open"}})";
}

std::string crackOfTheBasket(const std::string& about) {
    return R"({"entry":"defect.found","on":"2026-06-01","item":"B1","what":"a crack","defect":"D-1","severity":"barring")" +
           about + "}";
}

}

/// What a list names beside defects: requirements that stood against flight when it was signed. Each is answered by the
/// work, or by the part going out of service.
class ListedRulesTest : public QObject {
    Q_OBJECT
private slots:
    void whatStoodBesideTheWorkIsDoneFirst() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual);
        shop.adopt("fabric-strength"); // its test goes with the annual, and was not in the work
        QVERIFY(shop.sign(ListedShop::ines()));
        const auto refused = shop.approve(ListedShop::approving("2026-06-20"));
        QVERIFY(!refused);
        expectOnly(refused.error(), ReleaseFault::TestStands);
        shop.say(
            R"({"entry":"requirement.done","on":"2026-06-15","item":"E1","requirement":"fabric.strength-test","ref":"T 9","signatory":"Lee Farr","licence":"L 7"})");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
    }
    void whoeverTakesAwayWhatAskedForItAnswersNothing() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual);
        const auto bound = shop.say(strengthForTheBalloon).ids.at(0).text();
        QVERIFY(shop.sign(ListedShop::ines()));
        shop.say(R"({"entry":"item.removed","on":"2026-06-14","balloon":"QE-ONE","item":"E1"})");
        const auto unbound = shop.approve(ListedShop::approving("2026-06-20"));
        QVERIFY(!unbound);
        expectOnly(unbound.error(), ReleaseFault::ListedStands);
        shop.say(R"({"entry":"item.fitted","on":"2026-06-15","balloon":"QE-ONE","item":"E1"})");
        shop.say(voided(bound));
        const auto withdrawn = shop.approve(ListedShop::approving("2026-06-20"));
        QVERIFY(!withdrawn);
        expectOnly(withdrawn.error(), ReleaseFault::ListedStands);
        shop.say(
            R"({"entry":"requirement.done","on":"2026-06-17","item":"E1","requirement":"fabric.strength-test","ref":"T 9","signatory":"Lee Farr","licence":"L 7"})");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
    }
    void aFailingReadingWithoutItsDefectIsOnNoList() {
        // 02, "What a signature states", 3: a failing one has its defect.
        ListedShop shop;
        shop.open(Visit::UsAnnual).carriedOut().tellTale(110, 116);
        shop.pull(3);
        shop.pull(9, R"("value":100)");
        shop.find("D-1", "minor");
        expectOnly(shop.sign(ListedShop::ines()).error(), ReleaseFault::Fails);
    }
    void aListOfWhichALineIsTakenBackIsNotApproved() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual).find("D-1", "minor");
        const auto line = shop.now().lines.front().id.text();
        QVERIFY(shop.sign(ListedShop::ines()));
        shop.cleared("D-1", "2026-06-10");
        shop.say(opened(line));
        const auto refused = shop.approve(ListedShop::approving("2026-06-20"));
        QVERIFY(!refused);
        expectOnly(refused.error(), ReleaseFault::Unsupported);
    }
    void aListedDefectGoesWithTheScrappedPart() {
        ListedShop shop;
        shop.wholeAircraft().ready(Visit::UsAnnual).say(crackOfTheBasket(shop.about()));
        QVERIFY(shop.sign(ListedShop::ines()));
        expectOnly(shop.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::DefectStands);
        shop.say(basketIsScrapped);
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
    }
    void aPartThatWasReplacedIsPutOutOfService() {
        ListedShop shop;
        shop.wholeAircraft().adopt("fabric-strength");
        shop.say(basketWithALife);
        shop.ready(Visit::UsAnnual).pull(5);
        QVERIFY(shop.sign(ListedShop::ines()));
        shop.say(R"({"entry":"requirement.done","on":"2026-06-15","item":"E1","requirement":"fabric.strength-test"})");
        expectOnly(shop.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::ListedStands);
        shop.say(basketIsScrapped);
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
    }
};

CROWNRING_TEST(ListedRulesTest, QCoreApplication)

}

#include "listed_rules_test.moc"

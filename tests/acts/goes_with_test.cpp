// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A check of the crown ring with every inspection, of which the manual is invented.
const char* const ringWithEachInspection =
    R"({"entry":"programme.adopted","on":"2016-05-01","programme":"ring","items":["E1"],"document":{"programme":"ring","revision":"1","title":"T","source":"S","requirements":[{"id":"ring.check","title":"Crown ring","source":"M 7.3","kinds":["envelope"],"action":"inspect","limits":[{"with":["ml.inspection","us.annual"],"every":1}]}]}})";
const char* const ringWithEverySecond =
    R"({"entry":"programme.adopted","on":"2016-05-01","programme":"ring","items":["E1"],"document":{"programme":"ring","revision":"1","title":"T","source":"S","requirements":[{"id":"ring.check","title":"Crown ring","source":"M 7.3","kinds":["envelope"],"action":"inspect","limits":[{"with":["ml.inspection"],"every":2}]}]}})";
const char* const ringDone =
    R"({"entry":"requirement.done","on":"2026-05-20","item":"E1","requirement":"ring.check","ref":"T 1","signatory":"Ada Rhos","licence":"L 7"})";

const Work ring{ItemId("E1"), RequirementId("ring.check")};

bool isInWork(const Shop& shop) {
    const auto& work = shop.now().opened.body.work;
    return std::ranges::find(work, ring) != work.end();
}

}

/// "At every annual": due when that inspection is carried out, and not to be left out of it (issue 14, 8).
class GoesWithTest : public QObject {
    Q_OBJECT
private slots:
    void whatGoesWithAnInspectionIsInItsWorkUnasked() {
        Shop shop;
        shop.say(ringWithEachInspection);
        shop.open(Visit::PartMlInspection, {});
        QVERIFY(isInWork(shop));
        shop.carriedOut().measured();
        expectReleased(shop, Shop::signing());
        const auto all = shop.draft(Shop::signing()).accomplishments;
        QVERIFY(std::ranges::find(all, ring) != all.end());
    }
    void aClosingThatLeavesItOutIsRefused() {
        Shop shop;
        shop.ready(Visit::PartMlInspection); // opened before anybody knew
        shop.say(ringWithEachInspection);
        QVERIFY(!isInWork(shop));
        expectRefused(shop, Shop::signing(), "line-open", "M 7.3");
        QVERIFY(words::message(shop.draft(Shop::signing()).refusals.front()).contains("Crown ring"));
        QVERIFY(!problemsOf(shop.record(), shop.closing()).empty()); // nor does posting lead round it
    }
    void aListNamesWhatWasLeftOut() {
        Shop shop;
        shop.ready(Visit::UsAnnual);
        shop.say(ringWithEachInspection);
        auto ines = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        expectRefused(shop, ines, "excepted", "43.11(a)(4)");
        ines.outcome = Outcome::Discrepancies;
        expectReleased(shop, ines);
        QCOMPARE(shop.now().closed->body.excepted.front().requirement, ring.requirement);
    }
    void atEverySecondInspectionTheFirstGoesWithoutIt() {
        Shop shop;
        shop.say(ringDone);
        shop.say(ringWithEverySecond);
        shop.ready(Visit::PartMlInspection);
        QVERIFY(!isInWork(shop));
        expectReleased(shop, Shop::signing());
    }
};

CROWNRING_TEST(GoesWithTest, QCoreApplication)
#include "goes_with_test.moc"

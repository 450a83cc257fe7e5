// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace second_look_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string performed(const Shop& shop, const std::string& more) {
    return R"({"entry":"work.performed","on":"2026-06-01","by":"Ada Rhos","what":"new line to the vent","data":"Manual 77, 5-2","grade":"minor","item":"E1")" +
           more + shop.about() + "}";
}
std::string settled(const Shop& shop, const char* line, const char* by, const std::string& more) {
    return R"({"entry":"line.settled","on":"2026-06-01","line":)" + quoted(line) + R"(,"by":)" + quoted(by) + more +
           shop.about() + "}";
}
std::string lookedAt(const Shop& shop, const char* by) {
    return settled(shop, "work.controls", by, R"(,"state":"done","item":"E1")");
}

QString saidOfTheKit(const Shop& shop) {
    QStringList said;
    const auto answer = checkRigUp(shop.record(), shop.items, day("2026-06-03"), {}).value();
    for (const auto& reason : answer.verdict.reasons)
        if (reason.kind == RigUpReason::Kind::BeyondRelease)
            said << words::said(*reason.beyond);
    return said.join(u'\n');
}

bool isRefusedFor(const Shop& shop, const Signing& by, ReleaseFault fault) {
    return std::ranges::any_of(shop.draft(by).refusals, [&](const Refusal& refusal) {
        return refusal.fault == fault && isSaid(problemOf(refusal)) && !refusal.rule.empty();
    });
}

}

/// What a release of work says that it must not: a second look by who did the work, no material where some was used, a
/// list of discrepancies that no inspection gave.
class SecondLookTest : public QObject {
    Q_OBJECT
private slots:
    void whoDidTheWorkIsNotWhoLooksAtItIndependently() {
        // ML.A.402(b) (from memory): error-capturing after critical maintenance tasks.
        Shop shop;
        shop.open(Visit::PartMlRepair).carriedOut();
        const auto work = shop.say(performed(shop, "")).ids.front().text();
        shop.say(lookedAt(shop, "Ada Rhos"));
        QVERIFY(isRefusedFor(shop, Shop::signing(), ReleaseFault::NotIndependent));
        QVERIFY(!shop.sign(Shop::signing()));
        shop.say(lookedAt(shop, "Bo Lind"));
        QVERIFY(!isRefusedFor(shop, Shop::signing(), ReleaseFault::NotIndependent));
        // Who wrote it down may look at what another did.
        shop.say(lookedAt(shop, "Ada Rhos"));
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-01","by":"Ada Rhos","note":"who did it","replaces":)" +
                 quoted(work) + R"(,"with":{"performed_by":"Bo Lind"}})");
        expectReleased(shop, Shop::signing());
    }
    void materialThatWasUsedIsLookedAt() {
        // 14 CFR 43.13(b); ML.A.501 (from memory).
        Shop shop;
        shop.open(Visit::PartMlRepair).carriedOut({"work.parts"});
        const auto none = settled(shop, "work.parts", "Ada Rhos",
                                  R"(,"state":"not-applicable","why":"other","finding":"nothing used")");
        shop.say(performed(shop, R"(,"performed_by":"Bo Lind")") + "\n" + none);
        QVERIFY(!isRefusedFor(shop, Shop::signing(), ReleaseFault::MaterialNotPutDown));
        shop.say(
            R"({"entry":"repair.made","on":"2026-06-01","item":"E1","method":"patch","gore":2,"row":3,"lot":"L-7")" +
            shop.about() + "}");
        QVERIFY(isRefusedFor(shop, Shop::signing(), ReleaseFault::MaterialNotPutDown));
        shop.say(settled(shop, "work.parts", "Ada Rhos", R"(,"state":"done")"));
        expectReleased(shop, Shop::signing());
    }
    void onlyAnInspectionEndsWithAList() {
        // 14 CFR 43.11(b), read: the person performing an inspection finds discrepancies.
        for (const auto visit : {Visit::PartMlRepair, Visit::UsRectification, Visit::UsAnnual}) {
            Shop shop;
            shop.open(visit).carriedOut().find("D-1", "barring");
            shop.say(performed(shop, R"(,"performed_by":"Bo Lind")"));
            auto by = regimeOf(visit) == Regime::PartMl ? Shop::signing()
                                                        : Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
            by.outcome = Outcome::Discrepancies;
            QCOMPARE(isRefusedFor(shop, by, ReleaseFault::NoListOfWork), visit != Visit::UsAnnual);
            if (visit != Visit::UsAnnual)
                QVERIFY(!shop.sign(by));
        }
    }
    void whatStandsAlikeOnSeveralItemsIsSaidOnce() {
        const RequirementId annual("us.annual");
        const auto on = [&](const char* item, Standing standing = Standing::Lapsed) {
            return Excepted{ItemId(item), annual, "Annual inspection", {}, standing};
        };
        const auto texts = exceptedTexts({on("B1"), on("C1", Standing::Unproven), on("E1")});
        QCOMPARE(texts.size(), std::size_t{2});
        QCOMPARE(words::said(texts.front()), QStringLiteral("B1, E1: Annual inspection, lapsed"));
    }
    void workOfAVisitThatWasAbandonedIsReleasedByNobody() {
        // ML.A.801(a); 14 CFR 91.407(a)(1) (from memory): no flight between work and its release.
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRepair);
        shop.say(performed(shop, R"(,"performed_by":"Bo Lind")"));
        QVERIFY(saidOfTheKit(shop).contains("which is open: nobody has released that work"));
        auto abandoning = Shop::signing();
        abandoning.outcome = Outcome::Abandoned;
        QVERIFY(shop.sign(abandoning));
        QVERIFY2(saidOfTheKit(shop).contains("which was abandoned: nobody has released that work"),
                 qPrintable(saidOfTheKit(shop)));
        // Another visit looks at it and releases it.
        shop.open(Visit::PartMlRepair).carriedOut();
        shop.say(performed(shop, R"(,"performed_by":"Bo Lind")"));
        expectReleased(shop, Shop::signing());
        QVERIFY2(!saidOfTheKit(shop).contains("nobody has released"), qPrintable(saidOfTheKit(shop)));
    }
    void anUnfinishedRepairLiesOnWhatIsRepaired() {
        // ML.A.801(f) (from memory): the release certifies the work; who patches an envelope leaves no basket
        // unfinished.
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRepair);
        shop.say(performed(shop, R"(,"performed_by":"Bo Lind")"));
        const auto file = shop.draft(Shop::signing()).file; // its lines are those of the envelope by now
        for (const auto& work : workLines(file.inspection, file.items))
            if (!isFlown(work.line->id))
                shop.say(settled(shop, work.line->id.c_str(), "Ada Rhos",
                                 std::string(R"(,"state":"done")") + (work.item ? R"(,"item":"E1")" : "")));
        auto by = Shop::signing();
        by.outcome = Outcome::Incomplete;
        by.limitations = "one check flight";
        const auto signedNow = shop.sign(by);
        QVERIFY2(signedNow, signedNow ? "" : text(signedNow.error().front()).c_str());
        std::set<std::string> lies;
        const auto list = due(shop.record(), {std::nullopt, shop.items}, day("2026-06-03")).value();
        for (const auto& row : list.rows)
            if (row.requirement->id.text().starts_with("incomplete/"))
                lies.insert(row.item->id.text());
        QCOMPARE(lies, std::set<std::string>{"E1"});
    }
};

CROWNRING_TEST(SecondLookTest, QCoreApplication)

}

#include "second_look_test.moc"

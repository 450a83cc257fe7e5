// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "rules/due/headline.h"
#include "test_class.h"

namespace incomplete_release_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

Signing incomplete(const char* limitations = "one check flight, crew only") {
    auto by = Shop::signing();
    by.outcome = Outcome::Incomplete;
    by.limitations = limitations;
    return by;
}

/// A repair of which all is done but the check flight that its data ask for.
Shop& beforeTheCheckFlight(Shop& shop) {
    shop.open(Visit::PartMlRepair).carriedOut({"work.check-flight"});
    shop.say(
        R"({"entry":"work.performed","on":"2026-06-01","what":"vent line replaced","data":"Manual 77, 5-2","grade":"minor","item":)" +
        quoted("E1") + shop.about() + "}");
    return shop;
}

std::string aloft(const char* on) {
    return R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":20,"on":)" + quoted(on) + "}";
}
const std::string repairedAtNoon =
    R"({"entry":"repair.made","on":"2026-06-03","time":"12:00Z","item":"E1","method":"line spliced")";
std::string flownAt(const char* time) {
    return R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":20,"on":"2026-06-03","time":)" + quoted(time) + "}";
}
std::string saidToBeFlown(const Shop& shop, const char* on = "2026-06-03") {
    return R"({"entry":"line.settled","by":"Ada Rhos","state":"done","line":"work.check-flight","finding":"flown, nothing found","on":)" +
           quoted(std::string(on)) + shop.about() + "}";
}

std::string flown(const Shop& shop, const char* on = "2026-06-03") {
    return aloft(on) + "\n" + saidToBeFlown(shop, on);
}

const DueRow* rowOf(const DueList& list, const Shop& shop) {
    for (const auto& row : list.rows)
        if (row.requirement->id.text() == "incomplete/" + shop.inspection.text())
            return &row;
    return nullptr;
}

DueList dueOn(const Shop& shop, const char* on) {
    return due(shop.record(), {std::nullopt, shop.items}, day(on)).value();
}

/// Rig-up says no because of the release, or although it is a check flight.
bool groundedByIt(const Shop& shop, bool checkFlight, const std::vector<const char*>& kit = {"E1", "B1", "R1", "C1"}) {
    PlannedFlight flight;
    flight.checkFlight = checkFlight;
    std::vector<ItemId> items;
    for (const auto* each : kit)
        items.emplace_back(each);
    const auto answer = checkRigUp(shop.record(), items, day("2026-06-03"), flight).value();
    return std::ranges::any_of(answer.verdict.reasons, [&](const RigUpReason& reason) {
        return reason.row && reason.row->requirement->id.text() == "incomplete/" + shop.inspection.text();
    });
}

bool isRefusedFor(const Shop& shop, const Signing& by, ReleaseFault fault) {
    return std::ranges::any_of(shop.draft(by).refusals, [&](const Refusal& refusal) {
        return refusal.fault == fault && isSaid(problemOf(refusal));
    });
}

}

/// ML.A.801(f) (from memory; 145.A.50(e) and GM1 ML.A.301(f), read): maintenance that cannot be completed is released
/// within limitations, what was not done is named, and the balloon is grounded for all else until the closing release.
class IncompleteReleaseTest : public QObject {
    Q_OBJECT
private slots:
    void theCheckFlightBeforeTheClosingLine() {
        // F8 of the cases: who may release, and the words.
        Shop shop;
        beforeTheCheckFlight(shop);
        QCOMPARE(shop.refused(Shop::signing()), QStringList{"line-open"});
        const auto draft = shop.draft(incomplete());
        QVERIFY(draft.statement.text.find("except the maintenance that is listed as not completed") !=
                std::string::npos);
        QVERIFY(shop.sign(incomplete()));
        const auto now = shop.now();
        QVERIFY(now.isOpen() && now.incomplete);
        QCOMPARE(now.incomplete->body.outstanding.size(), std::size_t{1});
        QCOMPARE(now.incomplete->body.outstanding.front().line, std::string("work.check-flight"));
        // Grounded, and nothing is accomplished, until it is closed.
        const auto* row = rowOf(dueOn(shop, "2026-06-02"), shop);
        QVERIFY(row);
        const auto list = dueOn(shop, "2026-06-02");
        QCOMPARE(rowOf(list, shop)->state.standing, Standing::Lapsed);
        QVERIFY(isBinding(*rowOf(list, shop)));
        QVERIFY(!rowOf(dueOn(shop, "2026-06-01"), shop));
        shop.say(flown(shop));
        auto closing = Shop::signing();
        closing.on = day("2026-06-04");
        QVERIFY(shop.sign(closing));
        QVERIFY(rowOf(dueOn(shop, "2026-06-03"), shop));
        QVERIFY(!rowOf(dueOn(shop, "2026-06-04"), shop));
    }
    void onlyTheCheckFlightIsFlown() {
        // F8: "balloon grounded for all else until closed"; what the visit accomplishes once it is done bars it not.
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlInspection).carriedOut({"envelope.check-flight"}).measured();
        const auto mayFly = [&](bool checkFlight) {
            PlannedFlight flight;
            flight.checkFlight = checkFlight;
            return checkRigUp(shop.record(), shop.items, day("2026-06-03"), flight).value();
        };
        const auto isAnnual = [](const RigUpReason& reason) {
            return reason.row && reason.row->requirement->id == RequirementId("ml.inspection");
        };
        QVERIFY(std::ranges::any_of(mayFly(true).verdict.reasons, isAnnual)); // nothing was released yet
        auto by = incomplete();
        by.outstanding = {"envelope.check-flight"};
        QVERIFY(shop.sign(by));
        QVERIFY(!mayFly(false).verdict.mayFly);
        const auto check = mayFly(true);
        QVERIFY(std::ranges::none_of(check.verdict.reasons, isAnnual));
        QCOMPARE(check.limitations, std::vector<std::string>{"one check flight, crew only"});
        for (const auto& reason : check.verdict.reasons) // what the visit does not answer bars it as before
            QVERIFY(reason.row && reason.row->requirement->id != RequirementId("incomplete/" + shop.inspection.text()));
        shop.find("D-1", "grounding");
        QVERIFY(!mayFly(true).verdict.mayFly);
    }
    void whatDoesNotWaitOnAFlightIsCoveredByNone() {
        // A leak test that was not made is no matter of a check flight.
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRepair).carriedOut({"work.check-flight", "work.burn"});
        shop.say(R"({"entry":"work.performed","on":"2026-06-01","what":"x","data":"y","grade":"minor","item":)" +
                 quoted("R1") + shop.about() + "}");
        QVERIFY(shop.sign(incomplete()));
        QVERIFY(groundedByIt(shop, true));
        PlannedFlight flight;
        flight.checkFlight = true;
        const auto answer = checkRigUp(shop.record(), shop.items, day("2026-06-03"), flight).value();
        QVERIFY(std::ranges::any_of(answer.verdict.reasons, [](const RigUpReason& reason) { // and why
            return reason.beyond && words::said(*reason.beyond).contains("besides the flight it leaves open ");
        }));
    }
    void norWhatCameAfterIt() {
        Shop shop;
        shop.wholeAircraft();
        beforeTheCheckFlight(shop);
        QVERIFY(shop.sign(incomplete()));
        QVERIFY(groundedByIt(shop, false) && !groundedByIt(shop, true));
        // Another kit is another balloon.
        shop.say(R"({"entry":"item.entered","on":"2020-01-01","item":"C9","kind":"cylinder"})");
        QVERIFY(groundedByIt(shop, true, {"E1", "B1", "R1", "C9"}));
        // The ground of the release goes.
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"open","line":"work.item","item":)" +
            quoted("E1") + shop.about() + "}");
        QVERIFY(groundedByIt(shop, true));
    }
    void itStandsWhateverDayAnotherEndIsDated() {
        Shop shop;
        beforeTheCheckFlight(shop);
        const auto opened = shop.now().opened.id.text();
        QVERIFY(shop.sign(incomplete()));
        for (const char* on : {"2026-06-01", "2026-06-02", "2026-06-05"})
            QVERIFY(!problemsOf(shop.record(), R"({"entry":"inspection.closed","outcome":"abandoned","by":"x","on":)" +
                                                   quoted(on) + shop.about() + "}")
                         .empty());
        QVERIFY(!problemsOf(shop.record(),
                            R"({"entry":"entry.voided","on":"2026-06-03","reason":"x","voids":)" + quoted(opened) + "}")
                     .empty());
        QVERIFY(
            !problemsOf(
                 shop.record(),
                 R"({"entry":"entry.corrected","on":"2026-06-03","by":"x","note":"y","with":{"items":["E1"],"visit":"us-repair"},"replaces":)" +
                     quoted(opened) + "}")
                 .empty());
    }
    void whatWasLeftOutstandingIsDoneAndNotWavedThrough() {
        Shop shop;
        beforeTheCheckFlight(shop);
        QVERIFY(shop.sign(incomplete()));
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-03","by":"Ada Rhos","state":"not-applicable","why":"not-fitted","line":)" +
            quoted("work.check-flight") + shop.about() + "}");
        auto closing = Shop::signing();
        closing.on = day("2026-06-04");
        QCOMPARE(shop.refused(closing), QStringList{"line-open"});
    }
    void nothingIsOutstanding() {
        Shop shop;
        beforeTheCheckFlight(shop).say(flown(shop, "2026-06-01"));
        QVERIFY(isRefusedFor(shop, incomplete(), ReleaseFault::NothingOutstanding));
        QVERIFY(!shop.sign(incomplete()));
    }
    void noLimitationIsNamed() {
        Shop shop;
        beforeTheCheckFlight(shop);
        QVERIFY(isRefusedFor(shop, incomplete(" "), ReleaseFault::NoLimitation));
        QVERIFY(!shop.sign(incomplete("")));
    }
    void aDefectThatBarsFlightBarsTheCheckFlightToo() {
        // ML.A.801(g) (from memory).
        Shop shop;
        beforeTheCheckFlight(shop).find("D-1", "grounding");
        QCOMPARE(shop.refused(incomplete()), QStringList{"defect"});
        QVERIFY(!shop.sign(incomplete()));
    }
    void anOptionalLineThatIsAskedForIsOutstandingToo() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).settle("envelope.check-flight", "open");
        QVERIFY(isRefusedFor(shop, incomplete(), ReleaseFault::NothingOutstanding));
        auto by = incomplete();
        by.outstanding = {"envelope.check-flight"};
        QVERIFY(shop.sign(by));
        // Then it is no longer optional.
        QCOMPARE(shop.refused(Shop::signing()), QStringList{"line-open"});
        shop.settle("envelope.check-flight");
        shop.say(aloft("2026-06-02"));
        QCOMPARE(shop.refused(Shop::signing()), QStringList{"line-open"}); // put down before it was flown
        shop.say(aloft("2026-06-01"));
        expectReleased(shop, Shop::signing());
    }
    /// 14 CFR 91.407(b); ML.A.801(f) (from memory): what is said to be flown was.
    void aCheckFlightThatNobodyFlewIsNoneThatIsDone() {
        for (const auto* flight : {"", "2026-05-31", "2026-06-05"}) {
            Shop shop;
            beforeTheCheckFlight(shop).say(saidToBeFlown(shop));
            if (*flight)
                shop.say(aloft(flight));
            auto closing = Shop::signing();
            closing.on = day("2026-06-04");
            const auto refused = shop.sign(closing);
            QVERIFY(!refused);
            QCOMPARE(refused.error().front().fault, Fault(ReleaseFault::NotFlown));
            QVERIFY2(isSaid(refused.error().front()), qPrintable(words::line(refused.error().front())));
            shop.say(aloft("2026-06-03"));
            QVERIFY(shop.sign(closing));
        }
    }
    void norOneBeforeTheWorkWasDone() {
        Shop shop;
        beforeTheCheckFlight(shop).say(saidToBeFlown(shop));
        shop.say(repairedAtNoon + shop.about() + "}");
        auto closing = Shop::signing();
        closing.on = day("2026-06-04");
        shop.say(flownAt("09:00Z"));
        QVERIFY(!shop.sign(closing));
        shop.say(flownAt("16:00Z"));
        QVERIFY(shop.sign(closing));
    }
    void whatWasSignedIsNeitherVoidedNorAltered() {
        Shop shop;
        beforeTheCheckFlight(shop);
        const auto id = shop.sign(incomplete()).value().ids.at(0).text();
        QVERIFY(!problemsOf(shop.record(),
                            R"({"entry":"entry.voided","on":"2026-06-03","by":"Ada Rhos","reason":"away","voids":)" +
                                quoted(id) + "}")
                     .empty());
        QVERIFY(
            !problemsOf(
                 shop.record(),
                 R"({"entry":"entry.corrected","on":"2026-06-03","by":"Ada Rhos","note":"more","with":{"limitations":"none"},"replaces":)" +
                     quoted(id) + "}")
                 .empty());
    }
    void itIsNotAbandonedAfterwards() {
        Shop shop;
        beforeTheCheckFlight(shop);
        QVERIFY(shop.sign(incomplete()));
        auto abandoning = Shop::signing();
        abandoning.outcome = Outcome::Abandoned;
        QVERIFY(!shop.sign(abandoning));
        QVERIFY(rowOf(dueOn(shop, "2026-06-05"), shop));
    }
    void underTheRulesOfTheUnitedStatesThereIsNone() {
        Shop shop;
        shop.open(Visit::UsRepair).carriedOut({"work.check-flight"});
        shop.say(R"({"entry":"work.performed","on":"2026-06-01","what":"x","data":"y","grade":"minor","item":)" +
                 quoted("E1") + shop.about() + "}");
        auto by = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        by.outcome = Outcome::Incomplete;
        by.limitations = "a check flight";
        QCOMPARE(shop.refused(by), QStringList{"signatory"});
    }
    void aPostedOneSaysWhatTheRecordComposes() {
        Shop shop;
        beforeTheCheckFlight(shop);
        const auto by = incomplete();
        auto composed = composedIncomplete(shop.record(), shop.record(), shop.draft(by).file, by).value();
        composed.seal.reset();
        const auto entryOf = [&](const ReleaseIncomplete& body) {
            Entry entry;
            entry.on = by.on;
            entry.body = body;
            return canonicalText(entry);
        };
        auto other = composed;
        other.statement += " And airworthy.";
        QVERIFY(!problemsOf(shop.record(), entryOf(other)).empty());
        other = composed;
        other.outstanding.front().title = "a formality";
        QVERIFY(!problemsOf(shop.record(), entryOf(other)).empty());
        other = composed;
        other.covers.push_back({ItemId("E1"), RequirementId("ml.inspection")});
        QVERIFY(!problemsOf(shop.record(), entryOf(other)).empty());
        QVERIFY(problemsOf(shop.record(), entryOf(composed)).empty());
    }
    void inAnotherOrderOfArrivalItGroundsTheSameDays() {
        Shop shop;
        beforeTheCheckFlight(shop);
        QVERIFY(shop.sign(incomplete()));
        shop.say(flown(shop, "2026-06-03"));
        auto closing = Shop::signing();
        closing.on = day("2026-06-04");
        QVERIFY(shop.sign(closing));
        QVERIFY(shop.record().rebuild());
        for (const auto& [on, grounded] : std::vector<std::pair<const char*, bool>>{
                 {"2026-06-01", false}, {"2026-06-02", true}, {"2026-06-03", true}, {"2026-06-04", false}})
            QCOMPARE(rowOf(dueOn(shop, on), shop) != nullptr, grounded);
        QVERIFY(shop.record().verify().value().intact);
    }
};

CROWNRING_TEST(IncompleteReleaseTest, QCoreApplication)

}

#include "incomplete_release_test.moc"

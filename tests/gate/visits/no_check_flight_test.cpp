// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "answers/supported.h"
#include "answers/visit/check_flights.h"
#include "gate/signing_attempt.h"
#include "test_class.h"

namespace no_check_flight_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

Signing incomplete() {
    auto by = Shop::signing();
    by.outcome = Outcome::Incomplete;
    by.limitations = "one check flight, crew only";
    return by;
}

std::string described(const Shop& shop, const char* item) {
    return R"({"entry":"work.performed","on":"2026-06-01","what":"vent line replaced","data":"Manual 77, 5-2","grade":"minor","item":)" +
           quoted(item) + shop.about() + "}";
}

/// A repair of the whole aircraft of which all is done but some lines.
void repairedBut(Shop& shop, const std::set<std::string>& lines) {
    shop.wholeAircraft().open(Visit::PartMlRepair).carriedOut(lines);
    shop.say(described(shop, "R1"));
}

QStringList saidOf(const std::vector<Argument>& bars) {
    QStringList said;
    for (const auto& each : bars) {
        said << words::said(each);
        QTEST_ASSERT(!said.back().isEmpty());
    }
    return said;
}

bool mayFlyTheCheckFlight(const Shop& shop) {
    PlannedFlight flight;
    flight.checkFlight = true;
    return checkRigUp(shop.record(), shop.items, day("2026-06-03"), flight).value().verdict.mayFly;
}

}

/// ML.A.801(f) (from memory): a release after incomplete maintenance lets a check flight be flown, and says before it
/// is signed where it lets none.
class NoCheckFlightTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsLeftOpenBesideTheFlightIsSaidBeforeTheSignature() {
        Shop shop;
        repairedBut(shop, {"work.check-flight", "work.burn"});
        const auto draft = shop.draft(incomplete());
        QVERIFY(draft.refusals.empty()); // it may be signed all the same
        QVERIFY(
            saidOf(draft.noCheckFlight).front().contains("besides the flight it leaves open Function of the burner"));
        QVERIFY(shop.sign(incomplete()));
        QVERIFY(!mayFlyTheCheckFlight(shop));
    }
    void whatStandsBesideTheWorkIsSaidToo() {
        Shop shop;
        repairedBut(shop, {"work.check-flight"});
        const auto draft = shop.draft(incomplete());
        QCOMPARE(draft.noCheckFlight.size(), draft.file.excepted.size());
        QVERIFY(!draft.noCheckFlight.empty()); // inspections that nothing proves
        QVERIFY(shop.sign(incomplete()));
        QVERIFY(!mayFlyTheCheckFlight(shop));
    }
    void whereNothingOfThatStandsTheFlightRestsOnIt() {
        Shop shop;
        repairedBut(shop, {"work.check-flight"});
        auto file = shop.draft(incomplete()).file;
        file.excepted.clear();
        QVERIFY(barsOfCheckFlight(file, incomplete()).empty());
    }
    void whatTheVisitAccomplishesOnceFlownBarsItNot() {
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlInspection).carriedOut({"envelope.check-flight"}).measured();
        auto by = incomplete();
        by.outstanding = {"envelope.check-flight"};
        for (const auto& each : saidOf(shop.draft(by).noCheckFlight))
            QVERIFY2(!each.contains("Annual") && !each.contains("leaves open"), qPrintable(each));
    }
    void anEndThatIsPastIsNone() {
        Shop shop;
        repairedBut(shop, {"work.check-flight"});
        auto file = shop.draft(incomplete()).file;
        file.excepted.clear();
        auto by = incomplete();
        by.within.until = day("2026-06-01"); // signed on the day after
        QVERIFY(saidOf(barsOfCheckFlight(file, by)).front().contains("lets it fly until 2026-06-01"));
        by.within.until = by.on;
        QVERIFY(barsOfCheckFlight(file, by).empty());
    }
    void ofNoOtherSignatureAnythingIsSaid() {
        Shop shop;
        repairedBut(shop, {"work.check-flight", "work.burn"});
        QVERIFY(shop.draft(Shop::signing()).noCheckFlight.empty());
    }
    /// 14 CFR 91.407(b); ML.A.801(f) (from memory): what the gate refuses stands in the way before, and leads to its
    /// line.
    void aCheckFlightIsFreeWithWhatWasWorkedOnAndBeforeItIsPutDown() {
        const auto refusedAfter = [](const std::string& flight, const char* settled = "2026-06-02") {
            Shop shop;
            repairedBut(shop, {});
            shop.say(R"({"entry":"item.entered","on":"2016-05-01","item":"R9","kind":"burner"})");
            shop.say(R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":20,"on":)" +
                     quoted(flight.substr(0, 10)) + flight.substr(10) + "}");
            shop.say(R"({"entry":"line.settled","by":"Ada Rhos","state":"done","line":"work.check-flight","on":)" +
                     quoted(settled) + shop.about() + "}");
            return !shop.draft(Shop::signing()).refusals.empty();
        };
        QVERIFY(!refusedAfter("2026-06-02"));
        QVERIFY(refusedAfter(R"(2026-06-02,"tethered":true)"));
        QVERIFY(refusedAfter(R"(2026-06-02,"kit":["E1","B1","R9","C1"])")); // R1 was worked on
        QVERIFY(!refusedAfter(R"(2026-06-02,"kit":["E1","B1","R1","C1"])"));
        QVERIFY(refusedAfter("2026-05-31")); // before the work
        QVERIFY(refusedAfter("2026-06-02", "2026-06-01"));
        QVERIFY(refusedAfter(R"(2026-06-02,"time":"20:00Z")", R"(2026-06-02","time":"19:00Z)"));
    }
    /// Supported is asked (DEVELOPERS.md): of what the signature rested on, as everything it did.
    void aFlightThatIsTakenBackLeavesItsReleaseUnsupported() {
        const std::string flight =
            R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":20,"on":"2026-06-02","id":"f","by":"Ada Rhos"})";
        for (const char* amended :
             {R"({"entry":"entry.voided","on":"2026-06-05","voids":"f","reason":"not flown","by":"Ada Rhos"})",
              R"({"entry":"entry.corrected","on":"2026-06-05","replaces":"f","with":{"tethered":true}})",
              R"({"entry":"entry.corrected","on":"2026-06-05","replaces":"f","with":{"on":"2026-05-20"}})"}) {
            Shop shop;
            repairedBut(shop, {});
            shop.say(flight);
            shop.say(
                R"({"entry":"line.settled","on":"2026-06-02","by":"Ada Rhos","state":"done","line":"work.check-flight")" +
                shop.about() + "}");
            expectReleased(shop, Shop::signing());
            const auto unsupported = [&] {
                return unsupportedReleases(shop.record(), std::nullopt, day("2026-06-10"), 9).value().size();
            };
            QCOMPARE(unsupported(), std::size_t{0});
            shop.say(amended);
            QCOMPARE(unsupported(), std::size_t{1});
        }
    }
    void aTickedCheckFlightStandsInTheWay() {
        Shop shop;
        repairedBut(shop, {});
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-02","by":"Ada Rhos","state":"done","line":"work.check-flight")" +
            shop.about() + "}");
        const auto refusals = shop.draft(Shop::signing()).refusals;
        QCOMPARE(refusals.size(), std::size_t{1});
        QCOMPARE(refusals.front().fault, ReleaseFault::NotFlown);
        QCOMPARE(refusals.front().line, std::string("work.check-flight"));
        QVERIFY(!shop.sign(Shop::signing()));
        shop.say(R"({"entry":"flight.logged","balloon":"QE-ONE","minutes":20,"on":"2026-06-02"})");
        expectReleased(shop, Shop::signing());
    }
};

CROWNRING_TEST(NoCheckFlightTest, QCoreApplication)

}

#include "no_check_flight_test.moc"

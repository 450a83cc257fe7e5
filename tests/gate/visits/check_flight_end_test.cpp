// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "gate/signing_attempt.h"
#include "test_class.h"

namespace check_flight_end_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

/// A whole balloon whose repair waits for a check flight, released on 2026-06-02 for that.
struct Released {
    Shop shop;

    explicit Released(const FlownWithin& within) {
        shop.wholeAircraft().open(Visit::PartMlRepair).carriedOut({"work.check-flight"});
        for (const char* item : {"E1", "B1", "R1", "C1"})
            shop.say(R"({"entry":"work.performed","on":"2026-06-01","what":"x","data":"y","grade":"minor","item":)" +
                     quoted(std::string(item)) + shop.about() + "}");
        auto by = Shop::signing();
        by.outcome = Outcome::Incomplete;
        by.limitations = "a check flight, crew only";
        by.within = within;
        if (const auto answer = shop.sign(by); !answer)
            throw std::runtime_error(text(answer.error().front()));
    }
    void fly(const char* on, int minutes, const std::string& more = "") {
        shop.say(R"({"entry":"flight.logged","balloon":"QE-ONE","on":)" + quoted(std::string(on)) + R"(,"minutes":)" +
                 std::to_string(minutes) + more + "}");
    }
    /// Why the release does not let it fly; empty where it does.
    [[nodiscard]] std::string beyond(const char* on, int minutes = 0) const {
        PlannedFlight flight;
        flight.checkFlight = true;
        flight.use.minutes = Minutes(minutes);
        const auto answer = checkRigUp(shop.record(), shop.items, day(on), flight).value();
        for (const auto& reason : answer.verdict.reasons)
            if (reason.kind == RigUpReason::Kind::BeyondRelease)
                return answer.verdict.mayFly || !reason.item ? "may fly" : spoken(*reason.beyond);
        return {};
    }
};

bool says(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

}

/// The limitation of a release after incomplete maintenance is kept (ML.A.801(f), from memory; 145.A.50(e) and
/// GM1 ML.A.301(f), read): what it states of days, hours and flights is held against what is flown.
class CheckFlightEndTest : public QObject {
    Q_OBJECT
private slots:
    void untilItsLastDay() {
        const Released released({.until = day("2026-06-10"), .minutes = {}, .flights = {}});
        QCOMPARE(released.beyond("2026-06-10"), std::string());
        QVERIFY(says(released.beyond("2026-06-11"), "2026"));
    }
    void noLongerThanItStates() {
        Released released({.until = {}, .minutes = Minutes(60), .flights = {}});
        QCOMPARE(released.beyond("2026-06-03", 60), std::string());
        QVERIFY(says(released.beyond("2026-06-03", 61), "1:00"));
        released.fly("2026-06-01", 500); // before it was released
        QCOMPARE(released.beyond("2026-06-03", 60), std::string());
        released.fly("2026-06-03", 20);
        QCOMPARE(released.beyond("2026-06-04", 40), std::string());
        QVERIFY(says(released.beyond("2026-06-04", 41), "0:20"));
        QCOMPARE(released.beyond("2026-06-04"), std::string());
        released.fly("2026-06-04", 40, R"(,"kit":["E1","B1","R1","C1"])");
        QVERIFY(!released.beyond("2026-06-05").empty()); // of whatever length
    }
    void noMoreFlightsThanItStates() {
        Released released({.until = {}, .minutes = {}, .flights = 1});
        QCOMPARE(released.beyond("2026-06-03", 300), std::string());
        released.fly("2026-06-03", 20);
        QVERIFY(says(released.beyond("2026-06-03", 1), "1"));
    }
    void oneThatStatesNothingBoundsNothing() {
        Released released({});
        released.fly("2026-06-03", 600);
        QCOMPARE(released.beyond("2027-06-03", 600), std::string());
    }
    void whatItStatesIsNotCorrected() {
        Released released({.until = day("2026-06-10"), .minutes = Minutes(60), .flights = 1});
        const auto id = released.shop.now().incomplete->id.text();
        for (const auto* with : {R"({"until":"2026-12-31"})", R"({"minutes":null})", R"({"flights":9})"})
            QVERIFY(!problemsOf(
                         released.shop.record(),
                         R"({"entry":"entry.corrected","on":"2026-06-03","by":"Ada Rhos","note":"more","replaces":)" +
                             quoted(id) + R"(,"with":)" + with + "}")
                         .empty());
    }
};

CROWNRING_TEST(CheckFlightEndTest, QCoreApplication)

}

#include "check_flight_end_test.moc"

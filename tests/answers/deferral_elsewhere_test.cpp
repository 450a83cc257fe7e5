// SPDX-License-Identifier: GPL-3.0-or-later

/// A deferral is for a balloon and what that is flown for (cases F2, F3; ML.A.403(b), paragraph from memory, its AMC
/// and GM read).

#include "acts/shop.h"
#include "answers/check_rig_up.h"
#include "rules/due/defects.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace deferral_elsewhere_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

const std::string passengers =
    R"({"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-PAX","operations":["for-hire"]}
{"entry":"item.entered","on":"2016-05-01","item":"E2","kind":"envelope"}
{"entry":"item.fitted","on":"2016-05-01","balloon":"QE-PAX","item":"E2"})";
const std::string others =
    R"({"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2016-05-01","item":"E3","kind":"envelope"}
{"entry":"item.fitted","on":"2016-05-01","balloon":"QE-TWO","item":"E3"})";
const std::string pilotLight =
    R"({"entry":"defect.found","on":"2026-06-01","item":"R1","what":"second pilot light out","defect":"D-1","severity":"deferrable"})";

std::string agreedBy(const std::string& person, const std::string& more = "") {
    return R"({"entry":"defect.deferred","on":"2026-06-01","item":"R1","reason":"part ordered","until":"2026-12-31","defect":"D-1","agreed_by":)" +
           quoted(person) + more + "}";
}
const std::string moved = R"({"entry":"item.fitted","on":"2026-06-05","balloon":"QE-PAX","item":"R1"})";

Assessment stateOn(const Shop& shop, const char* on) {
    const auto list = due(shop.record(), {std::nullopt, {ItemId("R1")}}, day(on)).value();
    for (const auto& row : list.rows)
        if (defectOf(row.requirement->id))
            return row.state;
    return {};
}

/// What stands against a kit with the burner because of the defect: nothing, or why in words.
std::string against(const Shop& shop, const char* envelope) {
    const auto answer = checkRigUp(shop.record(), {ItemId(envelope), ItemId("R1")}, day("2026-06-10"), {}).value();
    for (const auto& reason : answer.verdict.reasons)
        if (reason.row && defectOf(reason.row->requirement->id))
            return spoken(reason.row->requirement->source);
    return {};
}

}

class DeferralElsewhereTest : public QObject {
    Q_OBJECT
private slots:
    void aPilotsDeferralDoesNotGoAlongToPassengers() {
        Shop shop;
        shop.wholeAircraft().say(passengers);
        shop.say(pilotLight);
        shop.say(agreedBy("Ole Berg"));
        QCOMPARE(stateOn(shop, "2026-06-04").because, Because::Deferred);
        QCOMPARE(against(shop, "E1"), std::string());
        QVERIFY(against(shop, "E2").find("Ole Berg") != std::string::npos ||
                against(shop, "E2").find("hire") != std::string::npos); // as it would fly, wherever it is fitted
        shop.say(moved);
        const auto state = stateOn(shop, "2026-06-06");
        QCOMPARE(state.standing, Standing::Lapsed);
        QCOMPARE(state.because, Because::DeferredElsewhere);
        QCOMPARE(stateOn(shop, "2026-06-04").because, Because::Deferred);
        shop.say(agreedBy("Ada Rhos")); // F3: certifying staff may
        QCOMPARE(stateOn(shop, "2026-06-06").because, Because::Deferred);
        QCOMPARE(against(shop, "E2"), std::string());
    }
    void norToABalloonThatIsNotHis() {
        Shop shop;
        shop.wholeAircraft().say(others);
        shop.say(pilotLight);
        shop.say(agreedBy("Ole Berg"));
        QVERIFY(!against(shop, "E3").empty());
    }
    void equipmentThatIsNotRequiredAnywhereGoesAlong() {
        // F1: nothing that the operation requires.
        Shop shop;
        shop.wholeAircraft().say(passengers);
        shop.say(
            R"({"entry":"person.entitled","on":"2020-01-01","person":"Ole Berg","capacity":"pilot-owner","licence":"BPL 4","balloons":["QE-PAX"]})");
        shop.say(pilotLight);
        shop.say(agreedBy("Ole Berg", R"(,"not_required":true)"));
        QCOMPARE(against(shop, "E2"), std::string());
    }
    void aBalloonThatWasRenamedIsTheSame() {
        Shop shop;
        shop.wholeAircraft().say(pilotLight);
        shop.say(agreedBy("Ole Berg"));
        shop.say(R"({"entry":"balloon.entered","on":"2026-06-03","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2026-06-03","balloon":"QE-ONE","to":"QE-NEW"})");
        QCOMPARE(stateOn(shop, "2026-06-06").because, Because::Deferred);
    }
    void whoWasNeverEntitledPutNothingOff() {
        Shop shop;
        shop.wholeAircraft().say(pilotLight);
        const auto id =
            shop.say(
                    R"({"entry":"person.entitled","on":"2020-01-01","person":"Vic Hale","capacity":"independent-certifying-staff","licence":"QE.66.9"})")
                .ids.at(0);
        shop.say(agreedBy("Vic Hale"));
        QCOMPARE(stateOn(shop, "2026-06-06").because, Because::Deferred);
        shop.say(R"({"entry":"entry.voided","on":"2026-06-05","reason":"never held one","voids":)" + quoted(id.text()) +
                 "}");
        QCOMPARE(stateOn(shop, "2026-06-06").standing, Standing::Lapsed);
    }
};

CROWNRING_TEST(DeferralElsewhereTest, QCoreApplication)

}

#include "deferral_elsewhere_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "signing_attempt.h"
#include "test_class.h"

#include <nlohmann/json.hpp>

namespace scope_gate_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

using Json = nlohmann::json;

const char* const basketIsScrapped = R"({"entry":"item.state","on":"2026-05-20","item":"B1","state":"scrapped"})";
const char* const basketIsCondemned =
    R"({"entry":"item.removed","on":"2026-05-20","balloon":"QE-ONE","item":"B1"}
{"entry":"item.state","on":"2026-05-20","item":"B1","state":"condemned"})";
const char* const basketIsOnAnother = R"({"entry":"balloon.entered","on":"2026-05-20","balloon":"QE-TWO"}
{"entry":"item.removed","on":"2026-05-20","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2026-05-20","balloon":"QE-TWO","item":"B1"})";

Json common(const Shop& shop, const char* kind, const char* on) {
    return {{"entry", kind}, {"on", on}, {"by", "Ada Rhos"}, {"inspection", shop.inspection.text()}};
}

std::string tellTale(const Shop& shop, const char* tester, const char* time = nullptr) {
    auto json = common(shop, "reading.taken", "2026-06-02");
    json.update({{"item", "E1"}, {"quantity", "tell-tale"}, {"unit", "degC"}, {"value", 112}, {"below", 116}});
    json["tester"] = tester;
    if (time)
        json["time"] = time;
    return json.dump();
}

/// Of the opening.
std::string corrected(const Shop& shop, const Json& with) {
    return Json{{"entry", "entry.corrected"}, {"on", "2026-06-01"}, {"by", "Ada Rhos"},
                {"note", "as it is"},         {"with", with},       {"replaces", shop.now().opened.id.text()}}
        .dump();
}

std::string withoutTheBasket(const Shop& shop) {
    auto work = Json::array();
    for (const auto& each : shop.now().opened.body.work)
        if (each.item != ItemId("B1"))
            work.push_back({{"item", each.item.text()}, {"requirement", each.requirement.text()}});
    return corrected(shop, {{"work", work}});
}

std::string cutChecklist(const Shop& shop) {
    auto checklist = Json::parse(shop.now().opened.body.checklist);
    auto& lines = checklist["lines"];
    lines.erase(lines.begin() + 2, lines.begin() + 4);
    return corrected(shop, {{"checklist", checklist}});
}

/// The checklist by which inspections were opened before 2026-11. @param lines left out of it
std::string formerChecklist(const Shop& shop, int lines) {
    for (const auto& text : formerChecklists())
        if (auto checklist = Json::parse(text); checklist["checklist"] == "hot-air-inspection") {
            auto& all = checklist["lines"];
            all.erase(all.begin() + 1, all.begin() + 1 + lines);
            return corrected(shop, {{"checklist", checklist}});
        }
    return {};
}

}

/// What is certified was there, and was inspected as the words say: 14 CFR 43.11(a)(4), (a)(5), read; ML.A.801(a), from
/// memory.
class ScopeGateTest : public QObject {
    Q_OBJECT
private slots:
    void whatWasScrappedIsNotCertified() {
        Shop shop;
        shop.wholeAircraft().ready(Visit::PartMlInspection).say(basketIsScrapped);
        expectRefused(shop, Shop::signing(), "scope", "ML.A.801(a)");
    }
    void whatIsCondemnedIsNotCertified() {
        Shop shop;
        shop.wholeAircraft().ready(Visit::PartMlInspection).say(basketIsCondemned);
        expectRefused(shop, Shop::signing(), "scope", "ML.A.801(a)");
    }
    void whatFliesElsewhereIsNotCertified() {
        Shop shop;
        shop.wholeAircraft().ready(Visit::PartMlInspection).say(basketIsOnAnother);
        expectRefused(shop, Shop::signing(), "scope", "ML.A.801(a)");
    }
    void aPlaceThatTheTypeHasNot() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).pull(500); // the type has 24 gores
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77");
    }
    void anInstrumentOfWhichTheCalibrationEnded() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).say(tellTale(shop, "F-2")); // until 2026-05-31
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
    }
    void whatIsCertifiedAsInspectedIsInTheWork() {
        Shop shop;
        shop.wholeAircraft().open(Visit::UsAnnual).say(withoutTheBasket(shop));
        shop.carriedOut().measured();
        auto list = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        list.outcome = Outcome::Discrepancies; // of a release it is excepted, too
        expectRefused(shop, list, "scope", "14 CFR 43.11");
    }
    void aChecklistIsNotCutUnderItsName() {
        Shop shop;
        shop.open(Visit::PartMlInspection).say(cutChecklist(shop));
        shop.carriedOut().measured();
        expectRefused(shop, Shop::signing(), "scope", "ML.A.801(a)");
    }
    /// An inspection that was opened by a former revision is signed by that, whole.
    void norUnderThatOfAFormerRevision() {
        for (const int lines : {0, 2}) {
            Shop shop;
            shop.open(Visit::PartMlInspection).say(formerChecklist(shop, lines));
            QCOMPARE(shop.now().checklist.revision, std::string("2026-10-01"));
            shop.carriedOut().measured();
            if (lines == 0)
                expectReleased(shop, Shop::signing());
            else
                expectRefused(shop, Shop::signing(), "scope", "ML.A.801(a)");
        }
    }
    void nobodySignsBeforeTheLastWord() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).say(tellTale(shop, "F-1", "20:00Z"));
        const auto untimed = problemsOf(shop.record(), shop.closing());
        QCOMPARE(untimed.size(), std::size_t{1});
        QCOMPARE(untimed.front().fault, Fault(ReleaseFault::SaidAfter));
        QVERIFY2(isSaid(untimed.front()), qPrintable(words::line(untimed.front())));
        auto timed = shop.closing();
        timed.insert(timed.size() - 1, R"(,"time":"21:00Z")");
        QVERIFY(problemsOf(shop.record(), timed).empty());
    }
};

CROWNRING_TEST(ScopeGateTest, QCoreApplication)

}

#include "scope_gate_test.moc"

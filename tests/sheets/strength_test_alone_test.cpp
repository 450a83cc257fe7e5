// SPDX-License-Identifier: GPL-3.0-or-later

/// A strength test that is carried out alone: it asks for pulls, and for nothing that its work does not ask for. The
/// test is that of an example programme, assets/programmes/fabric-strength.json.

#include "acts/shop.h"
#include "bench/release/asked_series.h"
#include "gate/signing_attempt.h"
#include "paper/document_text.h"
#include "sheets/sheets.h"
#include "test_class.h"

namespace strength_test_alone_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const RequirementId strengthTest("fabric.strength-test");

/// A shop whose manual has limits for both.
struct Tested : Shop {
    Tested() {
        say(R"({"entry":"limit.stated","on":"2016-05-01","type":"T-77","kind":"envelope","quantity":"air-permeability","unit":"mm/s","most":60,"pressure_pa":125,"area_cm2":20,"places":12,"source":"Manual 77, 6.4"})");
        adopt("part-ml-hot-air");
        adopt("fabric-strength");
    }
    void opened(Visit visit, bool loose) {
        Opening opening;
        opening.visit = visit;
        if (!loose)
            opening.balloon = Registration("QE-ONE");
        opening.items = items;
        opening.work = {{items.front(), strengthTest}};
        opening.on = day("2026-06-01");
        opening.by = "Ada Rhos";
        inspection = openInspection(record(), record(), opening).value();
    }
    [[nodiscard]] std::set<std::string> quantities() const {
        std::set<std::string> asked;
        for (const auto& each : askedSeries(draft(signing()).file))
            if (each.count.wanted > 0)
                asked.insert(each.of.quantity);
        return asked;
    }
    [[nodiscard]] std::set<std::string> lines() const {
        std::set<std::string> ids;
        const auto file = draft(signing()).file;
        for (const auto& work : workLines(file.inspection, file.items))
            ids.insert(work.line->id);
        return ids;
    }
    [[nodiscard]] std::string paper() const {
        return paper::toText(releasePaper(draft(signing()).file, english), english, 4000);
    }
};

}

class StrengthTestAloneTest : public QObject {
    Q_OBJECT
private slots:
    void inARectificationItAsksForPullsAlone() {
        Tested shop;
        shop.opened(Visit::PartMlRectification, false);
        QCOMPARE(shop.quantities(), std::set<std::string>{"grab-strength"});
        shop.say(
            R"({"entry":"work.performed","on":"2026-06-01","by":"Bo Lind","item":"E1","what":"fabric tested","data":"Manual 77, 6.3")" +
            shop.about() + "}");
        shop.pull(3);
        shop.carriedOut();
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77, 6.3"); // the manual wants two
        shop.pull(9);
        expectReleased(shop, Shop::signing());
        const auto text = shop.paper();
        QVERIFY2(text.find("Fabric strength test of E1") != std::string::npos, text.c_str());
        QVERIFY2(text.find("permeability") == std::string::npos, text.c_str());
    }
    /// Nor does permeability accomplish it.
    void whatIsNoPullDoesNotAccomplishIt() {
        Tested shop;
        shop.opened(Visit::PartMlRectification, false);
        for (int gore = 1; gore <= 12; ++gore)
            shop.say(
                R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"air-permeability","unit":"mm/s","value":12,"pressure_pa":125,"area_cm2":20,"tester":"F-1","row":16,"gore":)" +
                std::to_string(gore) + shop.about() + "}");
        shop.carriedOut();
        QVERIFY(shop.draft(Shop::signing()).accomplishments.empty());
    }
    /// An envelope that came by itself, for the test and no annual: its lines are those of its work.
    void anEnvelopeOfThePoolIsAskedForNothingBesides() {
        Tested shop;
        shop.say(
            R"({"entry":"item.entered","on":"2016-05-01","item":"E9","kind":"envelope","serial":"109","type":"T-77"})");
        shop.items = {ItemId("E9")};
        shop.opened(Visit::PartMlInspection, true);
        QCOMPARE(shop.lines(), std::set<std::string>{"envelope.grab-test"});
        QCOMPARE(shop.quantities(), std::set<std::string>{"grab-strength"});
        for (const int gore : {3, 9})
            shop.say(
                R"({"entry":"reading.taken","on":"2026-06-01","item":"E9","quantity":"grab-strength","unit":"N","value":300,"direction":"warp","row":16,"tester":"F-1","gore":)" +
                std::to_string(gore) + shop.about() + "}");
        shop.carriedOut();
        expectReleased(shop, Shop::signing());
        const auto text = shop.paper();
        QVERIFY2(text.find("Fabric strength test of E9") != std::string::npos, text.c_str());
        QVERIFY2(text.find("Annual or 100-hour inspection (Part-ML)") == std::string::npos, text.c_str());
    }
    /// What somebody settled all the same stands on the report where it belongs.
    void whatIsSettledBesidesIsShown() {
        Tested shop;
        shop.say(
            R"({"entry":"item.entered","on":"2016-05-01","item":"E9","kind":"envelope","serial":"109","type":"T-77"})");
        shop.items = {ItemId("E9")};
        shop.opened(Visit::PartMlInspection, true);
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":"envelope.crown-ring","item":"E9")" +
            shop.about() + "}");
        QCOMPARE(shop.lines(), (std::set<std::string>{"envelope.crown-ring", "envelope.grab-test"}));
    }
    /// After an over-temperature too: of the line that is there for both, what the work asks for.
    void afterAnOverTemperatureItAsksForPullsAlone() {
        Tested shop;
        shop.say(
            R"({"entry":"event.reported","on":"2026-05-31","balloon":"QE-ONE","event":"over-temperature","temp_c":140})");
        shop.opened(Visit::PartMlSpecial, false);
        QCOMPARE(shop.quantities(), (std::set<std::string>{"grab-strength", "tell-tale"}));
        Opening both;
        both.visit = Visit::PartMlSpecial;
        both.balloon = Registration("QE-ONE");
        both.items = shop.items;
        both.work = {{shop.items.front(), strengthTest}, {shop.items.front(), RequirementId("ml.over-temperature")}};
        both.on = day("2026-06-02");
        both.by = "Ada Rhos";
        shop.inspection = openInspection(shop.record(), shop.record(), both).value();
        QVERIFY(shop.quantities().contains("air-permeability"));
    }
    /// With the annual it is asked as it was, each in its line.
    void withTheAnnualBothAreAsked() {
        Tested shop;
        shop.opened(Visit::PartMlInspection, false);
        QVERIFY(shop.quantities().contains("air-permeability") && shop.quantities().contains("grab-strength"));
    }
};

CROWNRING_TEST(StrengthTestAloneTest, QCoreApplication)

}

#include "strength_test_alone_test.moc"

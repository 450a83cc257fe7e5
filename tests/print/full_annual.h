// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The annual of a whole balloon as a shop has it on the bench: envelope, basket, burner and four cylinders; 24 pulls,
/// 12 permeability readings and the tell-tale; findings on many lines; a repair, a part off and on, a rectified defect
/// and two that are deferred. All of it is invented.

#include "acts/shop.h"
#include "answers/bench_file.h"

namespace crownring::testing {

class FullAnnual {
public:
    /// @param hoses that are items of the record, too
    /// @param deferrals besides
    explicit FullAnnual(Visit visit, int hoses = 0, int deferrals = 0) {
        balloon(hoses);
        open(visit);
        read();
        work(visit, deferrals);
        settle();
        auto signing =
            visit == Visit::UsAnnual ? Shop::signing("Ines Holt", Capacity::InspectionAuthorization) : Shop::signing();
        signing.manuals = {"Manual 77, revision 4", "Manual B-4 for baskets, issue 3", "Burner manual R, revision 11"};
        signing.limitations = "no flight above 2,500 m until the altimeter is replaced";
        if (const auto signedNow = shop.sign(signing); !signedNow)
            for (const auto& problem : signedNow.error())
                qWarning("%s", text(problem).c_str());
    }

    Shop shop;

    [[nodiscard]] BenchFile file(const char* on = "2026-06-02") const {
        return benchFile(shop.record(), shop.inspection, day(on)).value();
    }

private:
    void balloon(int hoses) {
        const auto item = [&](const std::string& id, const std::string& more) {
            shop.say(R"({"entry":"item.entered","on":"2018-03-01","item":")" + id + "\"," + more +
                     "}\n{\"entry\":\"item.fitted\",\"on\":\"2018-03-01\",\"balloon\":\"QE-ONE\",\"item\":\"" + id +
                     "\"}");
        };
        item("B1", R"("kind":"basket","serial":"B4-0388","type":"B-4","brought_forward":{"minutes":11000})");
        item("R1", R"("kind":"burner","serial":"22071","type":"R twin","brought_forward":{"minutes":9400})");
        for (const char* number : {"1", "2", "3", "4"})
            item("C" + std::string(number), R"("kind":"cylinder","made":"2015-04","type":"V-30","serial":"9001)" +
                                                std::string(number) + R"(","brought_forward":{"minutes":8000})");
        for (const char* id : {"B1", "R1", "C1", "C2", "C3", "C4"})
            shop.items.emplace_back(id);
        for (int number = 1; number <= hoses; ++number) {
            const auto id = "H" + std::to_string(number);
            item(id, R"("kind":"hose","made":"2018-02","type":"Hose 3/8 twin","serial":"H-2021-0)" +
                         std::to_string(number) + R"(","brought_forward":{"minutes":4000})");
            shop.items.emplace_back(id);
        }
        shop.say(
            R"({"entry":"balloon.owned","on":"2018-03-01","balloon":"QE-ONE","owner":"Vale Balloon Club, Mill Lane 1, 12345 Vale","operator":"Vale Flights Ltd, The Old Barn, Vale"}
{"entry":"limit.stated","on":"2020-01-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"places":24,"source":"Manual 77, 6.3"}
{"entry":"limit.stated","on":"2020-01-01","type":"T-77","kind":"envelope","quantity":"air-permeability","unit":"mm/s","most":60,"pressure_pa":125,"places":12,"source":"Manual 77, 6.4"}
{"entry":"tester.calibrated","on":"2026-01-01","tester":"P-7","until":"2026-12-31","what":"permeability tester"})");
    }

    void open(Visit visit) {
        shop.adopt(visit == Visit::UsAnnual ? "us-14cfr" : "part-ml-hot-air");
        Opening opening;
        opening.visit = visit;
        opening.balloon = Registration("QE-ONE");
        opening.items = shop.items;
        for (const auto& item : shop.items)
            opening.work.push_back({item, accomplishes(visit).front()});
        opening.on = day("2026-06-01");
        opening.by = "Ada Rhos";
        opening.order = "WO 2026-118";
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
    }

    void read() {
        for (int gore = 1; gore <= 24; ++gore)
            shop.pull(gore, R"("value":)" + std::to_string(168 + gore * 7 % 60), R"(,"tester":"F-1","by":"Ben Ash")");
        for (int gore = 1; gore <= 24; gore += 2)
            shop.say(
                R"({"entry":"reading.taken","on":"2026-06-01","by":"Ben Ash","item":"E1","quantity":"air-permeability","unit":"mm/s","pressure_pa":125,"area_cm2":20,"tester":"P-7","row":17,"value":)" +
                std::to_string(11 + gore * 3 % 30) + R"(,"gore":)" + std::to_string(gore) + shop.about() + "}");
        shop.tellTale(110, 116);
    }

    void work(Visit visit, int deferrals) {
        const bool us = visit == Visit::UsAnnual;
        const auto about = shop.about() + R"(,"by":"Ada Rhos"})";
        shop.find("D-1", "barring");
        shop.say(
            R"({"entry":"repair.made","on":"2026-06-01","item":"E1","method":"patched, type 2","gore":5,"row":3,"width_mm":180,"height_mm":120,"lot":"L-2024-07","defect":"D-1")" +
            about);
        shop.say(shop.clearing("D-1"));
        const auto defer = [&](const char* defect, const char* item, const char* what, const char* reason) {
            shop.say(R"({"entry":"defect.found","on":"2026-06-01","severity":"barring","item":")" + std::string(item) +
                     R"(","defect":")" + defect + R"(","what":")" + what + '"' + about);
            shop.say(
                R"({"entry":"defect.deferred","on":"2026-06-01","until":"2026-07-31","not_required":true,"item":")" +
                std::string(item) + R"(","defect":")" + defect + R"(","reason":")" + reason +
                R"(","placard":"removed, INOPERATIVE on the panel","agreed_by":")" + (us ? "Ines Holt" : "Ada Rhos") +
                '"' + about);
        };
        defer("D-2", "B1", "altimeter reads 90 m high over its whole range",
              "exchange unit is ordered, delivery in July");
        defer("D-3", "R1", "second igniter weak", "spare on order; the first lights both burners");
        for (int number = 0; number < deferrals; ++number)
            defer(("D-" + std::to_string(4 + number)).c_str(), "B1", "padding scuffed at a corner", "waits for winter");
        shop.say(
            R"({"entry":"part.replaced","on":"2026-06-01","item":"R1","part":"main blast valve","removed_serial":"MV-112","fitted_serial":"MV-774","release_document":"EASA Form 1 no. 2026-0417")" +
            about);
        shop.say(
            R"({"entry":"work.performed","on":"2026-06-01","item":"R1","what":"main blast valve exchanged, leak tested at 10 bar","data":"Burner manual R, revision 11, 4-12","performed_by":"Ben Ash")" +
            about);
    }

    /// Every seventh line with a finding of some length; the second of the cylinders, and what wants a second look, by
    /// another.
    void settle() {
        const auto draft = shop.draft(Shop::signing()).file;
        std::string text;
        int number = 0;
        for (const auto& work : workLines(draft.inspection, draft.items)) {
            ++number;
            const auto isLimited = [&](const AskedReading& asked) {
                return work.item && limitCounts(draft, *work.item, asked).front().limit;
            };
            const bool asked = !isFlown(work.line->id) &&
                               (!work.line->isTest() || std::ranges::any_of(work.line->readings, isLimited));
            const bool other = isSecondLook(work.line->id) || (work.item && work.item->id == ItemId("C2"));
            text += R"({"entry":"line.settled","on":"2026-06-01","line":")" + work.line->id + R"(","by":")" +
                    (other ? "Ben Ash" : "Ada Rhos") + R"(","state":")" +
                    (asked ? "done" : R"(not-applicable","why":"not-asked","page":"Manual 77, 6)") + '"';
            if (work.item)
                text += R"(,"item":")" + work.item->id.text() + '"';
            if (asked && number % 7 == 0)
                text += R"(,"finding":"worn to half of what the manual allows, look again at 50 h")";
            text += shop.about() + "}\n";
        }
        shop.say(text);
    }
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/release_fault.h"
#include "signing_attempt.h"
#include "test_class.h"

namespace maintenance_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

Signing european() { return Shop::signing(); }
Signing american(const char* person = "Ines Holt", Capacity capacity = Capacity::InspectionAuthorization) {
    return Shop::signing(person, capacity);
}

std::string performed(const Shop& shop, const std::string& item = "E1", const std::string& more = {}) {
    return R"({"entry":"work.performed","on":"2026-06-01","what":"patched a panel","data":"Manual 77, 4-12, revision 4","item":)" +
           quoted(item) + shop.about() + more + "}";
}

bool isRefusedFor(const Shop& shop, const Signing& by, ReleaseFault fault) {
    return std::ranges::any_of(shop.draft(by).refusals, [&](const Refusal& refusal) {
        return refusal.fault == fault && isSaid(problemOf(refusal)) && !refusal.rule.empty();
    });
}

QString paragraphs(const Shop& shop, const Signing& by) {
    QStringList all;
    for (const auto& section : shop.draft(by).sections)
        for (const auto& each : section.paragraphs)
            all << words::said(each);
    return all.join(u'\n');
}

/// A visit of one item that is on no balloon.
Shop& ofComponent(Shop& shop, Visit visit, const char* item = "B1") {
    shop.say(R"({"entry":"item.entered","on":"2020-01-01","item":)" + quoted(std::string(item)) +
             R"(,"kind":"basket","serial":"88"})");
    Opening opening;
    opening.visit = visit;
    opening.items = {ItemId(item)};
    opening.on = day("2026-06-01");
    opening.by = "Ada Rhos";
    shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
    return shop;
}

void settleAll(Shop& shop, const char* item) {
    const auto file = shop.draft(european()).file;
    for (const auto& work : workLines(file.inspection, file.items))
        shop.say(R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":)" +
                 quoted(work.line->id) + (work.item ? R"(,"item":)" + quoted(std::string(item)) : "") + shop.about() +
                 "}");
}

}

/// Visits that are no inspection: what a maintenance entry must say, and who may sign it.
class MaintenanceTest : public QObject {
    Q_OBJECT
private slots:
    void aMaintenanceEntryDescribesTheWork() {
        // 14 CFR 43.9(a)(1) (from memory): a description, or reference to acceptable data, of work performed.
        for (const auto visit : {Visit::PartMlRectification, Visit::UsRectification}) {
            Shop shop;
            shop.open(visit).carriedOut();
            const auto by = visit == Visit::UsRectification ? american() : european();
            QVERIFY(isRefusedFor(shop, by, ReleaseFault::WorkNotDescribed));
            QVERIFY(!shop.sign(by));
            shop.say(performed(shop, "E1", R"(,"performed_by":"Bo Lind")"));
            QVERIFY(paragraphs(shop, by).contains("patched a panel; to Manual 77, 4-12, revision 4"));
            // 43.9(a)(3) (from memory): the name of the person performing the work if other than who approves.
            QVERIFY(paragraphs(shop, by).contains("performed by Bo Lind"));
            expectReleased(shop, by);
        }
    }
    void whatWasRepairedOrReplacedIsDescribedOnItsItem() {
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRectification).carriedOut();
        shop.say(performed(shop));
        shop.say(
            R"({"entry":"part.replaced","on":"2026-06-01","item":"R1","part":"valve","removed_serial":"12","fitted_serial":"34","release_document":)" +
            quoted("EASA Form 1 77") + shop.about() + "}");
        QVERIFY(isRefusedFor(shop, european(), ReleaseFault::WorkNotDescribedOn));
        shop.say(performed(shop, "R1"));
        QVERIFY(paragraphs(shop, european()).contains("valve, with EASA Form 1 77; serial number off 12, on 34"));
        expectReleased(shop, european());
    }
    void aRepairSaysWhetherItIsMajor() {
        // 14 CFR 43.9(d), Part 43 Appendices A and B; ML.A.304 (all from memory).
        for (const auto visit :
             {Visit::PartMlRepair, Visit::PartMlModification, Visit::UsRepair, Visit::UsAlteration}) {
            Shop shop;
            shop.open(visit).carriedOut();
            const auto by = regimeOf(visit) == Regime::Us14Cfr ? american() : european();
            const auto id = shop.say(performed(shop)).ids.at(0).text();
            QVERIFY(isRefusedFor(shop, by, ReleaseFault::GradeNotSaid));
            const auto corrected = [&](const char* with) {
                return R"({"entry":"entry.corrected","on":"2026-06-01","by":"Ada Rhos","note":"its grade","replaces":)" +
                       quoted(id) + R"(,"with":)" + with + "}";
            };
            QVERIFY(!problemsOf(shop.record(), corrected(R"({"grade":"major"})")).empty());
            shop.say(corrected(R"({"grade":"major","approval":"FAA Form 337 of 2026-06-01"})"));
            QVERIFY(paragraphs(shop, by).contains(regimeOf(visit) == Regime::Us14Cfr
                                                      ? "major repair or alteration; form or approval FAA Form 337"
                                                      : "major repair or modification; form or approval FAA Form 337"));
            expectReleased(shop, by);
        }
    }
    void aMajorRepairIsNotApprovedByAMechanicAlone() {
        // 14 CFR 65.95(a)(1), 43.7(b) (from memory).
        Shop shop;
        shop.open(Visit::UsRepair).carriedOut();
        const auto kit = american("Kit Moor", Capacity::Mechanic);
        const auto id = shop.say(performed(shop, "E1", R"(,"grade":"minor")")).ids.at(0).text();
        QCOMPARE(shop.refused(kit), QStringList());
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-01","by":"Kit Moor","note":"it is major","replaces":)" +
                 quoted(id) + R"(,"with":{"grade":"major","approval":"Form 337"}})");
        expectRefused(shop, kit, "signatory", "65.95(a)(1)");
        expectReleased(shop, american());
    }
    void aPilotOwnerReleasesTheTasksOfHisListAlone() {
        // Part-ML Appendix II(b) (read); the kind of work is the line that was done, not a free text.
        const auto ole = Shop::signing("Ole Berg", Capacity::PilotOwner);
        Shop repair;
        repair.open(Visit::PartMlRepair).carriedOut();
        repair.say(performed(repair, "E1", R"(,"grade":"minor")"));
        QCOMPARE(repair.refused(ole), QStringList{"signatory"});
        Shop tasks;
        tasks.open(Visit::PartMlOwnerTasks);
        std::set<std::string> others;
        const auto file = tasks.draft(ole).file;
        for (const auto& work : workLines(file.inspection, file.items))
            if (work.item && work.line->id != "ml.fabric-repair")
                others.insert(work.line->id);
        tasks.carriedOut(others);
        tasks.say(performed(tasks, "E1", R"(,"line":"ml.fabric-repair")"));
        tasks.say(
            R"({"entry":"part.replaced","on":"2026-06-01","item":"E1","part":"load tape","line":"load-tape","release_document":)" +
            quoted("none") + tasks.about() + "}");
        QVERIFY(isRefusedFor(tasks, ole, ReleaseFault::NoOwnersTask));
        QVERIFY(!tasks.sign(ole));
        Shop own;
        own.open(Visit::PartMlOwnerTasks).carriedOut(others);
        own.say(performed(own)); // the only task that was done on it
        QVERIFY(!paragraphs(own, ole).contains("What a pilot-owner may not release")); // that is nothing that was done
        expectReleased(own, ole);
    }
    void aTaskOfThePilotOwnerIsNoMoreThanItSays() {
        // AMC1 to Appendix II, part C, burner (from memory): cleaning and lubrication; jets, cleaning and replacement.
        const auto ole = Shop::signing("Ole Berg", Capacity::PilotOwner);
        for (const std::string task : {"ml.burner-cleaning", "ml.jets"}) {
            Shop shop;
            shop.wholeAircraft().open(Visit::PartMlOwnerTasks);
            std::set<std::string> others;
            const auto file = shop.draft(ole).file;
            for (const auto& work : workLines(file.inspection, file.items))
                if (work.item && work.line->id != task)
                    others.insert(work.line->id);
            shop.carriedOut(others);
            shop.say(
                R"({"entry":"part.replaced","on":"2026-06-01","item":"R1","part":"a nozzle","release_document":"none","line":)" +
                quoted(task) + shop.about() + "}");
            QCOMPARE(isRefusedFor(shop, ole, ReleaseFault::NotOfTheTask), task == "ml.burner-cleaning");
            QCOMPARE(shop.refused(ole), task == "ml.jets" ? QStringList() : QStringList{"signatory"});
        }
    }
    void noPilotOwnerReleasesAComponentByItself() {
        // Appendix II(b)(8), read: component maintenance in accordance with ML.A.502(a) or (b). That a task on what is
        // on no balloon is such is our reading.
        const auto ole = Shop::signing("Ole Berg", Capacity::PilotOwner);
        Shop tasks;
        ofComponent(tasks, Visit::PartMlOwnerTasks);
        tasks.say(
            R"({"entry":"line.settled","on":"2026-06-01","by":"Ole Berg","state":"done","line":"ml.trim","item":"B1")" +
            tasks.about() + "}");
        QVERIFY(isRefusedFor(tasks, ole, ReleaseFault::OwnersTaskOffTheAircraft));
        tasks.say(R"({"entry":"item.fitted","on":"2026-06-01","balloon":"QE-ONE","item":"B1"})");
        QVERIFY(!isRefusedFor(tasks, ole, ReleaseFault::OwnersTaskOffTheAircraft));
        Shop component;
        ofComponent(component, Visit::PartMlComponent);
        const auto refusals = component.draft(ole).refusals;
        QVERIFY(std::ranges::any_of(refusals, [](const Refusal& refusal) {
            return refusal.fault == ReleaseFault::MayNotSign && refusal.rule == "Part-ML Appendix II(b)(8)";
        }));
    }
    void aComponentGoesBackToThePoolWithItsOwnRelease() {
        for (const auto visit : {Visit::PartMlComponent, Visit::UsComponent}) {
            Shop shop;
            ofComponent(shop, visit);
            settleAll(shop, "B1");
            shop.say(performed(shop, "B1"));
            const auto by = visit == Visit::UsComponent ? american() : european();
            const auto statement = shop.draft(by).statement;
            QVERIFY2(!statement.text.empty(), statement.source.c_str());
            if (visit == Visit::PartMlComponent)
                QVERIFY(statement.text.find("basket B1, serial number 88") != std::string::npos);
            expectReleased(shop, by);
        }
    }
    void aComponentOnABalloonIsNotReleasedOffIt() {
        Shop shop;
        ofComponent(shop, Visit::PartMlComponent);
        settleAll(shop, "B1");
        shop.say(performed(shop, "B1"));
        shop.say(R"({"entry":"item.fitted","on":"2026-06-01","balloon":"QE-ONE","item":"B1"})");
        QVERIFY(isRefusedFor(shop, european(), ReleaseFault::ComponentFitted));
        Opening opening;
        opening.visit = Visit::PartMlComponent;
        opening.balloon = Registration("QE-ONE");
        opening.items = {ItemId("B1")};
        opening.on = day("2026-06-01");
        QVERIFY(!openInspection(shop.record(), shop.record(), opening));
    }
    void whatSuchAVisitDoesNotAccomplishIsNotItsWork() {
        // An annual is accomplished by an annual: a repair credits none, whoever signs it.
        Shop shop;
        shop.adopt("part-ml-hot-air");
        Opening opening;
        opening.visit = Visit::PartMlRepair;
        opening.balloon = Registration("QE-ONE");
        opening.items = {ItemId("E1")};
        opening.work = {{ItemId("E1"), RequirementId("ml.inspection")}};
        opening.on = day("2026-06-01");
        const auto refused = openInspection(shop.record(), shop.record(), opening);
        QVERIFY(!refused);
        QVERIFY(isSaid(refused.error().front()));
        for (const auto visit : {Visit::PartMlRepair, Visit::PartMlInspection}) {
            const auto offer =
                offerInspection(shop.record(), Registration("QE-ONE"), {}, day("2026-06-01"), visit).value();
            const bool offered = std::ranges::any_of(offer.proposals, [](const Proposal& each) {
                return each.row->requirement->id == RequirementId("ml.inspection");
            });
            QCOMPARE(offered, visit == Visit::PartMlInspection);
        }
    }
    void anItemThatNobodyWorksOnIsAskedNothing() {
        // 14 CFR 43.9(a), ML.A.801(e) (from memory): an entry describes the work performed, and no more.
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRectification);
        const auto asked = [&] {
            std::set<std::string> items;
            const auto file = shop.draft(european()).file;
            for (const auto& work : workLines(file.inspection, file.items))
                if (work.item)
                    items.insert(work.item->id.text());
            return items;
        };
        const auto settled = [&](const char* line, const char* item) {
            shop.say(R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":)" +
                     quoted(std::string(line)) + (item ? R"(,"item":)" + quoted(std::string(item)) : "") +
                     shop.about() + "}");
        };
        QCOMPARE(asked(), std::set<std::string>());
        for (const char* line : {"work.data", "work.parts", "work.check-flight", "work.tools"})
            settled(line, nullptr);
        shop.say(R"({"entry":"flight.logged","on":"2026-06-01","balloon":"QE-ONE","minutes":20,"kit":["E1","B1"]})");
        QVERIFY(isRefusedFor(shop, european(), ReleaseFault::WorkNotDescribed));
        shop.say(performed(shop, "B1"));
        QCOMPARE(asked(), std::set<std::string>{"B1"});
        QCOMPARE(shop.refused(european()), QStringList{"line-open"});
        settled("work.item", "B1");
        const auto file = shop.draft(european()).file;
        const auto said = releaseFacts(file, european()).items; // with their times on the certificate
        QCOMPARE(said.size(), std::size_t{1});
        QCOMPARE(said.front().named, std::string("basket B1, serial number 1"));
        // What was taken into the work and left undone is certified by nobody.
        auto takenIn = file;
        takenIn.inspection.opened.body.work.push_back({ItemId("R1"), RequirementId("r")});
        QVERIFY(takenIn.inspection.concerns(ItemId("R1")) && !takenIn.inspection.wasWorkedOn(ItemId("R1")));
        QCOMPARE(releaseFacts(takenIn, european()).items.size(), std::size_t{1});
        expectReleased(shop, european());
    }
    void workOnAnItemIsAskedHoweverItIsSaid() {
        Shop shop;
        shop.wholeAircraft().open(Visit::PartMlRepair);
        const auto concerns = [&](const char* item) { return shop.now().concerns(ItemId(item)); };
        QVERIFY(!concerns("E1") && !concerns("R1") && !concerns("C1"));
        shop.find("D-1", "minor");
        QVERIFY(!concerns("E1")); // looked at, not mended
        shop.say(shop.repair("D-1"));
        shop.say(
            R"({"entry":"part.replaced","on":"2026-06-01","item":"R1","part":"valve","release_document":"EASA Form 1 77")" +
            shop.about() + "}");
        shop.say(R"({"entry":"line.settled","on":"2026-06-01","by":"x","state":"done","line":"work.item","item":"C1")" +
                 shop.about() + "}");
        QVERIFY(concerns("E1") && concerns("R1") && concerns("C1") && !concerns("B1"));
    }
    void noRepairReviewsAirworthiness() {
        // ML.A.901(b), read: while the annual or 100-hour inspection, or by itself.
        for (const auto visit : {Visit::PartMlRepair, Visit::PartMlSpecial, Visit::PartMlOwnerTasks}) {
            Shop shop;
            shop.wholeAircraft().adopt("part-ml-hot-air");
            if (visit == Visit::PartMlSpecial)
                shop.say(R"({"entry":"event.reported","on":"2026-05-30","balloon":"QE-ONE","event":"fire"})");
            Opening opening;
            opening.visit = visit;
            opening.balloon = Registration("QE-ONE");
            opening.items = shop.items;
            opening.on = day("2026-06-01");
            const auto offer = offerInspection(shop.record(), opening.balloon, {}, opening.on, opening.visit).value();
            QVERIFY(std::ranges::none_of(offer.proposals, [](const Proposal& each) {
                return each.row->requirement->id == RequirementId("ml.arc-review");
            }));
            opening.work = {{ItemId("E1"), RequirementId("ml.arc-review")}};
            QVERIFY(!openingEntry(shop.record(), opening));
            const auto posted = problemsOf(
                shop.record(),
                R"({"entry":"inspection.opened","on":"2026-06-01","inspection":"X","balloon":"QE-ONE","items":["E1"],"work":[{"item":"E1","requirement":"ml.arc-review"}],"visit":)" +
                    quoted(std::string(visitName(visit))) + "}");
            QCOMPARE(posted.size(), std::size_t{1});
            QVERIFY(isSaid(posted.front()));
        }
    }
    void ownerOperatorAndWorkOrderStandOnThePaper() {
        Shop shop;
        shop.say(
            R"({"entry":"balloon.owned","on":"2020-01-01","balloon":"QE-ONE","owner":"A. Vale, Mill Lane 1","operator":"Vale Flights"})");
        shop.say(R"({"entry":"balloon.owned","on":"2027-01-01","balloon":"QE-ONE","owner":"Someone later"})");
        shop.ready(Visit::PartMlInspection);
        const auto text = paragraphs(shop, european());
        QVERIFY(text.contains("Owner: A. Vale, Mill Lane 1") && text.contains("Operated by: Vale Flights"));
    }
};

CROWNRING_TEST(MaintenanceTest, QCoreApplication)

}

#include "maintenance_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/accomplished.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

constexpr const char* hardLanding =
    R"({"entry":"event.reported","on":"2026-05-30","balloon":"QE-ONE","event":"hard-landing"})";

const std::vector<Work> special{{ItemId("E1"), RequirementId("ml.special-inspection")},
                                {ItemId("B1"), RequirementId("ml.special-inspection")},
                                {ItemId("R1"), RequirementId("ml.special-inspection")},
                                {ItemId("C1"), RequirementId("ml.special-inspection")}};

std::set<std::string> accomplishedItems(const Shop& shop) {
    std::set<std::string> items;
    for (const auto& work : shop.draft(Shop::signing()).accomplishments)
        items.insert(work.item.text());
    return items;
}

std::string correction(const std::string& of, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2026-06-12","by":"Ada Rhos","note":"found out","replaces":)" +
           quoted(of) + R"(,"with":)" + with + "}";
}

std::string doneBy(const char* ref, const char* item = "E1", const char* requirement = "ml.inspection") {
    return R"({"entry":"requirement.done","on":"2026-06-02","item":")" + std::string(item) + R"(","requirement":")" +
           requirement + R"(","ref":)" + quoted(ref) + "}";
}

std::string doneAt(std::string done, int minutes) {
    return done.insert(done.size() - 1, R"(,"clock":{"minutes":)" + std::to_string(minutes) + "}");
}

std::string lineOn(const std::string& on) {
    return R"({"entry":"line.settled","line":"envelope.scoop","item":"E1","state":"done","on":)" + quoted(on);
}

}

/// What a signature accomplishes is what was done, line by line and reading by reading (02, "What a signature states").
class AccomplishmentTest : public QObject {
    Q_OBJECT
private slots:
    void aSpecialInspectionAsksWhatHappenedAndNoMore() {
        Shop shop;
        shop.wholeAircraft().say(hardLanding);
        shop.open(Visit::PartMlSpecial, special);
        std::set<std::string> events;
        for (const auto& line : shop.now().checklist.lines)
            if (!line.after.empty())
                events.insert(line.id);
        QCOMPARE(events, (std::set<std::string>{"hard-landing.basket", "hard-landing.suspension", "hard-landing.burner",
                                                "hard-landing.cylinders"}));
        shop.carriedOut();
        QCOMPARE(accomplishedItems(shop), (std::set<std::string>{"E1", "B1", "R1", "C1"}));
        expectReleased(shop, Shop::signing());
    }
    /// Fabric that was too hot is tested, and nothing is asked of a fire or a wire.
    void afterAnOverTemperatureNoOtherEventIsAskedFor() {
        Shop shop;
        shop.wholeAircraft().say(
            R"({"entry":"event.reported","on":"2026-05-30","balloon":"QE-ONE","event":"over-temperature","temp_c":135})");
        shop.open(Visit::PartMlSpecial, {{ItemId("E1"), RequirementId("ml.over-temperature")},
                                         {ItemId("E1"), RequirementId("ml.special-inspection")}});
        std::set<std::string> events;
        for (const auto& line : shop.now().checklist.lines)
            if (!line.after.empty())
                events.insert(line.id);
        QCOMPARE(events, (std::set<std::string>{"over-temperature.tell-tale", "over-temperature.fabric"}));
    }
    void whereNothingHappenedNoSpecialInspectionIsProposed() {
        // Part-ML Appendix II(b)(6), read: an unscheduled special inspection, e.g. a heavy-landing check. What is
        // looked at for each event is common practice, no source.
        Shop shop;
        shop.adopt("part-ml-hot-air");
        shop.wholeAircraft();
        Opening opening;
        opening.visit = Visit::PartMlSpecial;
        opening.balloon = Registration("QE-ONE");
        opening.items = shop.items;
        opening.on = day("2026-06-01");
        const auto offered = [&] {
            return offerInspection(shop.record(), opening.balloon, {}, opening.on, Visit::PartMlSpecial).value();
        };
        const auto refused = openingEntry(shop.record(), opening);
        QVERIFY(!refused && refused.error().code() == Code::BadUse && isSaid(refused.error()));
        QVERIFY(offered().eventUnknown && offered().proposals.empty());
        shop.say(hardLanding);
        QVERIFY(!offered().eventUnknown && openingEntry(shop.record(), opening));
        for (const auto& item : shop.items) // looked at since
            shop.say(R"({"entry":"requirement.done","on":"2026-05-31","requirement":"ml.special-inspection","item":)" +
                     quoted(item.text()) + "}");
        QVERIFY(offered().eventUnknown && !openingEntry(shop.record(), opening));
    }
    void withALineOfThatEventLeftOutItIsNotAccomplished() {
        Shop shop;
        shop.wholeAircraft().say(hardLanding);
        shop.open(Visit::PartMlSpecial, special).carriedOut();
        shop.settle("hard-landing.suspension", "not-applicable");
        QCOMPARE(accomplishedItems(shop), (std::set<std::string>{"B1", "R1", "C1"}));
    }
    void anEventBeforeTheLastSpecialInspectionIsPast() {
        Shop shop;
        shop.wholeAircraft().say(
            R"({"entry":"event.reported","on":"2025-05-01","balloon":"QE-ONE","event":"immersion"})");
        for (const char* item : {"E1", "B1", "R1", "C1"})
            shop.say(R"({"entry":"requirement.done","on":"2025-05-10","requirement":"ml.special-inspection","item":)" +
                     quoted(std::string(item)) + "}");
        shop.say(hardLanding);
        shop.open(Visit::PartMlSpecial, special);
        QVERIFY(std::ranges::none_of(shop.now().checklist.lines,
                                     [](const auto& line) { return line.id.starts_with("immersion"); }));
    }
    void anAnnualIsAccomplishedByWhatWasDoneOnTheItem() {
        Shop shop;
        shop.open(Visit::PartMlInspection).carriedOut().measured();
        QCOMPARE(accomplishedItems(shop), std::set<std::string>{"E1"});
    }
    void papersAloneInspectNoItem() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        const auto file = shop.draft(Shop::signing()).file;
        for (const auto& work : workLines(file.inspection, file.items))
            if (work.item)
                shop.settle(work.line->id, "not-applicable");
        shop.carriedOut([&] {
            std::set<std::string> ofItems;
            for (const auto& work : workLines(file.inspection, file.items))
                if (work.item)
                    ofItems.insert(work.line->id);
            return ofItems;
        }());
        QVERIFY(accomplishedItems(shop).empty());
    }
    void aVisitRenewsNoReviewCertificate() {
        // ML.A.901(b) (read): a review is issued by who may review; a release is none.
        Shop shop;
        const auto review = Work{ItemId("E1"), RequirementId("ml.arc-review")};
        shop.open(Visit::PartMlInspection, {review}).carriedOut().measured();
        const auto all = shop.draft(Shop::signing()).accomplishments;
        QVERIFY(!all.empty() && std::ranges::find(all, review) == all.end());
        const auto problems = problemsOf(
            shop.record(), shop.closing() + "\n" + doneBy(shop.inspection.text().c_str(), "E1", "ml.arc-review"));
        QVERIFY(std::ranges::any_of(
            problems, [](const Problem& each) { return each.fault == Fault(ReleaseFault::NotAccomplished); }));
    }
    void aTestOfFabricIsDoneByPullsAlone() {
        // The strength test of an example programme: assets/programmes/fabric-strength.json.
        Shop shop;
        shop.adopt("fabric-strength");
        const Work test{ItemId("E1"), RequirementId("fabric.strength-test")};
        shop.open(Visit::PartMlInspection, {test}).carriedOut().tellTale(110, 116);
        QVERIFY(std::ranges::none_of(shop.now().checklist.lines,
                                     [](const auto& line) { return line.id.starts_with("do/"); }));
        const auto done = [&] {
            const auto all = shop.draft(Shop::signing()).accomplishments;
            return std::ranges::find(all, test) != all.end();
        };
        QVERIFY(!done());
        shop.settle("envelope.grab-test", "not-applicable");
        QVERIFY(!done());
        // It goes with each inspection (the programme's source), and is not left out because nobody pulled.
        expectRefused(shop, Shop::signing(), "line-open", "Appendix II-A");
        Shop pulled;
        pulled.adopt("fabric-strength");
        pulled.open(Visit::PartMlInspection, {test}).carriedOut().measured();
        QCOMPARE(pulled.draft(Shop::signing()).accomplishments.size(), std::size_t{2});
    }
    void aTestWithoutAStatedLimitIsRefused() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.settle("envelope.permeability"); // done, as somebody says; the manual states no limit
        expectRefused(shop, Shop::signing(), "no-reading", "AMC1 ML.A.302(d)");
        QVERIFY(words::message(shop.draft(Shop::signing()).refusals.front()).contains("judged"));
        shop.settle("envelope.permeability", "not-applicable");
        expectReleased(shop, Shop::signing());
    }
    void eachLimitIsServedForItself() {
        Shop shop;
        for (const char* direction : {"warp", "weft"})
            shop.say(
                R"({"entry":"limit.stated","on":"2016-05-02","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":133.4,"places":2,"source":"Manual 77, 6.3","direction":)" +
                quoted(std::string(direction)) + "}");
        shop.ready(Visit::PartMlInspection).pull(5);
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77, 6.3");
        QVERIFY(words::message(shop.draft(Shop::signing()).refusals.front()).contains("weft"));
    }
    void notApplicableSaysWhy() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-01","line":"envelope.scoop","item":"E1","state":"not-applicable")" +
            shop.about() + "}");
        expectRefused(shop, Shop::signing(), "line-open", "AMC1 ML.A.302(d)");
        shop.say(
            R"({"entry":"line.settled","on":"2026-06-01","line":"envelope.scoop","item":"E1","state":"not-applicable","why":"not-fitted")" +
            shop.about() + "}");
        expectReleased(shop, Shop::signing());
    }
    void nothingIsAccomplishedRoundTheSignature() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto name = shop.inspection.text();
        const auto refused = [&](const std::string& lines) {
            const auto before = shop.entries();
            const auto problems = problemsOf(shop.record(), lines);
            QVERIFY(!problems.empty());
            QCOMPARE(problems.front().code(), Code::NotReleasable);
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
            QCOMPARE(shop.entries(), before);
        };
        refused(doneBy(name.c_str())); // while it is open
        const auto closing = shop.closing();
        refused(closing + "\n" + doneBy(name.c_str(), "E1", "ml.arc-review")); // was no part of it
        QVERIFY(problemsOf(shop.record(), closing + "\n" + doneBy(name.c_str())).empty());
        refused(doneBy(name.c_str())); // and not afterwards
        // A paper is a paper: it is somebody else's word.
        shop.say(doneBy("work order 12"));
    }
    void nothingIsAccomplishedBeforeTheInspectionIsThere() {
        Shop shop;
        shop.say(doneBy("V-1", "E1", "ml.arc-review")); // a paper, as it seems
        const auto problems = problemsOf(
            shop.record(),
            R"({"entry":"inspection.opened","on":"2026-06-01","inspection":"V-1","visit":"part-ml-inspection","items":["E1"]})");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReleaseFault::NamedBefore));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    }
    void aClockIsTheOneSignedFor() {
        Shop shop;
        const auto closing = shop.ready(Visit::PartMlInspection).closing();
        const auto problems =
            problemsOf(shop.record(), closing + "\n" + doneAt(doneBy(shop.inspection.text().c_str()), 99999));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().where.key, std::string("clock"));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY(
            problemsOf(shop.record(), closing + "\n" + doneAt(doneBy(shop.inspection.text().c_str()), 12000)).empty());
    }
    void whatIsDoneInAVisitIsDatedInIt() {
        Shop before;
        before.ready(Visit::PartMlInspection).say(lineOn("2025-06-01") + before.about() + "}");
        expectRefused(before, Shop::signing(), "order", "");
        // What is dated after the signature is no part of it, and nobody signs past it.
        Shop after;
        after.open(Visit::PartMlInspection).carriedOut({"envelope.scoop"}).measured();
        after.say(lineOn("2026-06-05") + after.about() + "}");
        const auto problems = problemsOf(after.record(), after.closing());
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReleaseFault::SaidAfter));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    }
    void whatItAccomplishedIsNotCorrectedIntoSomethingElse() {
        Shop shop;
        const auto done = shop.ready(Visit::PartMlInspection).sign(Shop::signing()).value().ids.at(1).text();
        const auto other = shop.say(doneBy("work order 12")).ids.at(0).text();
        const auto correct = [&](const std::string& id, const std::string& with) {
            return problemsOf(shop.record(), correction(id, with));
        };
        QCOMPARE(correct(done, R"({"requirement":"ml.arc-review"})").front().code(), Code::CannotAmend);
        QCOMPARE(correct(done, R"({"on":"2026-06-20"})").front().code(), Code::CannotAmend);
        QCOMPARE(correct(other, R"({"ref":)" + quoted(shop.inspection.text()) + "}").front().code(),
                 Code::NotReleasable);
        QCOMPARE(problemsOf(shop.record(),
                            R"({"entry":"entry.voided","on":"2026-06-05","reason":"no","voids":)" + quoted(done) + "}")
                     .front()
                     .code(),
                 Code::NotReleasable);
    }
};

CROWNRING_TEST(AccomplishmentTest, QCoreApplication)
#include "accomplishment_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace checklist_in_force_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

/// A visit that a shop's own system opens on the envelope, with what it says of lines.
Shop& openedByTheShop(Shop& shop, const std::string& lines, const std::string& checklist = "") {
    shop.adopt("part-ml-hot-air");
    shop.inspection = InspectionId("from the shop");
    shop.say(
        R"({"entry":"inspection.opened","on":"2026-06-01","visit":"part-ml-inspection","items":["E1"],"balloon":"QE-ONE","work":[{"item":"E1","requirement":"ml.inspection"}])" +
        shop.about() + checklist + "}");
    shop.say(lines.empty()
                 ? std::string(
                       R"({"entry":"line.settled","on":"2026-06-01","line":"all looked over","state":"done","item":)") +
                       quoted("E1") + shop.about() + "}"
                 : lines);
    shop.measured();
    return shop;
}

std::vector<Problem> leftOut(const Shop& shop) {
    auto problems = problemsOf(shop.record(), shop.closing());
    std::erase_if(problems, [](const Problem& each) { return each.fault != Fault(ReleaseFault::LinesLeftOut); });
    return problems;
}

/// All lines of the list that ships, as it would have been opened with, each settled.
std::string everyLine(const std::string& inspection, const std::string& but = "") {
    Shop twin;
    twin.open(Visit::PartMlInspection);
    const auto file = twin.draft(Shop::signing()).file;
    std::string text;
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.line && work.line->id != but)
            text += R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","inspection":)" +
                    quoted(inspection) + R"(,"line":)" + quoted(work.line->id) +
                    (work.item ? R"(,"item":)" + quoted("E1") : std::string()) + "}\n";
    return text;
}

const char* const ownList =
    R"({"checklist":"lakeside","revision":"3","title":"Lakeside annual","source":"CAO manual 4.1","sections":[{"id":"all","title":"All"}],"lines":[{"id":"lake.envelope","section":"all","kinds":["envelope"],"title":"Envelope as CAO manual 4.1","look_for":"all of it","sources":{"part-ml":"ML.A.302"},"visits":["part-ml-inspection"]}]})";
}

/// An inspection is what a checklist asks: the performance rules (14 CFR 43.15(c)(1), Appendix D; ML.A.302(c)(4), from
/// memory) want one that covers at least what they list.
class ChecklistInForceTest : public QObject {
    Q_OBJECT
private slots:
    void anAnnualIsNotAccomplishedByALineOfItsOwn() {
        Shop shop;
        const auto problems = leftOut(openedByTheShop(shop, ""));
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    }
    void eachLineThatShipsHasAWord() {
        Shop shop;
        QVERIFY(leftOut(openedByTheShop(shop, everyLine("from the shop"))).empty());
        Shop lacks;
        const auto problems = leftOut(openedByTheShop(lacks, everyLine("from the shop", "envelope.crown-ring")));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().arguments.size(), std::size_t{4});
        // What is left out says why.
        lacks.say(
            R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"not-applicable","why":"not-fitted","line":"envelope.crown-ring","item":)" +
            quoted("E1") + lacks.about() + "}");
        QVERIFY(leftOut(lacks).empty());
    }
    void anOrganisationsOwnListServesOnceItIsAdopted() {
        const auto used = R"(,"checklist":)" + std::string(ownList);
        const std::string line =
            R"({"entry":"line.settled","on":"2026-06-01","by":"Ada Rhos","state":"done","line":"lake.envelope","item":"E1","inspection":"from the shop"})";
        Shop unknown;
        QCOMPARE(leftOut(openedByTheShop(unknown, line, used)).size(), std::size_t{1});
        Shop known;
        known.say(R"({"entry":"checklist.adopted","on":"2026-01-01","checklist":"lakeside","document":)" +
                  std::string(ownList) + "}");
        QVERIFY(leftOut(openedByTheShop(known, line, used)).empty());
        Shop late; // from the day after the opening on
        late.say(R"({"entry":"checklist.adopted","on":"2026-06-02","checklist":"lakeside","document":)" +
                 std::string(ownList) + "}");
        QCOMPARE(leftOut(openedByTheShop(late, line, used)).size(), std::size_t{1});
    }
    void whatAccomplishesNoInspectionIsAskedForNone() {
        Shop shop;
        shop.inspection = InspectionId("from the shop");
        shop.say(
            R"({"entry":"inspection.opened","on":"2026-06-01","visit":"part-ml-inspection","balloon":"QE-ONE","items":["E1"])" +
            shop.about() + "}");
        shop.say(R"({"entry":"line.settled","on":"2026-06-01","line":"looked at","state":"done","item":)" +
                 quoted("E1") + shop.about() + "}");
        QVERIFY(leftOut(shop).empty());
    }
};

CROWNRING_TEST(ChecklistInForceTest, QCoreApplication)
}

#include "checklist_in_force_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// What is taken out of what is kept apart is kept apart until it is released (ML.A.504, from memory), in whatever
/// order the papers come; and who takes a condemnation back.

#include "answers/check_rig_up.h"
#include "answers/touched.h"
#include "answers/whole_balloon.h"
#include "component_lines.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace taken_out_test {

using namespace crownring;
using namespace crownring::testing;
using nlohmann::json;

namespace {

std::string released(const char* on, const char* item) {
    return line("item.state", on,
                {{"item", item}, {"state", "in-service"}, {"release", {{"form", "easa-form-1"}, {"number", "Q 1"}}}});
}

std::string happened(const char* on, const char* item, const char* event, int celsius = 0) {
    json more{{"item", item}, {"event", event}};
    if (celsius > 0)
        more["temp_c"] = celsius;
    return line("event.reported", on, more);
}
std::string inspected(const char* on, const char* item) {
    return line(
        "requirement.done", on,
        {{"item", item}, {"requirement", "any.look"}, {"ref", "WO 7"}, {"signatory", "Ada"}, {"licence", "L 1"}});
}

/// R1 with the valve V1 lies on no balloon, and R2 flies.
class Yard {
public:
    Yard() {
        say(aWholeBalloon);
        for (const char* item : {"R2", "V1", "V2"})
            say(line("item.entered", "2024-01-01",
                     {{"item", item}, {"kind", *item == 'R' ? "burner" : "other"}, {"id", item}}));
        say(line("item.removed", "2024-02-02", {{"item", "R1"}, {"balloon", "QE-ONE"}}));
        say(line("item.fitted", "2024-02-03", {{"item", "R2"}, {"balloon", "QE-ONE"}}));
        say(fitted("2024-02-03", "V1", "R1"));
    }
    void say(const std::string& lines) { posted(*m_scratch.record, lines); }
    /// "" when it is taken.
    std::string refused(const std::string& lines) {
        const auto problems = problemsOf(*m_scratch.record, lines);
        return problems.empty() ? "" : std::string(rowOf(problems.front().fault).name);
    }
    [[nodiscard]] std::optional<OutOfService> out(const char* item, const char* on) {
        return m_scratch.record->facts({std::nullopt, {ItemId(item)}}, day(on)).value().front().out;
    }
    /// Asked with all others it is told as by itself.
    [[nodiscard]] bool sameOfAll(const char* item, const char* on) {
        const auto all = m_scratch.record->facts({}, day(on)).value();
        return std::ranges::find(all, ItemId(item), &ItemFacts::id)->out == out(item, on);
    }
    /// Whether the last entry may have changed what is told of it.
    [[nodiscard]] bool lastTouched(const char* item) {
        const auto last = latestNumber(*m_scratch.record).value();
        const auto touched = touchedSince(*m_scratch.record, *m_scratch.record, last - 1).value();
        return touched.everything || touched.items.contains(ItemId(item));
    }
    [[nodiscard]] bool mayFly(const char* on) {
        return checkRigUp(*m_scratch.record, {ItemId("E1"), ItemId("B1"), ItemId("R2"), ItemId("C1")}, day(on), {})
            .value()
            .verdict.mayFly;
    }

private:
    Scratch m_scratch;
};

}

class TakenOutTest : public QObject {
    Q_OBJECT
private slots:
    void aPartOfWhatIsUnserviceableIsNotFittedElsewhere() {
        for (const char* apart : {"unserviceable", "quarantined", "condemned"}) {
            Yard yard;
            yard.say(state("2024-02-10", "R1", apart));
            QCOMPARE(yard.refused(fitted("2024-02-12", "V1", "R2")), std::string("kept-apart"));
            yard.say(removed("2024-02-12", "V1", "R1")); // nor by way of the shelf
            QCOMPARE(yard.refused(fitted("2024-02-13", "V1", "R2")), std::string("kept-apart"));
            const auto out = yard.out("V1", "2024-02-13");
            QVERIFY(out && out->takenOut && out->part == ItemId("R1"));
            QCOMPARE(spoken(reasonOf(*out)), std::string("taken out of R1, which was kept apart since 2024-02-10"));
            QCOMPARE(yard.refused(state("2024-02-14", "V1", "in-service")), std::string("not-released"));
            QCOMPARE(yard.refused(released("2024-02-14", "V1")), std::string());
            QCOMPARE(yard.refused(fitted("2024-02-15", "V1", "R2")), std::string());
            QVERIFY(yard.mayFly("2024-02-15"));
        }
    }
    void whereThePaperComesLateItGroundsWhatItIsIn() {
        Yard yard;
        yard.say(fitted("2024-02-12", "V1", "R2"));
        QVERIFY(yard.mayFly("2024-02-15"));
        yard.say(state("2024-02-10", "R1", "unserviceable"));
        QVERIFY(!yard.mayFly("2024-02-15"));
        yard.say(released("2024-02-14", "V1"));
        QVERIFY(yard.mayFly("2024-02-15"));
    }
    void whatCameOutBeforeIsNotKeptApart() {
        Yard yard;
        yard.say(removed("2024-02-09", "V1", "R1"));
        yard.say(state("2024-02-10", "R1", "unserviceable"));
        QVERIFY(!yard.out("V1", "2024-02-12"));
        QCOMPARE(yard.refused(fitted("2024-02-12", "V1", "R2")), std::string());
    }
    void whatWentBackInComesBackWithIt() {
        Yard yard;
        yard.say(state("2024-02-10", "R1", "unserviceable"));
        yard.say(removed("2024-02-11", "V1", "R1"));
        yard.say(released("2024-02-20", "R1")); // without it
        QVERIFY(yard.out("V1", "2024-02-21"));
        Yard whole;
        whole.say(state("2024-02-10", "R1", "unserviceable"));
        whole.say(removed("2024-02-11", "V1", "R1"));
        whole.say(fitted("2024-02-12", "V1", "R1"));
        whole.say(released("2024-02-20", "R1"));
        QVERIFY(!whole.out("V1", "2024-02-21"));
    }
    /// Nobody has to write that it is kept apart: the cylinder was too hot, and that is enough.
    void whatComesOffAnOverheatedCylinderIsKeptApart() {
        Yard yard;
        yard.say(fitted("2024-02-04", "V2", "C1"));
        yard.say(happened("2024-02-10", "C1", "over-temperature", 200));
        const auto in = yard.out("V2", "2024-02-10");
        QVERIFY(in && in->state == ServiceState::Condemned && in->part == ItemId("C1") && !in->takenOut);
        QVERIFY(!yard.out("V2", "2024-02-09"));
        QCOMPARE(yard.refused(fitted("2024-02-12", "V2", "C2")), std::string("kept-apart"));
        yard.say(removed("2024-02-12", "V2", "C1"));
        const auto out = yard.out("V2", "2024-02-13");
        QVERIFY(out && out->takenOut && out->state == ServiceState::Unserviceable && !out->hottest);
        QCOMPARE(spoken(reasonOf(*out)),
                 std::string("taken out of C1, which was overheated on 2024-02-10, and not released since"));
        QVERIFY(yard.sameOfAll("V2", "2024-02-13"));
        QCOMPARE(yard.refused(fitted("2024-02-13", "V2", "C2")), std::string("kept-apart"));
        QCOMPARE(yard.refused(state("2024-02-14", "V2", "in-service")), std::string("not-released"));
        QCOMPARE(yard.refused(released("2024-02-14", "V2")), std::string());
        QCOMPARE(yard.refused(fitted("2024-02-15", "V2", "C2")), std::string());
        QVERIFY(!yard.out("V2", "2024-02-15"));
    }
    void whatIsPutIntoACondemnedCylinderIsNoBetter() {
        Yard yard;
        yard.say(happened("2024-02-10", "C1", "fire", 200));
        yard.say(fitted("2024-02-11", "V2", "C1"));
        yard.say(removed("2024-02-12", "V2", "C1"));
        QVERIFY(yard.out("V2", "2024-02-13") && yard.out("V2", "2024-02-13")->by == Hurt::Overheated);
    }
    void whatComesOutAfterAFireIsKeptApartUntilItIsReleased() {
        Yard yard;
        yard.say(happened("2024-02-10", "R1", "fire"));
        QVERIFY(!yard.out("V1", "2024-02-10")); // it is in it still, and what is due on that grounds both
        yard.say(removed("2024-02-12", "V1", "R1"));
        const auto out = yard.out("V1", "2024-02-13");
        QVERIFY(out && out->takenOut && out->by == Hurt::Fire && out->part == ItemId("R1"));
        QCOMPARE(spoken(reasonOf(*out)),
                 std::string("taken out of R1 after the fire of 2024-02-10, and not released since"));
        QVERIFY(yard.sameOfAll("V1", "2024-02-13"));
        yard.say(inspected("2024-02-13", "R1")); // without it
        QCOMPARE(yard.refused(fitted("2024-02-14", "V1", "R2")), std::string("kept-apart"));
        QCOMPARE(yard.refused(released("2024-02-14", "V1")), std::string());
        QCOMPARE(yard.refused(fitted("2024-02-15", "V1", "R2")), std::string());
        QVERIFY(yard.mayFly("2024-02-15"));
    }
    void onceTheBurnerWasInspectedAfterTheFireItsPartsAreFree() {
        Yard yard;
        yard.say(happened("2024-02-10", "R1", "fire"));
        yard.say(line("requirement.done", "2024-02-11", {{"item", "R1"}, {"requirement", "any.look"}})); // only said
        yard.say(removed("2024-02-13", "V1", "R1"));
        QVERIFY(yard.out("V1", "2024-02-14"));
        yard.say(inspected("2024-02-12", "R1")); // the paper comes late
        QVERIFY(!yard.out("V1", "2024-02-14"));
        QCOMPARE(yard.refused(fitted("2024-02-14", "V1", "R2")), std::string());
    }
    void whatWentBackInBeforeTheInspectionIsFreeWithIt() {
        Yard yard;
        yard.say(happened("2024-02-10", "R1", "fire"));
        yard.say(removed("2024-02-11", "V1", "R1"));
        yard.say(fitted("2024-02-12", "V1", "R1"));
        yard.say(inspected("2024-02-13", "R1"));
        QVERIFY(!yard.out("V1", "2024-02-14"));
    }
    void whatCameOutBeforeTheFireAndOtherEventsKeepNothingApart() {
        Yard yard;
        yard.say(removed("2024-02-09", "V1", "R1"));
        yard.say(happened("2024-02-10", "R1", "fire"));
        QVERIFY(!yard.out("V1", "2024-02-12"));
        Yard other;
        other.say(happened("2024-02-10", "R1", "hard-landing"));
        other.say(removed("2024-02-11", "V1", "R1"));
        QVERIFY(!other.out("V1", "2024-02-12"));
    }
    /// What is told of the fleet is told anew for what such an entry may concern.
    void theScreenLooksAgainAtWhatWasInIt() {
        Yard yard;
        yard.say(removed("2024-02-12", "V1", "R1"));
        yard.say(happened("2024-02-10", "R1", "fire"));
        QVERIFY(yard.lastTouched("V1"));
        yard.say(inspected("2024-02-11", "R1"));
        QVERIFY(yard.lastTouched("V1"));
        yard.say(happened("2024-02-13", "C1", "over-temperature", 200));
        QVERIFY(yard.lastTouched("V2"));
    }
    /// 49 CFR 180.203, read: nothing restores it; that another one was meant is said by who may decide of a defect.
    void aCondemnationIsTakenBackByNobodyUnsaid() {
        Yard yard;
        yard.say(line("person.entitled", "2020-01-01",
                      {{"person", "Ada"}, {"capacity", "independent-certifying-staff"}, {"licence", "L 1"}}));
        yard.say(line("item.state", "2024-02-10", {{"item", "C2"}, {"state", "condemned"}, {"id", "c"}}));
        for (const char* other : {"X1", "X2", "X3"}) // then others write
            yard.say(line("item.entered", "2024-02-10", {{"item", other}, {"kind", "other"}}));
        const auto voided = [](const char* by) {
            json more{{"voids", "c"}, {"reason", "C1 was meant"}};
            if (*by)
                more["by"] = by;
            return line("entry.voided", "2024-02-11", more);
        };
        const auto corrected = [](json with) {
            return line("entry.corrected", "2024-02-11", {{"replaces", "c"}, {"with", with}});
        };
        QCOMPARE(yard.refused(voided("")), std::string("ground-unsaid"));
        QCOMPARE(yard.refused(voided("Bo")), std::string("may-not-grade-down"));
        QCOMPARE(yard.refused(corrected({{"state", "in-service"}})), std::string("ground-unsaid"));
        QCOMPARE(yard.refused(corrected({{"state", "unserviceable"}})), std::string("ground-unsaid"));
        QCOMPARE(yard.refused(corrected({{"item", "C1"}})), std::string("ground-unsaid"));
        QCOMPARE(yard.refused(voided("Ada")), std::string());
    }
};

CROWNRING_TEST(TakenOutTest, QCoreApplication)

}

#include "taken_out_test.moc"

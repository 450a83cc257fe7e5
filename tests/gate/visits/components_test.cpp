// SPDX-License-Identifier: GPL-3.0-or-later

/// Components that are kept apart, and cylinders: the cases of regulations.md 7.D with their clauses. Who and what is
/// invented.

#include "answers/parts/pool.h"
#include "component_lines.h"
#include "problem/faults/components/part_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace components_test {

using namespace crownring;
using namespace crownring::testing;
using nlohmann::json;

namespace {

std::string entered(const char* item, const char* kind, const char* made, const char* material = nullptr) {
    json more{{"item", item}, {"kind", kind}, {"made", made}};
    if (material)
        more["vessel"] = {{"material", material}};
    return line("item.entered", (std::string(made) + "-01").c_str(), more);
}
std::string adopted(const char* programme) {
    return line("programme.adopted", "2012-01-01", {{"programme", programme}, {"everything", true}});
}
std::string released(const char* on, const char* item, const char* form, const char* number) {
    return line("item.state", on,
                {{"item", item}, {"state", "in-service"}, {"release", {{"form", form}, {"number", number}}}});
}
std::string filled(const char* on, const char* item = "C1") {
    return line("cylinder.filled", on, {{"item", item}, {"level_percent", 80}});
}
std::string tested(const char* on, const char* requirement, const char* method = nullptr) {
    json more{{"item", "C1"}, {"requirement", requirement}, {"mark", "A123"}, {"ref", "T 7"}};
    if (method)
        more["method"] = method;
    return line("requirement.done", on, more);
}
std::string hot(double celsius) {
    return line("event.reported", "2020-06-01", {{"item", "C1"}, {"event", "over-temperature"}, {"temp_c", celsius}});
}

/// A record of these lines, and what it answers.
class Yard {
public:
    explicit Yard(const std::vector<std::string>& lines) {
        for (const auto& each : lines)
            say(each);
    }
    void say(const std::string& lines) { posted(*m_scratch.record, lines); }
    /// "" when it is taken.
    std::string refused(const std::string& lines) {
        const auto problems = problemsOf(*m_scratch.record, lines);
        if (problems.empty())
            return "";
        for (const auto& problem : problems)
            if (!isSaid(problem))
                return "not said: " + text(problem);
        return std::string(rowOf(problems.front().fault).name);
    }
    /// The days of fillings that are asked about.
    std::vector<std::string> filledOut() {
        std::vector<std::string> days;
        const auto questions = m_scratch.record->questions().value();
        for (const auto& each : questions)
            if (each.kind == Question::Kind::FilledOutOfService)
                days.push_back(each.stamp.at.on().iso());
        return days;
    }
    PoolItem pooled(const char* on, const char* item = "C1") {
        const auto items = pool(*m_scratch.record, {}, day(on)).value();
        for (const auto& each : items)
            if (each.facts.id == ItemId(item))
                return each;
        throw std::runtime_error("not in the pool");
    }

private:
    Scratch m_scratch;
};

const std::string aCylinder = entered("C1", "cylinder", "2012-06", "aluminium");

}

class ComponentsTest : public QObject {
    Q_OBJECT
private slots:
    /// D1: ADR P200 (10 years), 4.1.6.10 (not filled after becoming due), from memory.
    void aTestOfMay2016IsGoodThroughMay2026() {
        Yard yard({aCylinder, adopted("lpg-adr"), tested("2016-05-31", "adr.periodic-test")});
        QCOMPARE(yard.pooled("2026-05-31").transport.until.value().iso(), std::string("2026-05-31"));
        QVERIFY(yard.pooled("2026-05-31").fillable);
        QVERIFY(!yard.pooled("2026-06-01").fillable);
        QCOMPARE(yard.refused(filled("2026-06-01")), std::string("test-past"));
        QCOMPARE(yard.refused(filled("2026-05-31")), std::string());
    }
    /// D4: 49 CFR 180.209(e), from memory: twelve years at first.
    void aUnitedStatesCylinderMadeInJune2012IsDueInJune2024() {
        Yard yard({aCylinder, adopted("lpg-us-dot")});
        QCOMPARE(yard.pooled("2024-01-01").transport.until.value().iso(), std::string("2024-06-30"));
    }
    /// 49 CFR 180.209(e), (g), from memory: 12, 10 or 5 years by how it was done.
    void theMethodDecidesTheNextDate() {
        for (const auto& [method, until] :
             {std::pair("volumetric", "2036-05-31"), {"proof", "2034-05-31"}, {"external-visual", "2029-05-31"}}) {
            Yard yard({aCylinder, adopted("lpg-us-dot"), tested("2024-05-10", "dot.requalification", method)});
            QCOMPARE(yard.pooled("2025-01-01").transport.until.value().iso(), std::string(until));
        }
    }
    /// D6: 49 CFR 180.207(a)(2), read: filled before, it may remain in service until it is emptied.
    void anExpiredCylinderMayFlyUntilItIsEmptyAndIsNotFilledAgain() {
        Yard yard({aCylinder, adopted("lpg-adr"), adopted("cylinder-airworthiness"),
                   tested("2016-05-31", "adr.periodic-test"), tested("2022-05-31", "cylinder.shell"),
                   tested("2022-05-31", "cylinder.relief-valve"), filled("2026-05-20")});
        const auto now = yard.pooled("2026-06-10");
        QCOMPARE(now.airworthy.standing, std::optional(Standing::Clear));
        QCOMPARE(now.airworthy.until.value().iso(), std::string("2032-05-31"));
        QCOMPARE(now.transport.standing, std::optional(Standing::Lapsed));
        QCOMPARE(now.component.filled.value().iso(), std::string("2026-05-20"));
        QVERIFY(!now.fillable);
        QCOMPARE(yard.refused(filled("2026-06-10")), std::string("test-past"));
    }
    /// Common practice, no source: what nobody may fly is not filled.
    void whatIsGroundedIsNotFilled() {
        Yard yard({aCylinder, adopted("lpg-adr"), adopted("cylinder-airworthiness"),
                   tested("2020-05-31", "adr.periodic-test"), tested("2020-05-31", "cylinder.shell"),
                   tested("2020-05-31", "cylinder.relief-valve")});
        QVERIFY(yard.pooled("2020-06-02").fillable);
        yard.say(line("defect.found", "2020-06-02",
                      {{"item", "C1"}, {"defect", "D-1"}, {"severity", "grounding"}, {"what", "a dent"}}));
        const auto grounded = yard.pooled("2020-06-02");
        QVERIFY(!grounded.fillable);
        QCOMPARE(grounded.airworthy.standing, std::optional(Standing::Lapsed));
        QVERIFY(!grounded.airworthy.until); // no later day beside what stands now
        QCOMPARE(yard.refused(filled("2020-06-02")), std::string("filled-grounded"));
        QCOMPARE(yard.refused(filled("2020-06-01")), std::string());
    }
    void afterAFireItIsLookedAtBeforeItIsFilled() {
        Yard yard({aCylinder, adopted("lpg-adr"), adopted("cylinder-airworthiness"),
                   tested("2020-05-31", "adr.periodic-test"), tested("2020-05-31", "cylinder.shell"),
                   tested("2020-05-31", "cylinder.relief-valve")});
        yard.say(line("event.reported", "2020-06-01", {{"item", "C1"}, {"event", "fire"}}));
        QVERIFY(!yard.pooled("2020-06-02").fillable && !yard.pooled("2020-06-02").airworthy.until);
        QCOMPARE(yard.refused(filled("2020-06-02")), std::string("filled-grounded"));
        yard.say(tested("2020-06-03", "cylinder.shell"));
        yard.say(tested("2020-06-03", "cylinder.relief-valve"));
        QCOMPARE(yard.refused(filled("2020-06-04")), std::string());
        QVERIFY(yard.pooled("2020-06-04").airworthy.until.value() > day("2020-06-04"));
    }
    void ofWhatRanOutTheDayIsTold() {
        Yard yard({aCylinder, adopted("lpg-adr"), adopted("cylinder-airworthiness"),
                   tested("2020-05-31", "adr.periodic-test"), tested("2012-05-31", "cylinder.shell"),
                   tested("2018-05-31", "cylinder.relief-valve")});
        QCOMPARE(yard.pooled("2022-06-01").airworthy.until.value().iso(), std::string("2022-05-31"));
        QVERIFY(yard.pooled("2022-06-01").fillable); // what bars flight bars no filling (02)
    }
    void whatNothingIsShownOfIsNotFilled() {
        Yard yard({line("item.entered", "2012-01-01", {{"item", "C1"}, {"kind", "cylinder"}}), adopted("lpg-adr")});
        QVERIFY(!yard.pooled("2020-01-01").fillable);
        QCOMPARE(yard.refused(filled("2020-01-01")), std::string("test-not-shown"));
    }
    void aBasketIsNotFilled() {
        Yard yard({entered("B1", "basket", "2012-06")});
        QCOMPARE(yard.refused(filled("2020-01-01", "B1")), std::string("no-cylinder"));
    }
    /// 49 CFR 180.203, read: aluminium at 176 °C; 180.205(i), from memory: condemned.
    void anOverheatedAluminiumCylinderIsCondemned() {
        Yard yard({aCylinder, adopted("lpg-us-dot"), hot(176)});
        QVERIFY(yard.pooled("2020-06-02").condemned);
        QVERIFY(!yard.pooled("2020-06-02").fillable);
        QCOMPARE(yard.refused(filled("2020-06-02")), std::string("filled-hot"));
        yard.say(tested("2020-07-01", "dot.requalification", "volumetric"));
        QCOMPARE(yard.refused(filled("2020-07-02")), std::string("filled-hot"));
    }
    /// 49 CFR 180.203, from memory: steel at 343 °C.
    void steelBearsMore() {
        Yard yard({entered("C1", "cylinder", "2012-06", "steel"), adopted("lpg-us-dot"), hot(342)});
        QVERIFY(!yard.pooled("2020-06-02").condemned);
        yard.say(hot(343));
        QVERIFY(yard.pooled("2020-06-02").condemned);
    }
    /// 49 CFR 180.203, read: may not be restored by repair, rebuilding, requalification, or any other procedure.
    void whatIsCondemnedNeverComesBack() {
        Yard yard({aCylinder, adopted("lpg-us-dot"), state("2020-06-01", "C1", "condemned")});
        QCOMPARE(yard.refused(released("2020-07-01", "C1", "easa-form-1", "QE 1")), std::string("condemned"));
        QCOMPARE(yard.refused(filled("2020-07-01")), std::string("filled-out"));
        yard.say(state("2021-01-01", "C1", "laid-up"));
        QVERIFY(yard.pooled("2021-02-01").condemned);
    }
    void whatIsCondemnedStaysSoWhateverIsSaidOfADayAfter() {
        Yard yard({aCylinder, state("2020-07-01", "C1", "laid-up"), state("2020-08-01", "C1", "in-service")});
        QVERIFY(!yard.pooled("2020-09-01").condemned);
        yard.say(state("2020-06-01", "C1", "condemned")); // its paper comes late
        QVERIFY(yard.pooled("2020-09-01").condemned);
    }
    /// Order of arrival does not matter (02): what the gate would have refused is asked about.
    void whatWasFilledBeforeItsCondemnationCameIsQuestioned() {
        Yard yard({aCylinder, adopted("lpg-us-dot"), filled("2020-06-10"), filled("2020-07-01")});
        QCOMPARE(yard.filledOut(), std::vector<std::string>());
        yard.say(state("2020-06-15", "C1", "condemned"));
        QCOMPARE(yard.filledOut(), std::vector<std::string>{"2020-07-01"});
    }
    /// ML.A.504, from memory.
    void anUnserviceableComponentComesBackWithAReleaseOfItsOwn() {
        for (const char* apart : {"unserviceable", "quarantined"}) {
            Yard yard({aCylinder, state("2020-06-01", "C1", apart)});
            QCOMPARE(yard.refused(state("2020-07-01", "C1", "in-service")), std::string("not-released"));
            QCOMPARE(yard.refused(released("2020-07-01", "C1", "owner-accepted", "x")), std::string("not-released"));
            QCOMPARE(yard.refused(released("2020-07-01", "C1", "inspection", "V 1")), std::string("not-released-by"));
            yard.say(state("2020-06-15", "C1", "away")); // being sent to the shop is no release
            QCOMPARE(yard.refused(state("2020-07-01", "C1", "in-service")), std::string("not-released"));
            QCOMPARE(yard.refused(released("2020-07-01", "C1", "easa-form-1", "QE 1")), std::string());
        }
    }
    /// ML.A.504, from memory: what is kept apart comes back with a release, in whatever order the words arrive.
    void whatIsKeptApartLateIsNotBackByAnEarlierWord() {
        for (const char* apart : {"unserviceable", "quarantined"}) {
            Yard yard({aCylinder, state("2020-05-01", "C1", "laid-up"), state("2020-07-01", "C1", "in-service")});
            QCOMPARE(yard.refused(state("2020-06-01", "C1", apart)), std::string("back-since"));
            QCOMPARE(yard.refused(state("2020-08-01", "C1", apart)), std::string());
            Yard withPaper(
                {aCylinder, state("2020-05-01", "C1", "laid-up"), released("2020-07-01", "C1", "easa-form-1", "Q")});
            QCOMPARE(withPaper.refused(state("2020-06-01", "C1", apart)), std::string());
        }
    }
    void whatIsKeptApartDoesNotComeBackByTakingTheWordBack() {
        const auto word = [](const char* id, const char* by) {
            return line("item.state", "2020-06-01", {{"item", "C1"}, {"state", "quarantined"}, {"id", id}, {"by", by}});
        };
        const auto voided = [](const char* by) {
            return line("entry.voided", "2020-06-02", {{"voids", "q"}, {"by", by}, {"reason", "not so"}});
        };
        const auto corrected = [](json with) {
            return line("entry.corrected", "2020-06-02",
                        {{"replaces", "q"}, {"by", "Ada"}, {"note", "n"}, {"with", with}});
        };
        Yard slip({aCylinder, word("q", "Ada")});
        QCOMPARE(slip.refused(voided("Bo")), std::string("taken-back"));
        QCOMPARE(slip.refused(voided("Ada")), std::string()); // his own, at once
        Yard yard({aCylinder, word("q", "Ada")});
        for (const char* other : {"X1", "X2", "X3"}) // then others write
            yard.say(line("item.entered", "2020-06-02", {{"item", other}, {"kind", "other"}}));
        QCOMPARE(yard.refused(voided("Ada")), std::string("taken-back"));
        QCOMPARE(yard.refused(corrected({{"state", "laid-up"}})), std::string("taken-back"));
        QCOMPARE(yard.refused(corrected({{"state", "in-service"}})), std::string("taken-back"));
        QCOMPARE(yard.refused(corrected({{"on", "2030-01-01"}})), std::string("taken-back"));
        QCOMPARE(yard.refused(corrected({{"state", "unserviceable"}})), std::string());
        yard.say(released("2020-07-01", "C1", "easa-form-1", "QE 1"));
        QCOMPARE(yard.refused(voided("Bo")), std::string()); // it came back with its release
    }
    void whatIsKeptApartIsNotFitted() {
        Yard yard({aCylinder, entered("V1", "other", "2019-01"), state("2020-06-01", "V1", "quarantined")});
        QCOMPARE(yard.refused(fitted("2020-06-02", "V1", "C1")), std::string("kept-apart"));
        QCOMPARE(
            yard.refused(released("2020-06-03", "V1", "faa-8130-3", "7") + "\n" + fitted("2020-06-03", "V1", "C1")),
            std::string());
    }
    void whatIsFittedComesOffBeforeItIsKeptApart() {
        Yard yard({aCylinder, entered("V1", "other", "2019-01"), fitted("2020-01-01", "V1", "C1")});
        const auto quarantined = state("2020-06-01", "V1", "quarantined");
        QCOMPARE(yard.refused(quarantined), std::string("still-fitted"));
        QCOMPARE(yard.refused(removed("2020-06-01", "V1", "C1") + "\n" + quarantined), std::string());
    }
    void nothingIsAPartOfItself() {
        Yard yard({aCylinder, entered("V1", "other", "2019-01"), entered("O1", "other", "2019-01"),
                   fitted("2020-01-01", "V1", "C1"), fitted("2020-01-01", "O1", "V1")});
        QCOMPARE(yard.refused(fitted("2020-02-01", "C1", "O1")), std::string("carries-itself"));
        QCOMPARE(yard.refused(fitted("2019-02-01", "C1", "O1")), std::string("carries-itself"));
        QCOMPARE(yard.refused(fitted("2020-02-01", "C1", "C1")), std::string("carries-itself"));
    }
};

CROWNRING_TEST(ComponentsTest, QCoreApplication)

}

#include "components_test.moc"

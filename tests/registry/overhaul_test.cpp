// SPDX-License-Identifier: GPL-3.0-or-later

/// Time since overhaul, as a component's papers state it (EASA Form 1, block 12, from memory).

#include "registry/overhaul.h"
#include "test_class.h"

#include <QtTest>

namespace overhaul_test {

using namespace crownring;

namespace {

Accomplishment done(const char* requirement, const char* on, const Figures& clock) {
    Accomplishment each;
    each.requirement = RequirementId(requirement);
    each.stamp.at = Moment::startOf(CivilDate::parse(on).value());
    each.clock = clock;
    return each;
}

ItemFacts burner() {
    ItemFacts facts;
    facts.clock = {Minutes(90'000), Landings(900), Inflations(1000)};
    return facts;
}

}

class OverhaulTest : public QObject {
    Q_OBJECT
private slots:
    void ofTheLastOneTheDifferenceOfTheClocksIsTold() {
        auto facts = burner();
        facts.done = {done("burner.overhaul", "2018-04-01", {Minutes(30'000), Landings(300), Inflations(300)}),
                      done("burner.overhaul", "2024-04-01", {Minutes(84'000), Landings(850), Inflations(940)}),
                      done("burner.service", "2025-04-01", {Minutes(89'000), Landings(890), Inflations(990)})};
        const auto since = sinceOverhaul(facts);
        QVERIFY(since.has_value());
        QCOMPARE(since->done.iso(), std::string("2024-04-01"));
        QCOMPARE(since->use, (Figures{Minutes(6000), Landings(50), Inflations(60)}));
    }
    void whatEitherClockDoesNotSayIsUnknown() {
        auto facts = burner();
        facts.done = {done("overhaul", "2024-04-01", {Minutes(84'000), {}, Inflations(940)})};
        facts.clock.inflations.reset();
        QCOMPARE(sinceOverhaul(facts)->use, (Figures{Minutes(6000), {}, {}}));
    }
    void withoutOneNothingIsTold() {
        auto facts = burner();
        facts.done = {done("burner.overhauled-seals", "2024-04-01", facts.clock),
                      done("burner.service", "2024-04-01", facts.clock)};
        QVERIFY(!sinceOverhaul(facts));
    }
};

CROWNRING_TEST(OverhaulTest)

}

#include "overhaul_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/release_phrase.h"
#include "bench/release/release_text.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>

namespace release_text_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

ReleaseFacts whole(Visit visit) {
    ReleaseFacts facts;
    facts.visit = visit;
    facts.registration = "QE-ABC";
    facts.title = "Morning Glass";
    facts.envelopeType = "T-90";
    facts.envelopeSerial = "1042";
    facts.items = {{ItemKind::Envelope, "envelope 1042", "Envelope 1042", Minutes(24750)},
                   {ItemKind::Basket, "basket 88", "Basket 88", std::nullopt},
                   {ItemKind::Burner, "burner 7", "Burner 7", Minutes(24750)},
                   {ItemKind::Cylinder, "cylinder 3", "Cylinder 3", Minutes(24750)}};
    facts.extent = {"All lines of the checklist"};
    facts.manuals = {"T-90 manual, issue 7"};
    facts.date = CivilDate::fromYearMonthDay(2026, 3, 14);
    facts.totalTime = Minutes(24750);
    facts.highestTemperature = "121 to below 127 °C";
    facts.person = "Ada Reed";
    facts.capacity =
        regimeOf(visit) == Regime::PartMl ? Capacity::IndependentCertifyingStaff : Capacity::InspectionAuthorization;
    facts.licence = "L-77";
    return facts;
}

std::vector<std::string> missingFrom(const ReleaseFacts& facts) {
    std::vector<std::string> rules;
    for (const auto& each : missing(facts))
        rules.push_back(each.rule);
    return rules;
}

const auto caution = spoken(Phrase{ReleasePhrase::CautionText, {}});

bool hasHeading(const std::vector<ReleaseSection>& sections, const char* heading) {
    return std::any_of(sections.begin(), sections.end(),
                       [&](const auto& each) { return spoken(each.heading) == heading; });
}

std::string allText(const std::vector<ReleaseSection>& sections) {
    std::string text;
    for (const auto& section : sections) {
        text += spoken(section.heading) + "\n";
        for (const auto& paragraph : section.paragraphs)
            text += spoken(paragraph) + "\n";
    }
    return text;
}

}

class ReleaseTextTest : public QObject {
    Q_OBJECT
private slots:
    // 14 CFR 43.11(a)(4), read: "I certify that this aircraft has been inspected in accordance with (insert type)
    // inspection and was determined to be in airworthy condition."
    void anAirworthyAnnualIsCertifiedInTheWordsOfTheRule() {
        const auto annual = statementOf(whole(Visit::UsAnnual));
        QCOMPARE(annual.text, std::string("I certify that this aircraft has been inspected in accordance with annual "
                                          "inspection and was determined to be in airworthy condition."));
        QCOMPARE(annual.source, std::string("14 CFR 43.11(a)(4)"));
        QCOMPARE(
            statementOf(whole(Visit::UsHundredHour)).text,
            std::string("I certify that this aircraft has been inspected in accordance with 100-hour inspection and "
                        "was determined to be in airworthy condition."));
    }

    // 14 CFR 43.11(a)(5), read: "… and a list of discrepancies and unairworthy items dated (date) has been provided for
    // the aircraft owner or operator."
    void anUnairworthyOneSaysThatTheListWasGiven() {
        auto facts = whole(Visit::UsAnnual);
        facts.outcome = Outcome::Discrepancies;
        facts.discrepancies = {"Grab test below the limit at gore 3, row 9"};
        facts.discrepanciesDated = CivilDate::fromYearMonthDay(2026, 3, 15);
        QCOMPARE(
            statementOf(facts).text,
            std::string("I certify that this aircraft has been inspected in accordance with annual inspection and a "
                        "list of discrepancies and unairworthy items dated 2026-03-15 has been provided for the "
                        "aircraft owner or operator."));
        QVERIFY(missing(facts).empty());
        facts.discrepanciesDated.reset();
        facts.discrepancies.clear();
        QCOMPARE(missingFrom(facts).size(), std::size_t{2});
    }

    // AMC M.A.801(e)1(a), (b), read in a UK consolidated copy of Part-M; with Part-ML from memory.
    void partMlHasAStatementForStaffAndOneForTheOwner() {
        QCOMPARE(statementOf(whole(Visit::PartMlInspection)).text,
                 std::string("Certifies that the work specified except as otherwise specified was carried out in "
                             "accordance with Part-ML and in respect to that work the aircraft is considered ready for "
                             "release to service."));
        auto facts = whole(Visit::PartMlOwnerTasks);
        facts.capacity = Capacity::PilotOwner;
        QCOMPARE(
            statementOf(facts).text,
            std::string("Certifies that the limited pilot-owner maintenance specified except as otherwise specified "
                        "was carried out in accordance with Part-ML and in respect to that work the aircraft is "
                        "considered ready for release to service."));
        facts.capacity = Capacity::IndependentCertifyingStaff;
        QVERIFY(statementOf(facts).text.starts_with("Certifies that the work specified"));
    }

    // 14 CFR 43.11(a)(4), read: the statement is for the aircraft. What is less is named, and no more is stated.
    void lessThanAnAircraftIsNamed() {
        for (const auto without : {ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder}) {
            for (const auto visit : {Visit::UsAnnual, Visit::PartMlInspection}) {
                auto facts = whole(visit);
                std::erase_if(facts.items, [&](const auto& item) { return item.kind == without; });
                QVERIFY(!isAircraft(facts));
                const auto text = statementOf(facts).text;
                QVERIFY2(text.find("aircraft the following alone (") != std::string::npos, text.c_str());
                for (const auto& item : facts.items)
                    QVERIFY(text.find(item.named) != std::string::npos);
            }
        }
    }
    // ML.A.502 (read), ML.A.802 (from memory): a component is released on a Form 1 or at the aircraft.
    void itemsOnNoBalloonHaveARecordOfWorkOnly() {
        for (const auto visit : {Visit::PartMlInspection, Visit::PartMlSpecial, Visit::PartMlOwnerTasks,
                                 Visit::UsAnnual, Visit::UsHundredHour}) {
            auto facts = whole(visit);
            facts.registration.clear();
            const auto statement = statementOf(facts);
            QVERIFY(statement.text.empty() && statement.source.empty());
            QVERIFY(spoken(statement.because.value()).starts_with("Record of "));
        }
        auto facts = whole(Visit::PartMlInspection);
        facts.registration.clear();
        facts.totalTime.reset();
        QVERIFY(missing(facts).empty());
        QVERIFY(hasHeading(sectionsOf(facts), "Items") && !hasHeading(sectionsOf(facts), "Aircraft"));
    }

    // 14 CFR 43.9(a)(4), from memory.
    void preventiveMaintenanceIsApprovedByItsSignature() {
        const auto statement = statementOf(whole(Visit::UsOwnerTasks));
        QVERIFY(statement.text.find("only for the work performed") != std::string::npos);
        QVERIFY(statement.source.starts_with("14 CFR 43.9(a)(4)"));
    }

    void whatIsNotReleasedHasNoStatementOfRelease() {
        for (const auto visit : allVisits) {
            auto facts = whole(visit);
            facts.outcome = Outcome::Abandoned;
            QVERIFY(statementOf(facts).text.empty() && statementOf(facts).because);
            facts.outcome = Outcome::Discrepancies;
            QVERIFY(statementOf(facts).text.find("airworthy condition") == std::string::npos);
            QVERIFY(statementOf(facts).text.find("ready for release") == std::string::npos);
            QVERIFY(statementOf(facts).text.find("approval for return") == std::string::npos);
        }
    }

    void aWholeReleaseLacksNothing() {
        for (const auto visit : allVisits)
            QVERIFY2(missing(whole(visit)).empty(), visitName(visit).data());
    }

    // 14 CFR 43.11(a)(1) to (3), read: type and extent; date and aircraft total time; signature, certificate number,
    // kind.
    void eachContentOfAnAmericanInspectionIsAskedFor() {
        const auto lacks = [](auto spoil) {
            auto facts = whole(Visit::UsAnnual);
            spoil(facts);
            return missingFrom(facts);
        };
        const auto only = [](const char* rule) { return std::vector<std::string>{rule}; };
        QCOMPARE(lacks([](auto& facts) { facts.extent.clear(); }), only("14 CFR 43.11(a)(1)"));
        QCOMPARE(lacks([](auto& facts) { facts.date.reset(); }), only("14 CFR 43.11(a)(2)"));
        QCOMPARE(lacks([](auto& facts) { facts.totalTime.reset(); }), only("14 CFR 43.11(a)(2)"));
        QCOMPARE(lacks([](auto& facts) { facts.licence.clear(); }), only("14 CFR 43.11(a)(3)"));
        QCOMPARE(lacks([](auto& facts) { facts.capacity.reset(); }), only("14 CFR 43.11(a)(3)"));
        QCOMPARE(lacks([](auto& facts) { facts.person.clear(); }), only("14 CFR 43.11(a)(3)"));
        QVERIFY(lacks([](auto& facts) { facts.manuals.clear(); }).empty());
    }

    // "Maintenance record entries only require total time references when an inspection is accomplished (Ref 43.11)":
    // trade article, read.
    void aPreventiveEntryNeedsNoTotalTime() {
        auto facts = whole(Visit::UsOwnerTasks);
        facts.totalTime.reset();
        facts.highestTemperature.reset();
        QVERIFY(missing(facts).empty());
        facts.extent.clear();
        QCOMPARE(missingFrom(facts), std::vector<std::string>{"14 CFR 43.9(a)(1) (from memory)"});
    }

    // ML.A.801(e), from memory; ML.A.401(a), read.
    void aEuropeanReleaseAsksForItsDataToo() {
        auto facts = whole(Visit::PartMlInspection);
        facts.manuals.clear();
        QCOMPARE(missingFrom(facts), std::vector<std::string>{"ML.A.401(a)"});
        facts = whole(Visit::PartMlOwnerTasks);
        facts.licence.clear();
        QCOMPARE(missingFrom(facts), std::vector<std::string>{"ML.A.801(e) (from memory)"});
    }

    // "Upon completion, inspection must be recorded showing date, total flight time, maximum temperature indicated on
    // recording label": a manufacturer's annual checklist, read; no law.
    void theHighestTemperatureIsAskedForByTheTypeNotByLaw() {
        auto facts = whole(Visit::PartMlInspection);
        facts.highestTemperature.reset();
        QCOMPARE(missing(facts).size(), std::size_t{1});
        QVERIFY(!missing(facts).front().law);
        facts.envelopeType.clear();
        facts.items.erase(facts.items.begin());
        QVERIFY(missing(facts).empty());
    }

    void theReleaseSaysAllThatItWasGiven() {
        auto facts = whole(Visit::PartMlInspection);
        facts.deferred = {"Scoop torn at one fastener, until 2026-06-01"};
        facts.limitations = "No flight with the scoop fitted";
        const auto sections = sectionsOf(facts);
        const auto text = allText(sections);
        for (const auto* words : {"QE-ABC", "Morning Glass", "T-90", "1042", "All lines of the checklist",
                                  "T-90 manual, issue 7", "2026-03-14", "412:30 h", "Basket 88: not known",
                                  "121 to below 127 °C", "Scoop torn", "No flight with the scoop", "Ada Reed",
                                  "independent certifying staff", "L-77", "Annual or 100-hour inspection (Part-ML)"})
            QVERIFY2(text.find(words) != std::string::npos, words);
        QVERIFY(!hasHeading(sections, "Discrepancies and unairworthy items"));
        QCOMPARE(spoken(sections.back().paragraphs.front()), caution);
    }

    void whatIsUnknownIsSaidToBeUnknown() {
        ReleaseFacts facts;
        facts.registration = "QE-ABC";
        QVERIFY(allText(sectionsOf(facts)).find("(the envelope's clock): not known") != std::string::npos);
        QVERIFY(missing(facts).size() >= 6);
    }

    void theCautionNeverDeclaresABalloonAirworthy() {
        QVERIFY(caution.find("never declares a balloon airworthy") != std::string::npos);
    }
};

CROWNRING_TEST(ReleaseTextTest)

}

#include "release_text_test.moc"

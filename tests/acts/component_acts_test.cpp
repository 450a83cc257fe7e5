// SPDX-License-Identifier: GPL-3.0-or-later

/// Acts on components that are more than one entry are posted whole or not at all.

#include "acts/components.h"
#include "acts/directives.h"
#include "answers/directives/book.h"
#include "problem/faults/components/part_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <utility>

namespace component_acts_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed =
    R"({"entry":"item.entered","on":"2025-01-01","item":"C1","kind":"cylinder","serial":"1"}
{"entry":"item.entered","on":"2025-01-01","item":"C2","kind":"cylinder","serial":"A-2"}
{"entry":"item.entered","on":"2025-01-01","item":"V1","kind":"other","type":"Relief valve","serial":"11"}
{"entry":"item.fitted","on":"2025-01-02","item":"V1","to":"C1"}
{"entry":"directive.issued","on":"2025-02-01","directive":"AD-1","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2025-03-01","source":"invented for tests","applies":{"kinds":["cylinder"],"serials":[{"from":"1","to":"9"}]},"first":{"before_flight":true}})";

Replacing replacing(const char* on) {
    Replacing replacing;
    replacing.off = ItemId("V1");
    replacing.on = ItemId(on);
    replacing.unserviceable = true;
    replacing.day = *CivilDate::parse("2025-04-01");
    replacing.by = "Ada Rhos";
    return replacing;
}

}

class ComponentActsTest : public QObject {
    Q_OBJECT

    std::unique_ptr<Scratch> m_scratch;
    [[nodiscard]] Record& record() const { return *m_scratch->record; }
    [[nodiscard]] ItemFacts facts(const char* item) const {
        return record().facts({std::nullopt, {ItemId(item)}}, *CivilDate::parse("2025-12-31")).value().front();
    }

private slots:
    void init() {
        m_scratch = std::make_unique<Scratch>();
        posted(record(), shed);
    }
    void cleanup() { m_scratch.reset(); }

    void aNewPartComesIntoTheRecordAsItGoesOn() {
        auto act = replacing("V2");
        ItemEntered entered;
        entered.item = ItemId("V2");
        entered.kind = ItemKind::Other;
        entered.serial = "12";
        act.enters = entered;
        act.release = PartRelease{ReleaseForm::EasaForm1, "QE-1"};
        const auto receipt = replaceItem(record(), record(), act);
        QVERIFY(receipt && receipt->ids.size() == 4); // entered, off, on, kept apart
        QVERIFY(facts("V2").carrier == ItemId("C1"));
        QVERIFY(!facts("V1").carrier && facts("V1").out->state == ServiceState::Unserviceable);
    }
    void whatIsNotInTheRecordReplacesNothing() {
        QVERIFY(!replaceItem(record(), record(), replacing("V9")));
        QVERIFY(facts("V1").carrier == ItemId("C1") && !facts("V1").out); // and nothing was half written
    }

    void onlyALoosePieceOfItsKindGoesOn() {
        posted(record(), R"({"entry":"item.entered","on":"2025-01-01","item":"V2","kind":"other"}
{"entry":"item.entered","on":"2025-01-01","item":"V3","kind":"other"}
{"entry":"item.fitted","on":"2025-01-02","item":"V3","to":"C2"})");
        const auto refusedFor = [&](const char* on) {
            const auto receipt = replaceItem(record(), record(), replacing(on));
            return receipt ? std::string() : std::string(rowOf(receipt.error().front().fault).name);
        };
        QCOMPARE(refusedFor("V1"), std::string("replaces-itself"));
        QCOMPARE(refusedFor("C2"), std::string("other-kind"));
        QCOMPARE(refusedFor("V3"), std::string("fitted-elsewhere"));
        QVERIFY(facts("V1").carrier == ItemId("C1") && facts("V3").carrier == ItemId("C2"));
        QCOMPARE(refusedFor("V2"), std::string());
    }
    void whatIsSentOrComesBackIsNamedOnce() {
        const auto nameOf = [](const Results<Receipt>& receipt) {
            return receipt ? std::string() : std::string(rowOf(receipt.error().front().fault).name);
        };
        Sending sending{{ItemId("C1"), ItemId("C1")}, "Test House", *CivilDate::parse("2025-04-01"), "Ada Rhos"};
        QCOMPARE(nameOf(sendAway(record(), record(), sending)), std::string("named-twice"));
        sending.to = " "; // away with nobody it would be nowhere
        QCOMPARE(nameOf(sendAway(record(), record(), sending)), std::string("blank"));
        sending.to = "Test House";
        sending.items = {ItemId("C1"), ItemId("C2")};
        QCOMPARE(nameOf(sendAway(record(), record(), sending)), std::string());
        Returning returning;
        returning.items = {ItemId("C1")};
        returning.condemned = {ItemId("C1")};
        returning.day = *CivilDate::parse("2025-04-20");
        QCOMPARE(nameOf(takeBack(record(), record(), returning)), std::string("named-twice"));
        QVERIFY(facts("C1").out->state == ServiceState::Away);
        returning.condemned = {ItemId("C2")};
        QCOMPARE(nameOf(takeBack(record(), record(), returning)), std::string());
    }
    /// 49 CFR 180.203, read: no test brings it back.
    void whatWasOverheatedComesBackCondemnedOrNotAtAll() {
        posted(record(), R"({"entry":"event.reported","on":"2025-03-01","item":"C1","event":"fire","temp_c":350})");
        const Sending sending{{ItemId("C1")}, "Test House", *CivilDate::parse("2025-04-01"), "Ada Rhos"};
        QVERIFY(sendAway(record(), record(), sending));
        Returning returning;
        returning.items = {ItemId("C1")};
        returning.day = *CivilDate::parse("2025-04-20");
        const auto good = takeBack(record(), record(), returning);
        QVERIFY(!good && good.error().front().fault == Fault(PartFault::Condemned));
        returning.condemned = std::exchange(returning.items, {});
        QVERIFY(takeBack(record(), record(), returning));
        QVERIFY(facts("C1").out->state == ServiceState::Condemned);
    }
    /// What the program posts as it happens carries the time (02, "Moments").
    void whatCameBackThisMorningIsQuarantinedBeforeNoon() {
        const auto today = *CivilDate::parse("2025-04-01");
        QVERIFY(sendAway(record(), record(), {{ItemId("C1")}, "Test House", today, "Ada Rhos", TimeOfDay(10, 50)}));
        Returning returning;
        returning.items = {ItemId("C1")};
        returning.requirement = RequirementId("adr.periodic-test");
        returning.day = today;
        returning.time = TimeOfDay(10, 58);
        const auto back = takeBack(record(), record(), returning);
        QVERIFY(back && back->ids.size() == 2);
        for (const auto& id : back->ids)
            QVERIFY(record().line(id).value()->entry.time == TimeOfDay(10, 58));
        posted(
            record(),
            R"({"entry":"item.state","on":"2025-04-01","time":"11:10Z","by":"Ada Rhos","item":"C1","state":"quarantined"})");
        QVERIFY(facts("C1").out && facts("C1").out->state == ServiceState::Quarantined);
    }
    void whatIsSentAndComesBackInOneMinuteIsBack() {
        const auto today = *CivilDate::parse("2025-04-01");
        const TimeOfDay now(10, 50);
        QVERIFY(sendAway(record(), record(), {{ItemId("C1"), ItemId("C2")}, "Test House", today, "Ada Rhos", now}));
        Returning returning;
        returning.items = {ItemId("C1")};
        returning.condemned = {ItemId("C2")};
        returning.day = today;
        returning.time = now;
        QVERIFY(takeBack(record(), record(), returning));
        QVERIFY(!facts("C1").out);
        QVERIFY(facts("C2").out->state == ServiceState::Condemned);
    }
    void aTestIsNotBeforeTheSendingNorAfterTheReturn() {
        QVERIFY(
            sendAway(record(), record(), {{ItemId("C1")}, "Test House", *CivilDate::parse("2025-04-01"), "Ada Rhos"}));
        Returning returning;
        returning.items = {ItemId("C1")};
        returning.requirement = RequirementId("adr.periodic-test");
        returning.day = *CivilDate::parse("2025-04-20");
        const auto refusedFor = [&](const char* tested) {
            returning.tested = CivilDate::parse(tested).value();
            const auto receipt = takeBack(record(), record(), returning);
            return receipt ? std::string()
                           : std::string(rowOf(std::get<PartFault>(receipt.error().front().fault)).name);
        };
        QCOMPARE(refusedFor("2025-03-31"), std::string("tested-before-sent"));
        QCOMPARE(refusedFor("2025-04-21"), std::string("tested-after-back"));
        QVERIFY(facts("C1").out->state == ServiceState::Away);
        QCOMPARE(refusedFor("2025-04-01"), std::string());
    }
    /// Number, signatory and licence make it a paper (02, "Evidence").
    void aTestThatIsSignedOnItsDocumentIsNoOpenQuestion() {
        const auto evidenceWith = [&](const char* item, const char* licence) {
            const auto day = *CivilDate::parse("2025-04-01");
            Returning returning;
            returning.items = {ItemId(item)};
            returning.requirement = RequirementId("adr.periodic-test");
            returning.ref = "TH 7";
            returning.signatory = PersonId("T. Ester");
            returning.licence = licence;
            returning.day = day;
            const bool done = sendAway(record(), record(), {{ItemId(item)}, "Test House", day, "Ada Rhos"}) &&
                              takeBack(record(), record(), returning);
            return done ? std::optional(facts(item).done.back().evidence) : std::nullopt;
        };
        QVERIFY(evidenceWith("C1", "TH.12") == Evidence::Paper);
        QVERIFY(evidenceWith("C2", "") == Evidence::Stated);
    }

    void oneAnswerIsForAllOfThemOrForNone() {
        AnsweringMany answering;
        answering.items = {ItemId("C1"), ItemId("C2")};
        answering.answer.directive = DirectiveId("AD-1");
        answering.answer.revision = "0";
        answering.answer.method = "paragraph 1";
        answering.answer.licence = "QE.66.1";
        answering.answer.ref = "WO 7";
        answering.day = *CivilDate::parse("2025-04-01");
        const auto answered = [&] {
            const auto book = directiveBook(record(), *CivilDate::parse("2025-12-31")).value();
            return book->lines.front().count(DirectiveShare::Answered);
        };
        QVERIFY(!answerForMany(record(), record(), answering)); // by nobody
        QCOMPARE(answered(), 0);
        answering.by = "Ada Rhos";
        const auto receipt = answerForMany(record(), record(), answering);
        QVERIFY(receipt && receipt->ids.size() == 2);
        QCOMPARE(answered(), 2);
        // "Not applicable" is refused for what the record says is bound, and then is written for none.
        answering.answer = {};
        answering.answer.directive = DirectiveId("AD-1");
        answering.answer.revision = "0";
        answering.answer.answer = DirectiveAnswer::NotApplicable;
        answering.answer.why = "I say so";
        QVERIFY(!answerForMany(record(), record(), answering));
    }
};

CROWNRING_TEST(ComponentActsTest)
}

#include "component_acts_test.moc"

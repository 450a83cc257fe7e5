// SPDX-License-Identifier: GPL-3.0-or-later

/// Nobody signs wording from memory: what is signed was adopted, and confirmed against the current rule by somebody who
/// may sign such a visit. The requirement is the house's own; that people sign for words that they have read is common
/// practice, no source. All of it is invented.

#include "gate/signing_attempt.h"
#include "problem/faults/wording_fault.h"
#include "said.h"
#include "test_class.h"

#include <nlohmann/json.hpp>

namespace wording_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const Wording& release() { return shipped(StatementText::PartMlRelease).wording; }
NamedText inspectionList() {
    for (const auto& list : shippedChecklists())
        if (list.checklist == ChecklistId("hot-air-inspection"))
            return list;
    return {};
}

/// A shop in which nobody has said anything of its wording, with an inspection that is done.
class Unsaid : public Shop {
public:
    Unsaid() : Shop("[]", Wordings::OfNobody) { ready(Visit::PartMlInspection); }
    void adopted(const char* on = "2026-05-01") { say(adoptedLine(release(), on)); }
    void confirmed(const NamedText& what, const char* on = "2026-05-02", const char* person = "Ada Rhos",
                   Capacity capacity = Capacity::IndependentCertifyingStaff) {
        last = say(confirmedLine(what, on, person, capacity)).ids.front();
    }
    EntryId last; ///< the confirmation that was said last
};

std::vector<ReleaseFault> wordingFaults(const Shop& shop, const Signing& by = Shop::signing()) {
    std::vector<ReleaseFault> faults;
    for (const auto& each : shop.draft(by).refusals)
        if (each.kind == Refusal::Kind::Wording)
            faults.push_back(each.fault);
    return faults;
}
using Faults = std::vector<ReleaseFault>;

void expectTurnedAway(Shop& shop, const std::string& line, WordingFault fault) {
    const auto problems = problemsOf(shop.record(), line);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

std::string takenBack(const EntryId& id, const std::string& by) {
    return nlohmann::json{{"entry", "entry.voided"},
                          {"on", "2026-06-01"},
                          {"by", by},
                          {"voids", id.text()},
                          {"reason", "the rule was amended"}}
        .dump();
}

Wording ownWording(const std::string& body, const std::string& revision = "A") {
    return {release().text, revision, "Our release", body, "Shop manual, 4.2"};
}
constexpr const char* ownWords = "The work was done under {annex} by {person}, {licence}; {aircraft} is released.";
constexpr const char* ownList =
    R"({"checklist":"own","revision":"1","title":"Own","source":"invented","sections":[{"id":"all","title":"All"}],"lines":[{"id":"look","section":"all","kinds":["envelope"],"title":"Look","look_for":"Holes.","sources":{"part-ml":"invented"}}]})";
std::string entitled(const char* person, const char* capacity, const char* licence) {
    return nlohmann::json{{"entry", "person.entitled"},
                          {"on", "2020-01-01"},
                          {"person", person},
                          {"capacity", capacity},
                          {"licence", licence}}
        .dump();
}

}

class WordingTest : public QObject {
    Q_OBJECT

private slots:
    void whatShipsIsSignedByNobodyAsItIs() {
        Unsaid shop;
        QCOMPARE(wordingFaults(shop), (Faults{ReleaseFault::WordingNotAdopted, ReleaseFault::ChecklistNotConfirmed}));
        expectRefused(shop, Shop::signing(), "wording", "");
    }
    /// What is read is what is signed (UAX #9 and UTS #39 on marks of direction and hidden characters, from memory).
    void nothingIsAdoptedWithWhatNobodySees() {
        Unsaid shop;
        for (const auto* hidden : {"\u202e", "\u200b", "\u0007", "\u2066", "\u00ad", "\u0085", "\ufeff"}) {
            const auto words = std::string("Released.\nNo") + hidden + " more: " + ownWords;
            expectTurnedAway(shop, adoptedLine(ownWording(words), "2026-05-01"), WordingFault::Hidden);
            const auto problems = problemsOf(shop.record(), adoptedLine(ownWording(words), "2026-05-01"));
            QCOMPARE(problems.front().where.key, std::string("body"));
            QVERIFY(problems.front().arguments.at(1) == Argument(2));
            QVERIFY(problems.front().arguments.at(2) == Argument(3));
        }
        shop.say(adoptedLine(ownWording(std::string("Released.\n\t") + ownWords), "2026-05-01"));
    }
    void norAChecklist() {
        Unsaid shop;
        auto list = nlohmann::json::parse(ownList);
        list["lines"][0]["look_for"] = "Holes\u202e.";
        const nlohmann::json adopted{
            {"entry", "checklist.adopted"}, {"on", "2026-05-01"}, {"checklist", "own"}, {"document", list}};
        const auto problems = problemsOf(shop.record(), adopted.dump());
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(WordingFault::Hidden));
        QCOMPARE(problems.front().where.key, std::string("document/lines/0/look_for"));
    }
    void adoptedIsNotConfirmed() {
        Unsaid shop;
        shop.adopted();
        QCOMPARE(wordingFaults(shop), (Faults{ReleaseFault::WordingNotConfirmed, ReleaseFault::ChecklistNotConfirmed}));
        shop.confirmed(named(release()));
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::ChecklistNotConfirmed});
        QVERIFY(!shop.sign(Shop::signing()));
        shop.confirmed(inspectionList());
        expectReleased(shop, Shop::signing());
    }
    void whatIsSignedCarriesWhoConfirmedIt() {
        Unsaid shop;
        shop.adopted();
        shop.confirmed(named(release()));
        shop.confirmed(inspectionList(), "2026-05-03");
        QVERIFY(shop.sign(Shop::signing()));
        const auto carried = shop.now().closed->body.confirmed;
        const ConfirmedText statement{release().text,       {},        release().revision, digestOf(release()),
                                      PersonId("Ada Rhos"), "QE.66.1", day("2026-05-02"),  inventedRule};
        QCOMPARE(carried.size(), std::size_t{2});
        QVERIFY(carried[0] == statement);
        QCOMPARE(carried[1].checklist, std::optional(ChecklistId("hot-air-inspection")));
        QCOMPARE(carried[1].on, day("2026-05-03"));
    }
    void aPostedSignatureCarriesNothingElse() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        auto closing = nlohmann::json::parse(shop.closing());
        closing["confirmed"][0]["against"] = "another rule";
        const auto problems = problemsOf(shop.record(), closing.dump());
        QVERIFY(!problems.empty());
        QCOMPARE(problems.front().fault, Fault(ReleaseFault::OtherText));
        QVERIFY(isSaid(problems.front()));
        // What is left to the record the record fills in.
        closing.erase("confirmed");
        QVERIFY(shop.record().verify().value().intact);
        posted(shop.record(), closing.dump());
        QCOMPARE(shop.now().closed->body.confirmed.size(), std::size_t{2});
    }
    void confirmedAfterTheDayIsTooLate() {
        Unsaid shop;
        shop.adopted();
        shop.confirmed(named(release()), "2026-06-03");
        shop.confirmed(inspectionList());
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::WordingNotConfirmed}); // signed on 2026-06-02
        auto later = Shop::signing();
        later.on = day("2026-06-03");
        expectReleased(shop, later);
    }
    void anotherRevisionIsUnconfirmedAgain() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QCOMPARE(wordingFaults(shop), Faults{});
        shop.say(adoptedLine(ownWording(ownWords), "2026-05-20"));
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::WordingNotConfirmed});
        shop.say(
            confirmedLine(named(ownWording(ownWords)), "2026-05-21", "Ada Rhos", Capacity::IndependentCertifyingStaff));
        QVERIFY(shop.sign(Shop::signing()));
        // 02 rule 7: word for word what the record composes, by the shop's own wording.
        QCOMPARE(
            shop.now().closed->body.statement,
            std::string("The work was done under Part-ML by Ada Rhos, QE.66.1; of the aircraft the following alone "
                        "(envelope E1, serial number 101) is released."));
    }
    void anotherDigestIsNoConfirmation() {
        Unsaid shop;
        auto other = named(release());
        other.digest = std::string(64, 'a');
        const auto ada = Capacity::IndependentCertifyingStaff;
        expectTurnedAway(shop, confirmedLine(named(release()), "2026-05-02", "Ada Rhos", ada),
                         WordingFault::NotAdopted);
        shop.adopted();
        expectTurnedAway(shop, confirmedLine(other, "2026-05-02", "Ada Rhos", ada), WordingFault::AnotherDigest);
        auto list = inspectionList();
        list.digest = std::string(64, 'b');
        expectTurnedAway(shop, confirmedLine(list, "2026-05-02", "Ada Rhos", ada), WordingFault::AnotherDigest);
        list.revision = "none";
        expectTurnedAway(shop, confirmedLine(list, "2026-05-02", "Ada Rhos", ada), WordingFault::NoSuchChecklist);
    }
    void byWhoMayNotSignItNothingIsConfirmed() {
        Unsaid shop;
        shop.adopted();
        const auto what = named(release());
        const auto says = [&](const char* person, Capacity capacity, WordingFault fault = WordingFault::MayNotConfirm) {
            expectTurnedAway(shop, confirmedLine(what, "2026-05-02", person, capacity), fault);
        };
        says("Ines Holt", Capacity::InspectionAuthorization);   // of another regime
        says("Ole Berg", Capacity::IndependentCertifyingStaff); // not his capacity
        says("Tom Soon", Capacity::IndependentCertifyingStaff); // from June on
        expectTurnedAway(shop,
                         confirmedLine(what, "2026-05-02", "Ada Rhos", Capacity::IndependentCertifyingStaff, "QE.66.9"),
                         WordingFault::AnotherLicence);
        shop.say(entitled("Rae Lin", "review-authorisation", "ARA 2"));
        says("Rae Lin", Capacity::ReviewAuthorisation); // reviews only
    }
    void anOwnerConfirmsForHimselfAlone() {
        Unsaid shop;
        shop.adopted();
        shop.confirmed(named(release()), "2026-05-02", "Ole Berg", Capacity::PilotOwner);
        shop.confirmed(inspectionList());
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::WordingNotConfirmed}); // no inspection is his to sign
        Shop owner("[]", Shop::Wordings::OfNobody);
        owner.say(entitled("Una Oak", "pilot-owner", "BPL 8"));
        owner.open(Visit::PartMlOwnerTasks);
        const auto& own = shipped(StatementText::PartMlOwnerRelease).wording;
        owner.say(adoptedLine(own, "2026-05-01"));
        owner.say(confirmedLine(named(own), "2026-05-02", "Una Oak", Capacity::PilotOwner));
        const auto ole = Shop::signing("Ole Berg", Capacity::PilotOwner);
        const auto una = Shop::signing("Una Oak", Capacity::PilotOwner);
        QCOMPARE(wordingFaults(owner, una), Faults{ReleaseFault::ChecklistNotConfirmed});
        QCOMPARE(wordingFaults(owner, ole),
                 (Faults{ReleaseFault::WordingNotConfirmed, ReleaseFault::ChecklistNotConfirmed}));
    }
    void whoMayConfirmTakesItBackAndWhatWasSignedStays() {
        Unsaid shop;
        shop.adopted();
        shop.confirmed(inspectionList());
        shop.confirmed(named(release()));
        const auto confirmation = shop.last;
        expectTurnedAway(shop, takenBack(confirmation, ""), WordingFault::TakenBackByNobody);
        expectTurnedAway(shop, takenBack(confirmation, "Ole Berg"), WordingFault::TakenBackByNobody);
        expectTurnedAway(shop, takenBack(confirmation, "Ines Holt"), WordingFault::TakenBackByNobody);
        QVERIFY(shop.sign(Shop::signing()));
        const auto before = shop.now().closed->body.confirmed;
        shop.say(takenBack(confirmation, "Ada Rhos"));
        QVERIFY(shop.now().closed->body.confirmed == before);
        QVERIFY(shop.draft(Shop::signing()).file.unsupported.empty());
        shop.items = {ItemId("E1")};
        shop.open(Visit::PartMlInspection);
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::WordingNotConfirmed});
    }
    void whatWasSaidIsNotCorrected() {
        Unsaid shop;
        shop.adopted();
        shop.confirmed(named(release()));
        const auto corrected = nlohmann::json{
            {"entry", "entry.corrected"}, {"on", "2026-06-01"},           {"by", "Ada Rhos"},
            {"note", "misread"},          {"replaces", shop.last.text()}, {"with", {{"against", "another rule"}}}};
        expectTurnedAway(shop, corrected.dump(), WordingFault::NotCorrected);
    }
    void aWordingWithoutWhatItsRuleWantsIsNotAdopted_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("body");
        QTest::addColumn<int>("fault");
        const auto row = [](const char* name, const char* text, const char* body, WordingFault fault) {
            QTest::newRow(name) << text << body << static_cast<int>(fault);
        };
        // AMC M.A.801(e)1, read in a UK copy: "in accordance with Part-M", "the aircraft".
        row("no aircraft", "part-ml-release", "All was done under {annex}.", WordingFault::PlaceMissing);
        row("no annex", "part-ml-release", "{aircraft} is released.", WordingFault::PlaceMissing);
        // 14 CFR 43.11(a)(5), read: "a list of discrepancies … dated (date)".
        row("no date of the list", "us-inspection-discrepancies", "{aircraft} had its {inspection} inspection.",
            WordingFault::PlaceMissing);
        row("a place that there is not", "us-return-to-service", "Fit to fly, {weather}.", WordingFault::NoSuchPlace);
        row("a brace alone", "us-return-to-service", "Fit to fly {", WordingFault::NoSuchPlace);
        row("no such text", "fit-to-fly", "Fit to fly.", WordingFault::NoSuchText);
    }
    void aWordingWithoutWhatItsRuleWantsIsNotAdopted() {
        QFETCH(QString, text);
        QFETCH(QString, body);
        QFETCH(int, fault);
        Shop shop("[]", Shop::Wordings::OfNobody);
        const Wording wording{TextId(text.toStdString()), "A", {}, body.toStdString(), {}};
        expectTurnedAway(shop, adoptedLine(wording, "2026-05-01"), static_cast<WordingFault>(fault));
    }
    void oneRevisionHasOneWording() {
        Shop shop;
        auto other = release();
        other.body += " Always.";
        expectTurnedAway(shop, adoptedLine(other, "2026-05-01"), WordingFault::OtherWording); // under what ships
        shop.say(adoptedLine(ownWording(ownWords), "2026-05-01"));
        expectTurnedAway(shop, adoptedLine(ownWording(std::string(ownWords) + " Always."), "2026-05-02"),
                         WordingFault::OtherWording);
    }
    void aPlaceThatTheRecordCannotFillRefuses() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto wording = ownWording("For {organisation}: {aircraft} is released under {annex}.");
        shop.say(adoptedLine(wording, "2026-05-20"));
        shop.say(confirmedLine(named(wording), "2026-05-21", "Ada Rhos", Capacity::IndependentCertifyingStaff));
        QCOMPARE(wordingFaults(shop), Faults{ReleaseFault::PlaceUnfilled}); // she signs in her own name
    }
    void whatWasSignedBeforeThisWasAskedStays() {
        // As an earlier program let it in: without a word on who confirmed anything.
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        auto closing = nlohmann::json::parse(shop.closing());
        closing.erase("confirmed");
        const nlohmann::json done{{"entry", "requirement.done"},
                                  {"on", "2026-06-02"},
                                  {"item", "E1"},
                                  {"requirement", "ml.inspection"},
                                  {"ref", shop.inspection.text()}};
        letIn(shop.record(), closing.dump() + "\n" + done.dump());
        QVERIFY(shop.now().closed->body.confirmed.empty());
        QVERIFY(shop.draft(Shop::signing()).file.unsupported.empty());
    }
};

CROWNRING_TEST(WordingTest, QCoreApplication)

}

#include "wording_test.moc"

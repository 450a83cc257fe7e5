// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/own_code.h"
#include "acts/revoke.h"
#include "acts/shop.h"
#include "problem/faults/trust_fault.h"
#include "said.h"
#include "test_class.h"
#include "trust/codes_told.h"
#include "trust/proof.h"

#include <QtTest>

namespace own_code_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string own = "basket wire 7";
const std::string other = "crown ring 19";

Results<Receipt> released(Shop& shop, const SaidCode& said) {
    return crownring::sign(shop.record(), shop.record(), shop.inspection, Shop::signing(), {}, said);
}
CodeSetting settingOf(const char* person, const std::string& code, const char* on) {
    CodeSetting setting;
    setting.signatory = PersonId(person);
    setting.code = code;
    setting.on = day(on);
    return setting;
}
Results<Receipt> set(Shop& shop, const CodeSetting& setting) { return setCode(shop.record(), shop.record(), setting); }
std::vector<CodeSet> codes(const Shop& shop) { return codesTold(shop.record()).value(); }

bool isRefused(const Results<Receipt>& answer, TrustFault fault) {
    return !answer && answer.error().size() == 1 && answer.error().front().fault == Fault(fault) &&
           isSaid(answer.error().front());
}

}

/// The acts take a code and write none.
class OwnCodeTest : public QObject {
    Q_OBJECT
private slots:
    void theFirstIsSetAndSignedWithInOneTransaction() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto receipt = released(shop, {own, true});
        QVERIFY(receipt);
        QCOMPARE(receipt->ids.size(), std::size_t{3}); // the code, the closing, what it accomplished
        QCOMPARE(codes(shop).size(), std::size_t{1});
        const auto closed = shop.now().closed->body;
        QCOMPARE(closed.proof->key, codes(shop).front().said.key);
        const auto lines = shop.record().lines({}).value();
        for (const auto& line : lines)
            QVERIFY(canonicalText(line.entry).find(own) == std::string::npos);
    }
    void whereItIsRefusedNoCodeIsSetEither() {
        Shop shop;
        shop.open(Visit::PartMlInspection);
        const auto before = shop.entries();
        QVERIFY(!released(shop, {own, true}));
        QCOMPARE(shop.entries(), before);
        QVERIFY(codes(shop).empty());
    }
    void aWrongCodeSaysSoAndLosesNothing() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(set(shop, settingOf("Ada Rhos", own, "2026-06-01")));
        const auto before = shop.entries();
        QVERIFY(isRefused(released(shop, {other, false}), TrustFault::WrongCode));
        QVERIFY(isRefused(released(shop, {other, true}), TrustFault::WrongCode)); // it was set meanwhile
        QVERIFY(isRefused(released(shop, {"short", false}), TrustFault::WrongCode));
        QVERIFY(isRefused(released(shop, {}), TrustFault::ProofMissing));
        QCOMPARE(shop.entries(), before);
        QVERIFY(shop.now().isOpen());
        QVERIFY(released(shop, {own, false}));
        QVERIFY(shop.now().closed->body.proof);
        QCOMPARE(codes(shop).size(), std::size_t{1});
    }
    void nobodySetsOneUnasked() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(isRefused(released(shop, {own, false}), TrustFault::NoCodeYet));
        QVERIFY(isRefused(released(shop, {"short", true}), TrustFault::CodeTooShort));
        QVERIFY(released(shop, {}));
        QVERIFY(!shop.now().closed->body.proof);
    }
    void whoHasItChangesIt() {
        Shop shop;
        QVERIFY(set(shop, settingOf("Ada Rhos", own, "2026-06-01")));
        auto change = settingOf("Ada Rhos", other, "2026-06-01"); // on the same day
        QVERIFY(isRefused(set(shop, change), TrustFault::CodeSetAlready));
        change.before = "not the one";
        QVERIFY(isRefused(set(shop, change), TrustFault::WrongCode));
        change.before = own;
        QVERIFY(set(shop, change));
        shop.ready(Visit::PartMlInspection);
        QVERIFY(isRefused(released(shop, {own, false}), TrustFault::WrongCode));
        QVERIFY(released(shop, {other, false}));
    }
    void whoForgotItHasItSetByAnother() {
        Shop shop;
        QVERIFY(set(shop, settingOf("Ada Rhos", own, "2026-06-01")));
        auto reset = settingOf("Ada Rhos", other, "2026-06-02");
        reset.other = PersonId("Kit Moor");
        reset.codeOfOther = "of kit, long";
        reset.reason = "forgotten";
        QVERIFY(isRefused(set(shop, reset), TrustFault::SetterHasNoCode));
        QVERIFY(set(shop, settingOf("Kit Moor", "of kit, long", "2026-06-01")));
        reset.codeOfOther = own;
        QVERIFY(isRefused(set(shop, reset), TrustFault::WrongCode));
        reset.codeOfOther = "of kit, long";
        QVERIFY(set(shop, reset));
        QVERIFY(std::ranges::any_of(shop.record().questions().value(), [](const Question& each) {
            return each.kind == Question::Kind::CodeByAnother && each.subject == "Ada Rhos" &&
                   each.detail == Argument("Kit Moor");
        }));
    }
    void aWithdrawalIsSignedToo() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QVERIFY(released(shop, {own, true}));
        const Revoking revoking{shop.inspection, "the gauge was broken", PersonId("Ada Rhos"), day("2026-06-10")};
        QVERIFY(isRefused(revoke(shop.record(), shop.record(), revoking), TrustFault::ProofMissing));
        QVERIFY(isRefused(revoke(shop.record(), shop.record(), revoking, {other, false}), TrustFault::WrongCode));
        QVERIFY(revoke(shop.record(), shop.record(), revoking, {own, false}));
        QVERIFY(shop.now().revoked->body.proof);
    }
    /// What the record fills in is proven, too.
    void aReviewIsProvenAsItIsWritten() {
        Shop shop;
        shop.wholeAircraft();
        shop.say(
            R"({"entry":"person.entitled","on":"2024-06-01","person":"Cai Mo","capacity":"airworthiness-review-staff","licence":"ARS 3"})");
        Entry entry;
        entry.on = day("2026-06-02");
        entry.by = "Cai Mo";
        ReviewSigned review;
        review.balloon = Registration("QE-ONE");
        review.item = ItemId("E1");
        review.act = ReviewAct::Recommendation;
        review.form = "EASA Form 15c";
        review.certificate = "ARC 2";
        review.reviewer = PersonId("Cai Mo");
        review.capacity = "airworthiness-review-staff";
        entry.body = review;
        const auto answer = postSigned(shop.record(), shop.record(), {{entry, 0}}, {own, true});
        const bool proofHeld = answer || std::ranges::none_of(answer.error(), [](const Problem& each) {
                                   return std::holds_alternative<TrustFault>(each.fault);
                               });
        QVERIFY(proofHeld);
    }
};

CROWNRING_TEST(OwnCodeTest, QCoreApplication)

}

#include "own_code_test.moc"

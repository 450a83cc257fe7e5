// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/own_code.h"
#include "bench_hands.h"
#include "screen/form/entry_form.h"
#include "test_class.h"

namespace signing_code_test {

using namespace crownring;
using namespace crownring::screen;
using bench_walk_test::Desks;
using bench_walk_test::Shop;

namespace {

const QString ownCode = QStringLiteral("basket wire 7");
const QString wrongCode = QStringLiteral("basket wire 8");
const Signer inspectorA{PersonId("insp. A"), Capacity::IndependentCertifyingStaff};

/// Everything is done, and insp. A is to sign.
bool isReadyToSign(Desks& desks) {
    if (!desks.open())
        return false;
    desks.reads();
    desks.looksAtEverything();
    desks.release.setSigner(inspectorA);
    return QTest::qWaitFor([&] { return desks.release.maySign() && desks.release.code()->isAsked(); }, 30'000);
}
void type(OwnCode& code, const QString& first, const QString& again = {}) {
    code.setCode(first);
    code.setAgain(again);
}
int rowOf(EntryForm& form, std::string_view key) {
    const auto& fields = form.fields()->fields();
    const auto at = std::ranges::find(fields, key, &FormField::key);
    return at == fields.end() ? -1 : static_cast<int>(at - fields.begin());
}
bool isShown(EntryForm& form, std::string_view key) {
    const auto* field = form.fields()->field(key);
    return field && field->shown;
}

}

/// Signing asks again who one is.
class SigningCodeTest : public QObject {
    Q_OBJECT

    static bool isSigned(Desks& desks) {
        QSignalSpy done(&desks.release, &ReleaseDesk::signedNow);
        desks.release.sign();
        return QTest::qWaitFor([&] { return done.size() == 1 && !desks.inspection.isOpen(); }, 30'000);
    }

private slots:
    void whoHasNoneSetsItThereAndSignsWithIt() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(isReadyToSign(desks));
        auto& code = *desks.release.code();
        QVERIFY(code.isFirst() && !code.isReady());
        QVERIFY2(code.about().contains(QStringLiteral("insp. A")), qPrintable(code.about()));
        desks.release.sign(); // not without one
        QVERIFY(!desks.release.signing() && !desks.release.problem().isEmpty());
        type(code, QStringLiteral("short"), QStringLiteral("short"));
        QVERIFY(!code.isReady() && code.problem().contains(u'8'));
        type(code, ownCode, wrongCode);
        QVERIFY(!code.isReady() && !code.problem().isEmpty());
        type(code, ownCode, ownCode);
        QVERIFY(code.isReady() && code.problem().isEmpty());
        QVERIFY(isSigned(desks));
        QVERIFY(desks.inspection.file()->inspection.closed->body.proof);
        QVERIFY2(desks.release.provenBy().contains(QStringLiteral("own code")), qPrintable(desks.release.provenBy()));
        QVERIFY(code.code().isEmpty() && code.again().isEmpty()); // let go of
        QTRY_VERIFY_WITH_TIMEOUT(!code.isFirst(), 30'000);

        // Who withdraws the release is asked, too.
        In<EntryForm> form(shop.house);
        form.beginAtBench(QStringLiteral("release.revoked"), desks.inspection.inspection(), {}, {});
        QTRY_VERIFY_WITH_TIMEOUT(isShown(form, "-code") && !isShown(form, "-code-again"), 30'000);
        form.setValue(rowOf(form, "reason"), QStringLiteral("the wrong gauge"));
        const auto saves = [&] {
            QSignalSpy saved(&form, &EntryForm::saved);
            form.save();
            return QTest::qWaitFor([&] { return !form.saving(); }, 30'000) && saved.size() == 1;
        };
        QVERIFY(!saves()); // without one
        form.setValue(rowOf(form, "-code"), wrongCode);
        QVERIFY(!saves());
        QVERIFY2(form.fields()->field("-code")->problem.contains(QStringLiteral("not the code")),
                 qPrintable(form.fields()->field("-code")->problem));
        QCOMPARE(form.fields()->value("reason"), QStringLiteral("the wrong gauge"));
        form.setValue(rowOf(form, "-code"), ownCode);
        QVERIFY2(saves(), qPrintable(form.problem()));
        QVERIFY(form.fields()->field("-code") == nullptr);
    }
    void aWrongOneSaysSoAndLosesNothing() {
        Shop shop;
        QVERIFY(shop.ready());
        QVERIFY(shop.ask([](Record& record) {
            CodeSetting setting;
            setting.signatory = PersonId("insp. A");
            setting.code = ownCode.toStdString();
            setting.on = CivilDate::parse("2026-11-01").value();
            return setCode(record, record, setting).has_value();
        }));
        Desks desks(shop.house);
        QVERIFY(isReadyToSign(desks));
        auto& code = *desks.release.code();
        QVERIFY(!code.isFirst());
        QVERIFY2(code.about().contains(QStringLiteral("2026-11-01")), qPrintable(code.about()));
        desks.release.setLimitations(QStringLiteral("not above 4000 ft"));
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.maySign(), 30'000);
        type(code, wrongCode);
        QVERIFY(code.isReady());
        desks.release.sign();
        QTRY_VERIFY_WITH_TIMEOUT(!desks.release.signing(), 30'000);
        QVERIFY2(desks.release.problem().contains(QStringLiteral("not the code of insp. A")),
                 qPrintable(desks.release.problem()));
        QVERIFY(desks.inspection.isOpen());
        QCOMPARE(desks.release.limitations(), QStringLiteral("not above 4000 ft"));
        QTRY_VERIFY_WITH_TIMEOUT(desks.release.maySign(), 30'000); // another look at the record may be under way
        type(code, ownCode);
        QVERIFY(isSigned(desks));
        QCOMPARE(desks.inspection.file()->inspection.closed->body.limitations, std::string("not above 4000 ft"));
    }
    void anotherSignersCodeIsNotLeftInTheField() {
        Shop shop;
        QVERIFY(shop.ready());
        Desks desks(shop.house);
        QVERIFY(isReadyToSign(desks));
        auto& code = *desks.release.code();
        type(code, ownCode, ownCode);
        desks.release.setSigner(Signer{PersonId("pilot B"), Capacity::PilotOwner});
        QVERIFY(code.code().isEmpty() && code.again().isEmpty());
        QCOMPARE(code.person(), QStringLiteral("pilot B"));
    }
    /// Whom the record does not know otherwise can have no code in it.
    void whoIsNotInTheRecordIsAskedForNone() {
        Shop shop;
        QVERIFY(shop.ready());
        In<OwnCode> code(shop.house);
        code.ask(QStringLiteral("the owner"));
        QTRY_VERIFY_WITH_TIMEOUT(code.isReady(), 30'000);
        QVERIFY(!code.isAsked() && code.said().code.empty());
    }
};

CROWNRING_TEST(SigningCodeTest, QCoreApplication)

}

#include "signing_code_test.moc"

// SPDX-License-Identifier: GPL-3.0-or-later

/// A review is signed by a form: what is signed is read before it is.

#include "form_hand.h"
#include "gate/review_yard.h"
#include "screen/balloons/subject_page.h"
#include "test_class.h"

namespace signed_form_test {

using namespace crownring;
using namespace crownring::screen;
namespace reviews = crownring::testing::reviews;

namespace {

const char* const openRepair =
    R"({"entry":"inspection.opened","on":"2026-11-20","inspection":"V-7","visit":"part-ml-repair","balloon":"QE-ONE","items":["E1"]}
{"entry":"work.performed","on":"2026-11-20","by":"Bo Lind","inspection":"V-7","item":"E1","what":"panel sewn","data":"Manual 77, 6","grade":"minor"})";

}

class SignedFormTest : public QObject {
    Q_OBJECT

    FormHand m_hand;

    [[nodiscard]] std::size_t reviewsSigned() {
        auto asked = m_hand.house().desk.ask([](Record& record) {
            return signedReviews(record, Registration("QE-ONE"), *CivilDate::parse("2026-11-25")).value().size();
        });
        asked.waitForFinished();
        return asked.result();
    }
    void fill(EntryForm& form) {
        form.begin(QStringLiteral("review.signed"), QStringLiteral("QE-ONE"));
        for (const auto& [key, value] : {std::pair{"form", "EASA Form 15c"},
                                         {"certificate", "ARC 2"},
                                         {"on", "2025-06-01"},
                                         {"reviewer", "Cai Mo"},
                                         {"capacity", "airworthiness-review-staff"}})
            FormHand::set(form, key, value);
        QTRY_VERIFY_WITH_TIMEOUT(FormHand::field(form, "-code").shown, 20'000);
        FormHand::set(form, "-code", "a code of Cai Mo");
        FormHand::set(form, "-code-again", "a code of Cai Mo");
    }

private slots:
    void initTestCase() {
        QVERIFY(isPosted(m_hand.house(), reviews::yard() + reviews::before("2024-07-01", "2025-07-01")));
        QVERIFY(m_hand.settled());
    }

    /// ML.A.903, ML.A.904 (read): the reviewer signs; nobody signs what he has not read, by a key that came first.
    void itsWordsAreReadBeforeTheyAreSigned() {
        In<EntryForm> form(m_hand.house());
        fill(form);
        QVERIFY(!form.isSigning());
        QCOMPARE(form.verb(), QStringLiteral("Read what is signed"));
        QVERIFY(!m_hand.save(form));
        QVERIFY(form.isOpen() && form.isSigning());
        QCOMPARE(reviewsSigned(), std::size_t{0});
        for (const char* words :
             {"An airworthiness review of the aircraft QE-ONE", "Cai Mo, airworthiness review staff",
              "ARS 3, Lakeside, QE.CAO.0031", "expires on 2026-07-01"})
            QVERIFY2(form.follows().contains(QString::fromLatin1(words)), qPrintable(form.follows()));
        QCOMPARE(FormHand::field(form, "expires").value, QStringLiteral("2026-07-01"));
        // What is changed is read again.
        FormHand::set(form, "act", "extension");
        QVERIFY(!form.isSigning() && !form.follows().contains(QStringLiteral("ARS 3")));
        FormHand::set(form, "act", "review");
        QVERIFY(!m_hand.save(form));
        QVERIFY(m_hand.save(form));
        QCOMPARE(reviewsSigned(), std::size_t{1});
    }
    void whatStandsAgainstItIsSaidInsteadOfItsWords() {
        In<EntryForm> form(m_hand.house());
        fill(form);
        FormHand::set(form, "on", "2026-06-01");
        QVERIFY(!m_hand.save(form));
        QVERIFY(!form.isSigning());
        QVERIFY2(form.problem().contains(QStringLiteral("Annual or 100-hour inspection stands against it")) &&
                     !form.problem().contains(QStringLiteral("; )")),
                 qPrintable(form.problem()));
    }
    /// ML.A.801(a); 14 CFR 91.407(a)(1) (from memory): as the rig-up check says it, the balloon's page does.
    void workThatNobodyReleasedIsSaidOnThePageOfItsBalloon() {
        In<SubjectPage> page(m_hand.house());
        page.showBalloon(QStringLiteral("QE-ONE"));
        QVERIFY(isPosted(m_hand.house(), openRepair));
        QVERIFY(m_hand.settled());
        QTRY_VERIFY_WITH_TIMEOUT(
            page.unsupported().contains(QStringLiteral("E1: was worked on in visit V-7, which is open")), 20'000);
    }
};

CROWNRING_TEST(SignedFormTest, QGuiApplication)

}

#include "signed_form_test.moc"

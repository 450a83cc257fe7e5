// SPDX-License-Identifier: GPL-3.0-or-later

/// A directive is entered by its form, which says before whom it binds, and is answered for many items at once.

#include "answers/directives/book.h"
#include "screen/form/form_hand.h"
#include "test_class.h"

namespace directive_form_test {

using namespace crownring;
using namespace crownring::screen;

class DirectiveFormTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;

    [[nodiscard]] bool say(const char* lines) { return isPosted(m_hand->house(), lines) && m_hand->settled(); }
    [[nodiscard]] std::shared_ptr<const DirectiveBook> book() {
        auto asked = m_hand->house().desk.ask(
            [](Record& record) { return directiveBook(record, *CivilDate::parse("2026-11-25")).value(); });
        asked.waitForFinished();
        return asked.result();
    }
    static void fill(EntryForm& form) {
        FormHand::set(form, "directive", "QE-AD 7");
        FormHand::set(form, "revision", "0");
        FormHand::set(form, "title", "Look at the valve");
        FormHand::set(form, "issuer", "Authority of Q");
        FormHand::set(form, "state", "Q");
        FormHand::set(form, "effective", "2026-11-20");
        form.toggle(FormHand::rowOf(form, "applies.kinds"), QStringLiteral("burner"));
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne() && m_hand->enterItem("R-2", "burner") && m_hand->enterItem("R-3", "burner"));
        QVERIFY(say(
            R"({"entry":"parts.listed","on":"2026-01-02","by":"tester","item":"R-1","whole":true,"parts":[{"part":"pilot-valve","type":"PV-2","serial":"S0100","whole":true}]}
{"entry":"parts.listed","on":"2026-01-02","by":"tester","item":"R-2","whole":true,"parts":[{"part":"pilot-valve","type":"PV-1","serial":"S0101","whole":true}]}
{"entry":"person.entitled","on":"2026-01-02","by":"office","person":"tester","capacity":"independent-certifying-staff","licence":"QE.66.1"})"));
    }
    void cleanup() { m_hand.reset(); }

    /// 04: what was understood is said back before it is written.
    void itsLimitsAreSaidBackBeforeItIsPosted() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("directive.issued"));
        fill(form);
        const auto says = [&](const char* words) {
            return QTest::qWaitFor([&] { return form.follows().contains(QLatin1String(words)); }, 20'000);
        };
        FormHand::set(form, "first.by", "2026-12-20");
        FormHand::set(form, "repeat.minutes", "50");
        FormHand::set(form, "repeat.months", "12");
        QVERIFY2(says("QE-AD 7 rev. 0, effective 2026-11-20.") && says("Mandatory: no tolerance") &&
                     says("First: by 2026-12-20.") && says("Again: every 50:00") && says("12 months."),
                 qPrintable(form.follows()));
        FormHand::set(form, "force", "recommended");
        QVERIFY2(says("Recommended: it never grounds."), qPrintable(form.follows()));
        FormHand::set(form, "first.by", "2026-01-01"); // before it is effective
        QVERIFY(!m_hand->save(form));
        QVERIFY2(FormHand::problemAt(form, "first.by").contains(QStringLiteral("before it is effective")),
                 qPrintable(form.problem()));
    }
    void whomItBindsIsSaidBeforeItIsPosted() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("directive.issued"));
        QVERIFY(!FormHand::field(form, "-part-types").shown);
        fill(form);
        QTRY_VERIFY2_WITH_TIMEOUT(form.follows().contains(QStringLiteral("binds 3 items")), qPrintable(form.follows()),
                                  20'000);
        QCOMPARE(FormHand::field(form, "source").value, QStringLiteral("QE-AD 7")); // unless another says it
        FormHand::set(form, "-part", "Pilot valve");
        QVERIFY(FormHand::field(form, "-part-types").shown);
        FormHand::set(form, "-in", "burner");
        FormHand::set(form, "-part-types", "PV-2");
        QTRY_VERIFY2_WITH_TIMEOUT(form.follows().contains(QStringLiteral("binds 1 item.")), qPrintable(form.follows()),
                                  20'000);
        const auto lines = form.follows().split(u'\n');
        const auto binds = lines.indexOf(QStringLiteral("It binds 1 item."));
        QVERIFY(binds >= 0 && lines.at(binds + 1).contains(QStringLiteral("R-1")));
        QVERIFY2(form.follows().contains(QStringLiteral("Of 1 item nobody knows")), qPrintable(form.follows()));
        QVERIFY(form.follows().contains(QStringLiteral("R-3"))); // no list says what is in it
        QVERIFY(form.follows().contains(QStringLiteral("does not bind 1 item")));
        QCOMPARE(book()->lines.size(), std::size_t{0}); // nothing is written yet
        QVERIFY(!m_hand->save(form));                   // a mandatory one says by when
        QVERIFY2(form.problem().contains(QStringLiteral("marked")), qPrintable(form.problem()));
        // It is told by the names of the fields, and no longer once one of them says it, whichever.
        const auto told = FormHand::field(form, "first.before_flight").problem;
        QVERIFY2(told.contains(QStringLiteral("For the first time by")) && !told.contains(u'_') &&
                     !told.contains(u'\''),
                 qPrintable(told));
        FormHand::set(form, "first.by", "2026-12-31");
        QVERIFY(FormHand::field(form, "first.before_flight").problem.isEmpty());
        QVERIFY2(form.problem().isEmpty(), qPrintable(form.problem()));
        FormHand::set(form, "first.by", "");
        FormHand::set(form, "first.before_flight", "true");
        FormHand::set(form, "repeat.months", "6");
        FormHand::set(form, "-part-serials", "S0090 to S0239\nS0300");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto issued = book()->lines.front().issued.body;
        QCOMPARE(issued.applies.fitted.size(), std::size_t{1});
        const auto& part = issued.applies.fitted.front();
        QCOMPARE(part.part, std::string("pilot-valve"));
        QVERIFY(part.in == ItemKind::Burner);
        QCOMPARE(part.serials.size(), std::size_t{2});
        QVERIFY(part.serials[1].from == "S0300" && part.serials[1].to == "S0300");
        QCOMPARE(issued.repeat.months, std::optional<std::int64_t>(6));
        QCOMPARE(book()->lines.front().count(DirectiveShare::AtOnce), 1);
    }

    void itsCorrectionBeginsWithAllThatItSays() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("directive.issued"));
        fill(form);
        FormHand::set(form, "-serials", "S1 to S9\nto S0");
        FormHand::set(form, "-part", "pilot-valve");
        FormHand::set(form, "-part-serials", "S0090 to");
        FormHand::set(form, "first.by", "2026-12-31");
        FormHand::set(form, "credits", "A\nB");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto before = book()->lines.front().issued;
        form.correct(QString::fromStdString(before.id.text()));
        QTRY_VERIFY_WITH_TIMEOUT(form.isOpen(), 20'000);
        QCOMPARE(FormHand::field(form, "-serials").value, QStringLiteral("S1 to S9\nto S0"));
        QCOMPARE(FormHand::field(form, "-part-serials").value, QStringLiteral("S0090 to"));
        QCOMPARE(FormHand::field(form, "credits").value, QStringLiteral("A\nB"));
        form.save();
        QVERIFY2(form.problem().contains(QStringLiteral("Nothing was changed")), qPrintable(form.problem()));
        FormHand::set(form, "-part-types", "PV-2");
        QVERIFY2(m_hand->saveCorrection(form), qPrintable(form.problem()));
        const auto now = book()->lines.front().issued.body;
        QCOMPARE(now.applies.fitted.front().types, std::vector<std::string>{"PV-2"});
        QVERIFY(now.applies.serials == before.body.applies.serials && now.credits == before.body.credits);
    }

    void oneAnswerIsForAllThatAreTicked() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("directive.issued"));
        fill(form);
        FormHand::set(form, "first.before_flight", "true");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const QVariantMap which{{QStringLiteral("directive"), QStringLiteral("QE-AD 7")},
                                {QStringLiteral("revision"), QStringLiteral("0")}};
        form.beginFor(QStringLiteral("directive.answered"), {QStringLiteral("R-1"), QStringLiteral("R-2")}, which,
                      QStringLiteral("QE-AD 7 rev. 0"));
        QVERIFY(form.isOpen());
        QVERIFY2(form.about().contains(QStringLiteral("2 items: R-1, R-2")), qPrintable(form.about()));
        // Who writes may sign for it in one capacity: it is proposed.
        QTRY_COMPARE_WITH_TIMEOUT(FormHand::field(form, "capacity").value,
                                  QStringLiteral("independent-certifying-staff"), 20'000);
        QVERIFY(!FormHand::field(form, "licence").shown);
        // His word is no signature: it stands as stated.
        QVERIFY(!FormHand::field(form, "capacity").label.contains(QStringLiteral("igned")));
        QVERIFY2(FormHand::field(form, "capacity").hint.contains(QStringLiteral("nothing is signed")),
                 qPrintable(FormHand::field(form, "capacity").hint));
        FormHand::set(form, "method", "paragraph 2");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(book()->lines.front().count(DirectiveShare::Answered), 2);
        // What the record says is bound is not taken out by a word; and what is refused of many is said once.
        form.beginFor(QStringLiteral("directive.answered"), {QStringLiteral("R-3")}, which);
        FormHand::set(form, "answer", "not-applicable");
        QVERIFY(!FormHand::field(form, "method").shown && FormHand::field(form, "why").shown);
        FormHand::set(form, "why", "I say so");
        QVERIFY(!m_hand->save(form));
        QVERIFY2(FormHand::problemAt(form, "answer").contains(QStringLiteral("binds R-3")),
                 qPrintable(form.problem() + FormHand::problemAt(form, "answer")));
    }

    void whoMayNotSignForItNamesThePaper() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("directive.issued"));
        fill(form);
        FormHand::set(form, "first.before_flight", "true");
        QVERIFY(m_hand->save(form));
        form.beginFor(QStringLiteral("directive.answered"), {QStringLiteral("R-1"), QStringLiteral("R-2")},
                      {{QStringLiteral("directive"), QStringLiteral("QE-AD 7")},
                       {QStringLiteral("revision"), QStringLiteral("0")}});
        QTRY_COMPARE_WITH_TIMEOUT(FormHand::field(form, "capacity").choices.size(), std::size_t{2}, 20'000);
        FormHand::set(form, "by", "Sam Help");
        QCOMPARE(FormHand::field(form, "capacity").choices.size(), std::size_t{1});
        QVERIFY(!FormHand::field(form, "capacity").shown); // nothing is to be chosen
        QCOMPARE(FormHand::field(form, "capacity").value, QString());
        FormHand::set(form, "method", "paragraph 2");
        QVERIFY(!m_hand->save(form)); // nothing shows it
        QVERIFY2(form.problem().count(QStringLiteral("Nothing shows")) == 1, qPrintable(form.problem()));
        QVERIFY(FormHand::field(form, "licence").shown);
        FormHand::set(form, "licence", "QE.66.9");
        FormHand::set(form, "ref", "WO 12");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(book()->lines.front().count(DirectiveShare::Answered), 2);
    }
};

CROWNRING_TEST(DirectiveFormTest, QCoreApplication)

}

#include "directive_form_test.moc"

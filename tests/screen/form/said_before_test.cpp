// SPDX-License-Identifier: GPL-3.0-or-later

/// What a form says before anything is written: what stood against a kit that flew, which defect is cleared and on
/// what; and that it asks for a place on the fabric only of what has fabric.

#include "form_hand.h"
#include "rules/due/defects.h"
#include "test_class.h"

namespace said_before_test {

using namespace crownring;
using namespace crownring::screen;

class SaidBeforeTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;

    /// Written down on 2026-11-10; its name.
    [[nodiscard]] std::string find(const char* item, const char* what, const char* severity) {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("defect.found"), QStringLiteral("B-ONE"));
        FormHand::set(form, "what", what);
        FormHand::set(form, "item", item);
        FormHand::set(form, "severity", severity);
        FormHand::set(form, "on", "2026-11-10");
        if (!m_hand->save(form))
            return {};
        const auto open = openDefects(*m_hand->item(item));
        return open.empty() ? std::string() : open.back().found->defect.text();
    }
    void beginFlight(EntryForm& form, const char* on) {
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1:00");
        FormHand::set(form, "on", on);
        QTRY_COMPARE_WITH_TIMEOUT(form.kit()->count(), 4, 20'000);
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() { m_hand.reset(); }

    void aFlightWithABasketThatIsGrounded() {
        QVERIFY(!find("K-1", "a cracked frame", "grounding").empty());
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2026-11-20");
        QTRY_VERIFY2_WITH_TIMEOUT(form.follows().contains(QStringLiteral("a cracked frame")),
                                  qPrintable(form.follows()), 20'000);
        QVERIFY2(form.follows().contains(QStringLiteral("basket K-1")) &&
                     form.follows().contains(QStringLiteral("2026-11-20")),
                 qPrintable(form.follows()));
        QVERIFY(m_hand->save(form));
        QCOMPARE(m_hand->minutesOf("K-1"), 101 * 60);
    }

    void nothingIsSaidOfTheDaysBeforeItWasFound() {
        QVERIFY(!find("K-1", "a cracked frame", "grounding").empty());
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2026-11-20");
        QTRY_VERIFY_WITH_TIMEOUT(!form.follows().isEmpty(), 20'000);
        FormHand::set(form, "on", "2026-11-09");
        QTRY_COMPARE_WITH_TIMEOUT(form.follows(), QString(), 20'000);
    }

    void nothingIsSaidOfABasketThatStaysBehind() {
        QVERIFY(!find("K-1", "a cracked frame", "grounding").empty());
        QVERIFY(m_hand->enterItem("K-2", "basket"));
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2026-11-20");
        QTRY_VERIFY_WITH_TIMEOUT(!form.follows().isEmpty(), 20'000);
        for (int row = 0; row < form.kit()->count(); ++row)
            if (form.kit()->data(form.kit()->index(row), FlightKit::ItemRole) == QStringLiteral("K-1"))
                form.kit()->ask(row);
        form.kit()->pick(QStringLiteral("K-2"));
        QTRY_COMPARE_WITH_TIMEOUT(form.follows(), QString(), 20'000);
    }

    void aDefectThatDoesNotBarFlightIsNoCaution() {
        QVERIFY(!find("K-1", "a worn leather edge", "minor").empty());
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2026-11-20");
        QVERIFY(m_hand->asked(form));
        QVERIFY(m_hand->asked(form));
        QCOMPARE(form.follows(), QString());
    }

    void whoClearsADefectReadsWhatWasFoundAndOnWhat_data() {
        QTest::addColumn<bool>("atTheBench");
        QTest::newRow("from what is due") << false;
        QTest::newRow("at the bench") << true;
    }
    void whoClearsADefectReadsWhatWasFoundAndOnWhat() {
        QFETCH(bool, atTheBench);
        const auto defect = find("K-1", "a cracked frame", "deferrable");
        QVERIFY(!defect.empty());
        const auto name = QString::fromStdString(defect);
        In<EntryForm> form(m_hand->house());
        if (atTheBench)
            form.beginAtBench(QStringLiteral("defect.cleared"), {}, name, QStringLiteral("K-1"));
        else
            form.begin(QStringLiteral("defect.cleared"), QStringLiteral("B-ONE"), QStringLiteral("K-1"),
                       QStringLiteral("defect/") + name);
        QVERIFY(form.isOpen());
        QVERIFY2(form.about().startsWith(QStringLiteral("a cracked frame")), qPrintable(form.about()));
        QVERIFY2(form.about().contains(QStringLiteral("basket K-1 · B-ONE")), qPrintable(form.about()));
        QVERIFY2(!form.about().contains(name), qPrintable(form.about()));
    }

    void goreAndRowAreAskedOfAnEnvelopeAlone_data() {
        QTest::addColumn<QString>("kind");
        for (const char* kind : {"defect.found", "repair.made", "reading.taken"})
            QTest::newRow(kind) << QString::fromLatin1(kind);
    }
    void goreAndRowAreAskedOfAnEnvelopeAlone() {
        QFETCH(QString, kind);
        In<EntryForm> form(m_hand->house());
        form.begin(kind, QStringLiteral("B-ONE"));
        QVERIFY(!FormHand::field(form, "gore").shown);
        FormHand::set(form, "item", "E-1");
        QVERIFY(FormHand::field(form, "gore").shown && FormHand::field(form, "row").shown);
        for (const char* item : {"K-1", "R-1", "C-1"}) {
            FormHand::set(form, "item", item);
            QVERIFY2(!FormHand::field(form, "gore").shown && !FormHand::field(form, "row").shown, item);
        }
        form.begin(kind, {}, QStringLiteral("E-1"));
        QVERIFY(FormHand::field(form, "gore").shown);
    }
};

CROWNRING_TEST(SaidBeforeTest, QCoreApplication)

}

#include "said_before_test.moc"

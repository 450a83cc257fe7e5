// SPDX-License-Identifier: GPL-3.0-or-later

/// A programme that is adopted for a later day stands among the programmes at once, with its day.

#include "rules/programme/programme.h"
#include "screen/form/form_hand.h"
#include "screen/rules/rules_place.h"
#include "test_class.h"

#include <QFile>
#include <QTemporaryDir>

namespace adopted_ahead_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

constexpr const char* bulletin =
    R"({"programme":"bulletin-7","revision":"1","title":"Valve of some cylinders","source":"an invented bulletin","requirements":[{"id":"bulletin-7.valve","title":"Look at the valve","source":"an invented bulletin, 2","kinds":["cylinder"],"action":"comply","once":true,"starts_from":"entered","serials":[{"from":"TA1005","to":"TA1010"}],"limits":[{"clock":"days","every":30,"first":30}]}]})";

}

class AdoptedAheadTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;

    [[nodiscard]] bool adopt(const char* on) {
        In<EntryForm> form(m_hand->house());
        form.adopt(QStringLiteral("part-ml-hot-air"));
        FormHand::set(form, "everything", "true");
        FormHand::set(form, "on", on);
        return m_hand->save(form);
    }
    static QString told(RulesPlace& rules) {
        for (const auto& choice : rules.programmes()->choices())
            if (choice.value == QStringLiteral("part-ml-hot-air"))
                return choice.detail;
        return {};
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() { m_hand.reset(); }

    void itStandsAmongTheProgrammesWithItsDay() {
        In<RulesPlace> rules(m_hand->house());
        QVERIFY2(told(rules).contains(QStringLiteral("on the shelf")), qPrintable(told(rules)));
        QVERIFY(adopt("2026-12-24"));
        QTRY_VERIFY2_WITH_TIMEOUT(told(rules).contains(QStringLiteral("binds from 2026-12-24")),
                                  qPrintable(told(rules)), 20'000);
        QCOMPARE(rules.programmes()->count(), static_cast<int>(shelf().size())); // and nowhere twice
        rules.showProgramme(QStringLiteral("part-ml-hot-air"));
        QVERIFY(!rules.inForce());
        QCOMPARE(rules.adoptions()->choices().front().label, QStringLiteral("from 2026-12-24"));

        QCOMPARE(m_hand->house().day.ask(QStringLiteral("2026-12-24")), QString());
        QTRY_VERIFY2_WITH_TIMEOUT(told(rules).contains(QStringLiteral("in force")), qPrintable(told(rules)), 20'000);
        QVERIFY2(!told(rules).contains(QStringLiteral("binds from")), qPrintable(told(rules)));
    }

    void whatIsInForceSaysWhenMoreFollows() {
        QVERIFY(adopt("2026-11-01"));
        QVERIFY(adopt("2026-12-24"));
        In<RulesPlace> rules(m_hand->house());
        QVERIFY(told(rules).contains(QStringLiteral("in force")));
        QTRY_VERIFY2_WITH_TIMEOUT(told(rules).contains(QStringLiteral("binds from 2026-12-24")),
                                  qPrintable(told(rules)), 20'000);
    }

    /// A bulletin for some serial numbers, from a file, for a later day.
    void aBulletinSaysFromWhenAndWhomItWillBind() {
        for (const char* serial : {"TA1004", "TA1005", "TA1010"}) {
            In<EntryForm> form(m_hand->house());
            form.begin(QStringLiteral("item.entered"));
            FormHand::set(form, "item", serial);
            FormHand::set(form, "serial", serial);
            FormHand::set(form, "kind", "cylinder");
            FormHand::set(form, "made", "2019-05"); // a cylinder's stamped month is asked back
            FormHand::set(form, "on", "2026-01-01");
            QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        }
        const QTemporaryDir folder;
        QFile file(folder.filePath(QStringLiteral("bulletin.json")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bulletin);
        file.close();
        In<EntryForm> form(m_hand->house());
        form.adoptFile(QUrl::fromLocalFile(file.fileName()));
        FormHand::set(form, "everything", "true");
        FormHand::set(form, "on", "2027-01-15");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto said = m_hand->house().notice.text();
        QVERIFY2(said.contains(QStringLiteral("binds from 2027-01-15")), qPrintable(said));

        In<RulesPlace> rules(m_hand->house());
        rules.showProgramme(QStringLiteral("bulletin-7"));
        QTRY_COMPARE_WITH_TIMEOUT(rules.bindsFrom(), QStringLiteral("2027-01-15"), 20'000);
        const auto& valve = rules.requirements()->choices().front();
        QCOMPARE(valve.number, 3); // of one nobody knows the serial number
        QCOMPARE(valve.detail,
                 QStringLiteral("once, within 30 days of the day on which it was entered · serial numbers "
                                "TA1005 to TA1010 · from 2027-01-15 it binds: C-1 (its serial number is not "
                                "recorded), TA1005, TA1010"));
        QCOMPARE(rules.adoptions()->choices().front().detail,
                 QStringLiteral("everything, the pool too · serial numbers TA1005 to TA1010"));
    }

    void whoAdoptsItReadsItsTitle() {
        QVERIFY(adopt("2026-12-24"));
        const auto said = m_hand->house().notice.text();
        QVERIFY2(said.contains(QStringLiteral("inspection and airworthiness review")), qPrintable(said));
        QVERIFY2(!said.contains(QStringLiteral("part-ml-hot-air")), qPrintable(said));
    }
};

CROWNRING_TEST(AdoptedAheadTest, QCoreApplication)

}

#include "adopted_ahead_test.moc"

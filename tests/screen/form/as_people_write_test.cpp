// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/subject_page.h"
#include "screen/form/form_hand.h"
#include "screen/form/month_leaf.h"
#include "test_class.h"

namespace as_people_write_test {

using namespace crownring;
using namespace crownring::screen;

class AsPeopleWriteTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<FormHand> m_hand;

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
    }
    void cleanup() {
        QLocale::setDefault(QLocale::c());
        m_hand.reset();
    }

    void aFieldOfHoursTakesHours_data() {
        QTest::addColumn<QString>("written");
        QTest::addColumn<QString>("understood");
        const auto row = [](const char* written, const char* understood) {
            QTest::newRow(written) << QString::fromUtf8(written) << QString::fromUtf8(understood);
        };
        row("250", "250 hours");
        row("2", "2 hours");
        row("1", "1 hour");
        row("1.5", "1 hour 30 minutes");
        row("412.5", "412 hours 30 minutes");
        row("1,5", "1 hour 30 minutes");
        row("1:30", "1 hour 30 minutes");
        row("1h30", "1 hour 30 minutes");
        row("90 min", "1 hour 30 minutes");
        row("61 min", "1 hour 1 minute");
        row("45 min", "45 minutes");
        row("0", "0 hours");
        row("1,500", "");
        row("soon", "");
    }
    void aFieldOfHoursTakesHours() {
        QFETCH(QString, written);
        QFETCH(QString, understood);
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.entered"));
        FormHand::set(form, "brought_forward.minutes", written.toUtf8().constData());
        QCOMPARE(FormHand::field(form, "brought_forward.minutes").understood(), understood);
        FormHand::set(form, "item", "X-1");
        FormHand::set(form, "kind", "basket");
        QCOMPARE(m_hand->save(form), !understood.isEmpty());
    }

    void anEmptyFigureIsUnknownAndNeverZero() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.entered"));
        FormHand::set(form, "item", "K-2");
        FormHand::set(form, "kind", "other");
        FormHand::set(form, "brought_forward.minutes", "250");
        FormHand::set(form, "on", "2026-01-01");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-2"), 250 * 60);
        QVERIFY(!m_hand->item("K-2")->clock.landings.has_value());
        QVERIFY(m_hand->fit("B-ONE", "K-2"));
        In<SubjectPage> page(m_hand->house());
        page.showBalloon(QStringLiteral("B-ONE"));
        QVERIFY2(page.about().contains(QStringLiteral("K-2: landings, inflations unknown")), qPrintable(page.about()));
        form.begin(QStringLiteral("item.entered"));
        FormHand::set(form, "item", "K-3");
        FormHand::set(form, "kind", "basket");
        FormHand::set(form, "-fresh", "true");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->item("K-3")->clock.landings, std::optional(Landings(0)));
    }

    void datesGoByTheLanguageAndAlwaysByIso_data() {
        QTest::addColumn<QString>("language");
        QTest::addColumn<QString>("written");
        QTest::addColumn<QString>("day");
        QTest::newRow("ISO, in English of the US") << "en_US"
                                                   << "2026-03-05"
                                                   << "2026-03-05";
        QTest::newRow("US") << "en_US"
                            << "3/5/2026"
                            << "2026-03-05";
        QTest::newRow("Britain") << "en_GB"
                                 << "3/5/2026"
                                 << "2026-05-03";
        QTest::newRow("Germany") << "de_DE"
                                 << "5.3.26"
                                 << "2026-03-05";
        QTest::newRow("France") << "fr_FR"
                                << "05/03/2026"
                                << "2026-03-05";
        QTest::newRow("a name of the month") << "en_US"
                                             << "5 Mar 2026"
                                             << "2026-03-05";
        QTest::newRow("no such day") << "de_DE"
                                     << "30.2.2026"
                                     << "";
    }
    void datesGoByTheLanguageAndAlwaysByIso() {
        QFETCH(QString, language);
        QFETCH(QString, written);
        QFETCH(QString, day);
        QLocale::setDefault(QLocale(language));
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "on", written.toUtf8().constData());
        const auto& field = FormHand::field(form, "on");
        QCOMPARE(field.day() ? QString::fromStdString(field.day()->iso()) : QString(), day);
        QCOMPARE(field.understood().contains(QStringLiteral("2026")), !day.isEmpty());
    }
    void yesterdayIsOneTap() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        form.setDaysAgo(FormHand::rowOf(form, "on"), 1);
        QCOMPARE(form.fields()->value("on"), QStringLiteral("2026-11-24"));
        QCOMPARE(FormHand::field(form, "on").understood(), QStringLiteral("Tuesday, 24 November 2026"));
    }
    void aMonthHasItsDaysInTheOrderOfTheLanguage() {
        QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
        In<MonthLeaf> leaf(m_hand->house());
        leaf.show(QStringLiteral("1.2.2026"));
        const auto days = leaf.days();
        QCOMPARE(days.size(), 42);
        QCOMPARE(days.constFirst().toMap().value(QStringLiteral("iso")).toString(), QStringLiteral("2026-01-26"));
        QCOMPARE(days.at(6).toMap().value(QStringLiteral("iso")).toString(), QStringLiteral("2026-02-01"));
        QVERIFY(days.at(6).toMap().value(QStringLiteral("chosen")).toBool());
        leaf.step(-2);
        QCOMPARE(leaf.title(), QStringLiteral("Dezember 2025"));
    }

    void whatIsUnlikelyIsAskedBack_data() {
        QTest::addColumn<QString>("on");
        QTest::addColumn<QString>("minutes");
        QTest::addColumn<QString>("askedAt");
        QTest::newRow("a hundred-hour flight") << "2026-11-24"
                                               << "100"
                                               << "minutes";
        QTest::newRow("more than half a day") << "2026-11-24"
                                              << "12:01"
                                              << "minutes";
        QTest::newRow("1899") << "1899-06-01"
                              << "1"
                              << "on";
    }
    void whatIsUnlikelyIsAskedBack() {
        QFETCH(QString, on);
        QFETCH(QString, minutes);
        QFETCH(QString, askedAt);
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "on", on.toUtf8().constData());
        FormHand::set(form, "minutes", minutes.toUtf8().constData());
        QVERIFY(m_hand->asked(form));
        FormHand::answer(form, "kit"); // before the balloon was entered nothing was fitted
        QVERIFY(!m_hand->save(form));
        QVERIFY(!FormHand::askedAt(form, askedAt.toStdString()).isEmpty());
        QVERIFY(!form.problem().isEmpty());
        FormHand::answer(form, askedAt.toStdString());
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
    }
    void ninetyMayHaveBeenMinutes() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "90");
        QCOMPARE(FormHand::askedAt(form, "minutes"), QStringLiteral("Is 90 hours right?"));
        QCOMPARE(AskedBack::meant(FormHand::field(form, "minutes")), QStringLiteral("90 min"));
        FormHand::set(form, "minutes", "90 min");
        QCOMPARE(FormHand::askedAt(form, "minutes"), QString());
    }
    void whatHasNotHappenedIsRefused() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", "1");
        for (const char* day : {"2026-11-26", "2999-01-01"}) {
            FormHand::set(form, "on", day);
            QVERIFY(!m_hand->save(form));
            QVERIFY2(FormHand::problemAt(form, "on").contains(QStringLiteral("later than today")), day);
        }
        m_hand->house().day.ask(QStringLiteral("2027-03-01"));
        QVERIFY(m_hand->settled());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        QCOMPARE(form.fields()->value("on"), QStringLiteral("2026-11-25"));
    }

    void anotherSpellingIsTheSameBalloon() {
        In<EntryForm> form(m_hand->house());
        QSignalSpy gone(&form, &EntryForm::balloonAsked);
        form.begin(QStringLiteral("balloon.entered"));
        FormHand::set(form, "balloon", "b one");
        QVERIFY(!m_hand->save(form));
        QVERIFY(FormHand::problemAt(form, "balloon").contains(QStringLiteral("B-ONE is in the record already")));
        form.go(FormHand::field(form, "balloon").wayTo);
        QCOMPARE(gone.size(), 1);
        QCOMPARE(gone.constFirst().constFirst().toString(), QStringLiteral("B-ONE"));
        QVERIFY(!form.isOpen());
    }
    /// Periodic tests and service lives count from the stamp.
    void theStampedMonthIsAskedWhereAgeCounts() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.entered"));
        FormHand::set(form, "item", "X-2");
        for (const char* kind : {"basket", "burner", "envelope"}) {
            FormHand::set(form, "kind", kind);
            QCOMPARE(FormHand::askedAt(form, "made"), QString());
        }
        FormHand::set(form, "kind", "cylinder");
        QVERIFY(FormHand::askedAt(form, "made").contains(QStringLiteral("stamped")));
        QVERIFY(!m_hand->save(form));
        FormHand::set(form, "made", "2016-05");
        QCOMPARE(FormHand::askedAt(form, "made"), QString());
        FormHand::set(form, "made", "");
        FormHand::answer(form, "made"); // nobody knows
        QVERIFY(m_hand->save(form));
    }
    void aSecondItemOfOneNameIsRefused() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.entered"));
        FormHand::set(form, "item", "e1");
        FormHand::set(form, "kind", "basket");
        QVERIFY(!m_hand->save(form));
        QCOMPARE(FormHand::field(form, "item").wayTo, QStringLiteral("item E-1"));
    }
    /// What is stated for "Kite-90" would be asked of no "Kite 90".
    void aTypeThatIsNearlyAnotherIsAskedBack() {
        const auto describe = [this](EntryForm& form, const char* type) {
            form.begin(QStringLiteral("type.described"));
            FormHand::set(form, "type", type);
            FormHand::set(form, "kind", "envelope");
            FormHand::set(form, "manual", "Manual");
            FormHand::set(form, "revision", "1");
            return m_hand->save(form);
        };
        In<EntryForm> first(m_hand->house());
        QVERIFY(describe(first, "Kite 90"));
        In<EntryForm> second(m_hand->house());
        QVERIFY(!describe(second, "Kite-90"));
        QVERIFY(FormHand::problemAt(second, "type").contains(QStringLiteral("Kite 90")));
        QVERIFY(FormHand::field(second, "confirmed").shown);
        FormHand::set(second, "confirmed", "true");
        QVERIFY(m_hand->save(second));
    }
    void aTitleOfTenThousandLettersIsRefused() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("balloon.entered"));
        FormHand::set(form, "balloon", "B-TWO");
        FormHand::set(form, "title", std::string(10'000, 'x').c_str());
        QVERIFY(!m_hand->save(form));
        QVERIFY(!FormHand::problemAt(form, "title").isEmpty());
    }
    void whoWritesIsSaid() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        QCOMPARE(form.fields()->value("by"), QStringLiteral("tester"));
        FormHand::set(form, "minutes", "1");
        FormHand::set(form, "by", "");
        QVERIFY(!m_hand->save(form));
        QCOMPARE(FormHand::problemAt(form, "by"), QStringLiteral("This is needed."));
    }
};

CROWNRING_TEST(AsPeopleWriteTest, QCoreApplication)

}

#include "as_people_write_test.moc"

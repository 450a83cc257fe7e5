// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/form/form_hand.h"
#include "test_class.h"

namespace any_kit_test {

using namespace crownring;
using namespace crownring::screen;

class AnyKitTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<FormHand> m_hand;

    void beginFlight(EntryForm& form, const char* minutes) {
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        FormHand::set(form, "minutes", minutes);
        QTRY_VERIFY_WITH_TIMEOUT(form.kit()->count() >= 4, 20'000);
    }
    static int rowOf(EntryForm& form, const char* item) {
        for (int row = 0; row < form.kit()->count(); ++row)
            if (form.kit()->data(form.kit()->index(row), FlightKit::ItemRole).toString() == QLatin1String(item))
                return row;
        return -1;
    }
    static void swap(EntryForm& form, const char* out, const char* in) {
        form.kit()->ask(rowOf(form, out));
        form.kit()->pick(QString::fromUtf8(in));
    }

private slots:
    void init() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
        QVERIFY(m_hand->enterItem("K-2", "basket"));
    }
    void cleanup() { m_hand.reset(); }

    void anotherBasketForThisFlight() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2");
        form.kit()->ask(rowOf(form, "K-1"));
        form.kit()->sift()->setSought(QStringLiteral("k2"));
        QCOMPARE(form.kit()->sift()->hits()->valueAt(0), QStringLiteral("K-2"));
        form.kit()->pick(QStringLiteral("K-2"));
        QCOMPARE(form.kit()->told(), QStringLiteral("K-2 instead of K-1. On this flight only."));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-1"), 6000);
        QCOMPARE(m_hand->minutesOf("K-2"), 6120);
        QCOMPARE(m_hand->minutesOf("E-1"), 6120);
        QVERIFY(!m_hand->item("K-2")->balloon.has_value());
        QCOMPARE(m_hand->item("K-1")->balloon, std::optional(Registration("B-ONE")));
    }

    /// Tapped, it did not fly: until it is said what did, nothing is written that credits it.
    void whatDidNotFlyIsNotCredited() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2");
        const int basket = rowOf(form, "K-1");
        form.kit()->ask(basket);
        form.kit()->sift()->setSought(QStringLiteral("nothing of that name"));
        QVERIFY(!m_hand->save(form));
        QVERIFY(form.isOpen());
        QCOMPARE(FormHand::problemAt(form, "kit"),
                 QStringLiteral("Did not fly: K-1? Choose what flew instead, or “Nothing instead”, or “As fitted”."));
        QVERIFY(form.kit()->data(form.kit()->index(basket), FlightKit::ChangedRole).toBool());
        form.kit()->ask(rowOf(form, "R-1")); // another part is asked for, the basket is still undecided
        form.kit()->putBack();
        QVERIFY(!m_hand->save(form));
        QCOMPARE(m_hand->minutesOf("K-1"), 6000);
        form.kit()->ask(basket);
        form.kit()->putBack();
        QVERIFY(FormHand::problemAt(form, "kit").isEmpty());
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-1"), 6120);
    }

    void whatWasTappedTwiceFlies() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2");
        form.kit()->ask(rowOf(form, "K-1"));
        form.kit()->ask(rowOf(form, "K-1"));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-1"), 6120);
    }

    void anotherBasketFromNowOn() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "1"); // with the old one, earlier on the same day
        QVERIFY(m_hand->save(form));
        beginFlight(form, "2");
        QVERIFY(!form.kit()->mayStay());
        swap(form, "K-1", "K-2");
        QVERIFY(form.kit()->mayStay());
        form.kit()->setStays(true);
        QCOMPARE(form.kit()->told(), QStringLiteral("K-2 instead of K-1. It stays so."));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-1"), 6060);
        QCOMPARE(m_hand->minutesOf("K-2"), 6120);
        QVERIFY(!m_hand->item("K-1")->balloon.has_value());
        QCOMPARE(m_hand->item("K-2")->balloon, std::optional(Registration("B-ONE")));
        beginFlight(form, "3"); // the next one flies with what stayed
        QVERIFY(m_hand->save(form));
        QCOMPARE(m_hand->minutesOf("K-1"), 6060);
        QCOMPARE(m_hand->minutesOf("K-2"), 6300);
    }

    void thereAndBackWithAFlightBetween() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2");
        swap(form, "K-1", "K-2");
        form.kit()->setStays(true);
        QVERIFY(m_hand->save(form));
        beginFlight(form, "1");
        swap(form, "K-2", "K-1");
        form.kit()->setStays(true);
        QVERIFY(m_hand->save(form));
        QCOMPARE(m_hand->minutesOf("K-1"), 6060);
        QCOMPARE(m_hand->minutesOf("K-2"), 6120);
        QCOMPARE(m_hand->item("K-1")->balloon, std::optional(Registration("B-ONE")));
        auto questions = m_hand->house().desk.ask([](Record& record) { return record.questions(); });
        questions.waitForFinished();
        QVERIFY(questions.result()->empty());
    }

    void whatIsOnAnotherBalloonLeavesIt() {
        QVERIFY(m_hand->enterBalloon("B-TWO"));
        QVERIFY(m_hand->fit("B-TWO", "K-2"));
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "2");
        swap(form, "K-1", "K-2");
        form.kit()->setStays(true);
        QVERIFY2(form.kit()->told().contains(QStringLiteral("K-2 leaves B-TWO")), qPrintable(form.kit()->told()));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->item("K-2")->balloon, std::optional(Registration("B-ONE")));
        auto questions = m_hand->house().desk.ask([](Record& record) { return record.questions(); });
        questions.waitForFinished();
        QVERIFY(questions.result()->empty());
    }

    void threeCylindersOneAfterTheOther() {
        for (const char* item : {"C-2", "C-3", "C-4", "C-5", "C-6"})
            QVERIFY(m_hand->enterItem(item, "cylinder"));
        QVERIFY(m_hand->fit("B-ONE", "C-2"));
        QVERIFY(m_hand->fit("B-ONE", "C-3"));
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "1");
        QTRY_COMPARE_WITH_TIMEOUT(form.kit()->count(), 6, 20'000);
        form.kit()->ask(rowOf(form, "C-1"));
        for (const char* item : {"C-4", "C-5", "C-6"})
            form.kit()->pick(QString::fromUtf8(item));
        QCOMPARE(form.kit()->asked(), -1);
        QVERIFY(m_hand->save(form));
        for (const char* item : {"C-1", "C-2", "C-3"})
            QCOMPARE(m_hand->minutesOf(item), 6000);
        for (const char* item : {"C-4", "C-5", "C-6"})
            QCOMPARE(m_hand->minutesOf(item), 6060);
    }

    void aFlightWithoutABasketIsAskedBack() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "1");
        form.kit()->ask(rowOf(form, "K-1"));
        form.kit()->leaveOut();
        QVERIFY(!m_hand->save(form));
        QVERIFY2(FormHand::askedAt(form, "kit").contains(QStringLiteral("basket")),
                 qPrintable(FormHand::askedAt(form, "kit")));
        form.kit()->add();
        form.kit()->pick(QStringLiteral("K-2"));
        QCOMPARE(FormHand::askedAt(form, "kit"), QString());
        form.kit()->ask(rowOf(form, "K-1"));
        form.kit()->putBack();
        QVERIFY2(FormHand::askedAt(form, "kit").contains(QStringLiteral("2")), "two baskets");
        FormHand::answer(form, "kit");
        QVERIFY(m_hand->save(form));
        QCOMPARE(m_hand->minutesOf("K-1"), 6060);
        QCOMPARE(m_hand->minutesOf("K-2"), 6060);
    }

    void anEarlierDayOpensWithWhatWasFittedThen() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.removed"), QStringLiteral("B-ONE"), QStringLiteral("K-1"));
        FormHand::set(form, "on", "2026-11-10");
        QVERIFY(m_hand->asked(form));
        QCOMPARE(form.fields()->value("-when"), QStringLiteral("after")); // nothing was flown that day
        QVERIFY(m_hand->save(form));
        QVERIFY(m_hand->fit("B-ONE", "K-2", "2026-11-11"));
        form.begin(QStringLiteral("flight.logged"), QStringLiteral("B-ONE"));
        QVERIFY(m_hand->asked(form));
        QVERIFY(std::ranges::count(form.kit()->kit(), ItemId("K-2")) == 1);
        FormHand::set(form, "on", "2026-11-10");
        QVERIFY(m_hand->asked(form));
        QVERIFY(std::ranges::count(form.kit()->kit(), ItemId("K-1")) == 1);
        QVERIFY(std::ranges::count(form.kit()->kit(), ItemId("K-2")) == 0);
    }

    void aFittingOnADayOfFlightsAsksWhen() {
        In<EntryForm> form(m_hand->house());
        beginFlight(form, "1");
        QVERIFY(m_hand->save(form));
        form.begin(QStringLiteral("item.removed"), QStringLiteral("B-ONE"), QStringLiteral("K-1"));
        QVERIFY(m_hand->asked(form));
        QVERIFY2(form.follows().contains(QStringLiteral("1 flight")), qPrintable(form.follows()));
        QVERIFY(!m_hand->save(form));
        QCOMPARE(FormHand::problemAt(form, "-when"), QStringLiteral("This is needed."));
        FormHand::set(form, "-when", "at");
        QVERIFY(!m_hand->save(form));
        FormHand::set(form, "time", "9:30");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->minutesOf("K-1"), 6000); // flights without a time count at noon
    }

    void aSecondBasketIsAskedBack() {
        In<EntryForm> form(m_hand->house());
        form.begin(QStringLiteral("item.fitted"), QStringLiteral("B-ONE"), QStringLiteral("K-2"));
        QVERIFY(m_hand->asked(form));
        QVERIFY(!m_hand->save(form));
        QVERIFY2(FormHand::askedAt(form, "item").contains(QStringLiteral("K-1")),
                 qPrintable(FormHand::askedAt(form, "item")));
        FormHand::answer(form, "item");
        QVERIFY(m_hand->save(form));
    }
};

CROWNRING_TEST(AnyKitTest, QCoreApplication)

}

#include "any_kit_test.moc"

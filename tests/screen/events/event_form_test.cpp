// SPDX-License-Identifier: GPL-3.0-or-later

/// An event by its form: what it asks, what it says that follows, on what it is written; and the clock of its report.

#include "screen/events/event_desk.h"
#include "screen/form/form_hand.h"
#include "test_class.h"

#include <QTest>

#include <memory>

namespace event_form_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// A burner that ran dry is inspected, and a balloon that was dragged.
constexpr const char* adoptedAndFlown =
    R"({"entry":"programme.adopted","on":"2026-01-02","programme":"event-inspections","balloons":["B-ONE"]}
{"entry":"programme.adopted","on":"2026-01-02","programme":"part-ml-hot-air","balloons":["B-ONE"]}
{"entry":"flight.logged","id":"f","on":"2026-11-20","time":"06:00Z","balloon":"B-ONE","minutes":70,"max_temp_c":131,"track":{"file":"a.igc","highest_m":910}})";

}

class EventFormTest : public QObject {
    Q_OBJECT

    std::unique_ptr<FormHand> m_hand;

    [[nodiscard]] House& house() { return m_hand->house(); }
    [[nodiscard]] static bool isShown(EntryForm& form, const char* key) {
        const auto* field = form.fields()->field(key);
        return field && field->shown;
    }
    [[nodiscard]] bool clocksAre(EventDesk& desk, int count) {
        return QTest::qWaitFor([&] { return desk.clocks()->count() == count; }, 20'000);
    }

private slots:
    void initTestCase() {
        m_hand = std::make_unique<FormHand>();
        QVERIFY(m_hand->rigOne());
        QVERIFY(isPosted(house(), adoptedAndFlown));
        QVERIFY(QTest::qWaitFor([this] { return !house().fleet.sheet()->adoptions().empty(); }, 20'000));
    }
    void cleanupTestCase() { m_hand.reset(); }

    /// From a balloon: what happened and the day; three taps.
    void whatFollowsIsSaidBeforeItIsWritten() {
        In<EntryForm> form(house());
        form.begin(QStringLiteral("event.reported"), QStringLiteral("B-ONE"));
        QVERIFY(form.isOpen() && form.follows().isEmpty());
        QVERIFY(!isShown(form, "temp_c") && !isShown(form, "-of"));
        FormHand::set(form, "event", "dragged");
        const auto follows = form.follows();
        QVERIFY2(follows.contains(QStringLiteral("no flight before it is released")) &&
                     follows.contains(QStringLiteral("R-1")) && follows.contains(QStringLiteral("Appendix II(b)(6)")),
                 qPrintable(follows));
        QVERIFY2(follows.contains(QStringLiteral("376/2014")) && follows.contains(QStringLiteral("72")),
                 qPrintable(follows));
        FormHand::set(form, "event", "mildew");
        QVERIFY2(!form.follows().contains(QStringLiteral("376/2014")), qPrintable(form.follows()));
        FormHand::set(form, "event", "over-temperature");
        QVERIFY(isShown(form, "temp_c") && isShown(form, "minutes"));
    }
    void aCoilIsOfTheBurner() {
        In<EntryForm> form(house());
        form.begin(QStringLiteral("event.reported"), QStringLiteral("B-ONE"));
        FormHand::set(form, "event", "coil-run-dry");
        QVERIFY(isShown(form, "-of"));
        QCOMPARE(FormHand::field(form, "-of").value, QStringLiteral("R-1")); // the only one
        QVERIFY(form.follows().contains(QStringLiteral("R-1")) && !form.follows().contains(QStringLiteral("E-1")));
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QCOMPARE(m_hand->item("R-1")->events.size(), std::size_t{1});
        QVERIFY(m_hand->item("E-1")->events.empty());
    }
    void aFlightFillsItIn() {
        In<EntryForm> form(house());
        form.eventOfFlight(QStringLiteral("f"));
        QVERIFY(QTest::qWaitFor([&] { return form.isOpen(); }, 20'000));
        FormHand::set(form, "event", "over-temperature");
        QCOMPARE(FormHand::field(form, "on").value, QStringLiteral("2026-11-20"));
        QCOMPARE(FormHand::field(form, "time").value, QStringLiteral("07:10"));
        QCOMPARE(FormHand::field(form, "altitude_m").value, QStringLiteral("910"));
        QCOMPARE(FormHand::field(form, "temp_c").value, QStringLiteral("131"));
        FormHand::set(form, "minutes", "4");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        const auto& event = m_hand->item("E-1")->events.back();
        QVERIFY(event.hottest == Celsius(131) && event.lasted == Minutes(4));
    }
    /// Both may have to be reported; nothing says that they were until an entry does.
    void theClockRunsUntilAReportIsEntered() {
        In<EventDesk> desk(house());
        QVERIFY(desk.clocks()->count() == 0);
        desk.setLooking(true);
        QVERIFY(clocksAre(desk, 2));
        const auto hot = desk.clocks()->choices().back(); // the latest first
        QVERIFY2(hot.label.contains(QStringLiteral("over-temperature")) &&
                     hot.detail.contains(QStringLiteral("2026-11-23 07:10 UTC")) &&
                     hot.detail.contains(QStringLiteral("ended on")) &&
                     hot.detail.contains(QStringLiteral("No report")),
                 qPrintable(hot.label + u'\n' + hot.detail));
        In<EntryForm> form(house());
        form.beginWith(QStringLiteral("event.notified"), {}, desk.givenFor(1), hot.label);
        FormHand::set(form, "ref", "ECR-9");
        QVERIFY2(m_hand->save(form), qPrintable(form.problem()));
        QVERIFY(clocksAre(desk, 1));
        QVERIFY(desk.summary().startsWith(QStringLiteral("1 event ")));
    }
};

CROWNRING_TEST(EventFormTest, QCoreApplication)

}

#include "event_form_test.moc"

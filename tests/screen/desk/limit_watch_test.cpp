// SPDX-License-Identifier: GPL-3.0-or-later

/// What is said on the desktop when a limit nears (issue 15): once a day, each thing once, and only what is so.

#include "screen/demo_house.h"
#include "screen/desk/tidings/limit_watch.h"
#include "test_class.h"

#include <QTest>

namespace limit_watch_test {

using namespace crownring;
using namespace crownring::screen;

namespace {

/// Each is inspected every year; QE-SOON 20 days before the day, QE-PAST one day after its date, QE-FAR has months.
constexpr const char* three =
    R"({"entry":"programme.adopted","on":"2025-01-01","everything":true,"programme":"short","document":{"programme":"short","revision":"1","title":"Short","source":"invented","requirements":[{"id":"yearly","title":"Every year","source":"invented, 1","kinds":["envelope"],"action":"inspect","limits":[{"clock":"months","every":12}]}]}}
{"entry":"balloon.entered","on":"2025-01-01","balloon":"QE-SOON"}
{"entry":"item.entered","on":"2025-01-01","item":"E1","kind":"envelope"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"QE-SOON","item":"E1"}
{"entry":"requirement.done","on":"2025-12-15","item":"E1","requirement":"yearly"}
{"entry":"balloon.entered","on":"2025-01-01","balloon":"QE-PAST"}
{"entry":"item.entered","on":"2025-01-01","item":"E2","kind":"envelope"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"QE-PAST","item":"E2"}
{"entry":"requirement.done","on":"2025-11-24","item":"E2","requirement":"yearly"}
{"entry":"balloon.entered","on":"2025-01-01","balloon":"QE-FAR"}
{"entry":"item.entered","on":"2025-01-01","item":"E3","kind":"envelope"}
{"entry":"item.fitted","on":"2025-01-01","balloon":"QE-FAR","item":"E3"}
{"entry":"requirement.done","on":"2026-01-10","item":"E3","requirement":"yearly"}
)";

/// Hears what is said, as a desktop that takes it or has no service.
struct Heard : Herald {
    void say(const Tiding& tiding, std::function<void(bool)> said, std::function<void()> followed) override {
        tidings.push_back(tiding);
        follow = std::move(followed);
        said(takes);
    }
    std::vector<Tiding> tidings;
    std::function<void()> follow;
    bool takes = true;
};

}

class LimitWatchTest : public QObject {
    Q_OBJECT

    DemoHouse m_demo{DemoHouse::Filled::Empty};
    House& m_house = m_demo.house;

    [[nodiscard]] bool isOn(const char* day) {
        m_house.day.setToday(*CivilDate::parse(day));
        return m_demo.settled();
    }

private slots:
    void initTestCase() {
        QVERIFY(m_demo.ready());
        QVERIFY(isPosted(m_house, three));
    }

    /// Worst first, a line each; it leads to what comes next. The same is not said again, at no start.
    void whatIsNearOrPastIsSaidOnce() {
        Heard heard;
        int followed = 0;
        {
            const LimitWatch watch(m_house, heard, [&] { ++followed; });
            emit m_house.fleet.changed();
        }
        QCOMPARE(heard.tidings.size(), std::size_t{1});
        QVERIFY2(heard.tidings[0].title.contains(QStringLiteral("2 balloons")), qPrintable(heard.tidings[0].title));
        const auto lines = heard.tidings[0].text.split(u'\n');
        QCOMPARE(lines.size(), 2);
        QVERIFY2(lines[0].startsWith(QStringLiteral("QE-PAST: lapsed, Every year")), qPrintable(lines[0]));
        QVERIFY2(lines[1].startsWith(QStringLiteral("QE-SOON: nearing, Every year")), qPrintable(lines[1]));
        QVERIFY2(lines[1].endsWith(QStringLiteral("20 days")), qPrintable(lines[1]));
        heard.follow();
        QCOMPARE(followed, 1);
        const LimitWatch again(m_house, heard, [] {});
        emit m_house.fleet.changed();
        QCOMPARE(heard.tidings.size(), std::size_t{1});
    }
    /// On a later day what has come near since, and what was near and is past: another thing. Never while another day
    /// is asked about.
    void onALaterDayWhatIsNew() {
        Heard heard;
        const LimitWatch watch(m_house, heard, [] {});
        QVERIFY(isOn("2026-12-11"));
        QCOMPARE(heard.tidings.size(), std::size_t{1});
        QVERIFY2(heard.tidings[0].text.startsWith(QStringLiteral("QE-FAR: nearing")),
                 qPrintable(heard.tidings[0].text));
        m_house.day.setAsked(*CivilDate::parse("2027-06-01"));
        QVERIFY(m_demo.settled());
        m_house.day.setToday(*CivilDate::parse("2026-12-16"));
        QTest::qWait(50);
        QCOMPARE(heard.tidings.size(), std::size_t{1});
        m_house.day.askToday();
        QVERIFY(m_demo.settled());
        QCOMPARE(heard.tidings.size(), std::size_t{2});
        QVERIFY2(heard.tidings[1].text.startsWith(QStringLiteral("QE-SOON: lapsed")),
                 qPrintable(heard.tidings[1].text));
    }
    /// Turned off nothing is said; turned on, what was not said before.
    void itCanBeTurnedOff() {
        Heard heard;
        const LimitWatch watch(m_house, heard, [] {});
        m_house.habits.setTellsLimits(false);
        QVERIFY(isOn("2027-01-11"));
        QVERIFY(heard.tidings.empty());
        m_house.habits.setTellsLimits(true);
        QCOMPARE(heard.tidings.size(), std::size_t{1});
        QVERIFY2(heard.tidings[0].text.startsWith(QStringLiteral("QE-FAR: lapsed")), qPrintable(heard.tidings[0].text));
    }
    /// What no desktop took was not said: it is tried at the next start, and not at each word of the record.
    void withoutAServiceNothingCountsAsSaid() {
        QVERIFY(
            isPosted(m_house, R"({"entry":"requirement.done","on":"2027-01-11","item":"E1","requirement":"yearly"})"));
        QVERIFY(isOn("2028-01-05"));
        Heard deaf;
        deaf.takes = false;
        {
            const LimitWatch watch(m_house, deaf, [] {});
            emit m_house.fleet.changed();
            emit m_house.fleet.changed();
        }
        QCOMPARE(deaf.tidings.size(), std::size_t{1});
        Heard heard;
        const LimitWatch watch(m_house, heard, [] {});
        emit m_house.fleet.changed();
        QCOMPARE(heard.tidings.size(), std::size_t{1});
        QVERIFY2(heard.tidings[0].text.contains(QStringLiteral("QE-SOON: nearing")), qPrintable(heard.tidings[0].text));
    }
};

CROWNRING_TEST(LimitWatchTest, QCoreApplication)

}

#include "limit_watch_test.moc"

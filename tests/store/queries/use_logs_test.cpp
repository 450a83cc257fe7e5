// SPDX-License-Identifier: GPL-3.0-or-later

/// What items flew day by day is what their clocks say, whatever was posted.

#include "store/made_up_history.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace use_logs_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

Usage useOf(const UseLog& log) {
    Usage use;
    for (const auto& day : log.days)
        use += day.use;
    return use;
}

void postWhatIsTaken(Record& record, const std::vector<Entry>& entries) {
    for (const auto& entry : entries)
        static_cast<void>(record.append({{entry, 0}}, "made-up"));
}

constexpr const char* kitsAndStays = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"C1","kind":"cylinder"}
{"entry":"item.entered","on":"2024-03-01","item":"C2","kind":"cylinder"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"C1"}
{"entry":"item.fitted","on":"2024-02-10","balloon":"QE-TWO","item":"C1"}
{"entry":"item.fitted","on":"2024-03-01","balloon":"QE-ONE","item":"C2"}
{"entry":"flight.logged","on":"2024-02-01","time":"06:00Z","balloon":"QE-ONE","minutes":50}
{"entry":"flight.logged","on":"2024-02-01","time":"18:00Z","balloon":"QE-ONE","minutes":40,"landings":2}
{"entry":"flight.logged","on":"2024-02-20","balloon":"QE-TWO","minutes":30}
{"entry":"flight.logged","on":"2024-04-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","on":"2024-02-15","balloon":"QE-TWO","minutes":70,"kit":["E1","C1"]})";

}

class UseLogsTest : public QObject {
    Q_OBJECT

private slots:
    void aLogAddsUpToWhatTheClockGained() {
        constexpr int histories = 25; // 4 s; a hundred were looked at
        int number = 0;
        QVERIFY(rc::check([&] {
            if (++number > histories)
                return;
            const MadeUpHistory history(*rc::gen::arbitrary<unsigned>(), *rc::gen::inRange(0, 45));
            Scratch scratch;
            postWhatIsTaken(*scratch.record, history.entries);
            const auto first = MadeUpHistory::dayAt(*rc::gen::inRange(0, MadeUpHistory::lastDay));
            const auto last = addDays(first, *rc::gen::inRange(0, 70));
            const auto logs = scratch.record->useLogs({}, first, last).value();
            const auto facts = scratch.record->facts({}, last).value();
            RC_ASSERT(logs.ofItem.size() == facts.size());
            for (const auto& item : facts) {
                const auto& log = logs.logs.at(logs.ofItem.at(item.id));
                RC_ASSERT(log.first == std::max(first, item.entered) && log.last == last);
                const auto alone = scratch.record->useLogs({item.id}, first, last).value();
                RC_ASSERT(alone.logs.at(alone.ofItem.at(item.id)) == log);
                const auto clocks = scratch.record->clocks({{item.id, addDays(first, -1)}, {item.id, last}}).value();
                const auto before = clocks[0].value_or(item.broughtForward);
                // One that was unknown may have been stated meanwhile.
                if (!item.broughtForward.minutes || !item.broughtForward.landings || !item.broughtForward.inflations)
                    continue;
                RC_ASSERT(before + useOf(log) == *clocks[1]);
            }
        }));
    }

    void daysAreInOrderAndEachOnce() {
        const Scratch scratch;
        posted(*scratch.record, kitsAndStays);
        const auto logs = scratch.record->useLogs({}, day("2024-01-01"), day("2024-12-31")).value();
        const auto logOf = [&](const char* item) { return logs.logs.at(logs.ofItem.at(ItemId(item))); };
        const auto cylinder = logOf("C1");
        QCOMPARE(cylinder.days.size(), std::size_t{3});
        QVERIFY((cylinder.days[0] == DayUse{day("2024-02-01"), 2, {Minutes(90), Landings(3), Inflations(2)}}));
        QVERIFY((cylinder.days[1] == DayUse{day("2024-02-15"), 1, {Minutes(70), Landings(1), Inflations(1)}}));
        QVERIFY((cylinder.days[2] == DayUse{day("2024-02-20"), 1, {Minutes(30), Landings(1), Inflations(1)}}));
        QCOMPARE(logOf("C2").first, day("2024-03-01"));
        QCOMPARE(logOf("C2").days.size(), std::size_t{1});
        QCOMPARE(logOf("E1").days.size(), std::size_t{3});
        QCOMPARE(logOf("B1").days.size(), std::size_t{2});
    }
    void whatWasEnteredLaterIsLeftOut() {
        const Scratch scratch;
        posted(*scratch.record, kitsAndStays);
        const auto logs = scratch.record->useLogs({}, day("2024-01-01"), day("2024-02-28")).value();
        QVERIFY(!logs.ofItem.contains(ItemId("C2")));
        QVERIFY(scratch.record->useLogs({ItemId("C2")}, day("2024-01-01"), day("2024-02-28")).value().ofItem.empty());
        QVERIFY(!scratch.record->useLogs({ItemId("C3")}, day("2024-01-01"), day("2024-02-28")));
    }
    void itemsThatFlewAlikeShareALog() {
        const Scratch scratch;
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2024-01-05","balloon":"QE-ONE","item":"B1"}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":50})");
        const auto logs = scratch.record->useLogs({}, day("2024-01-01"), day("2024-12-31")).value();
        QCOMPARE(logs.logs.size(), std::size_t{1});
        QCOMPARE(logs.ofItem.size(), std::size_t{2});
    }
};

CROWNRING_TEST(UseLogsTest, QCoreApplication)

}

#include "use_logs_test.moc"

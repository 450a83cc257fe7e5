// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/shed.h"
#include "test_class.h"

namespace events_and_exemptions_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

constexpr auto afterHardLanding = R"("triggered_by": ["hard-landing", "fire"])";
constexpr auto withLimits = R"(, "limits": [{"clock": "months", "every": 12}])";

}

/// Events that make a requirement due at once, and the age below which it is not compulsory.
class EventsAndExemptionsTest : public QObject {
    Q_OBJECT
private slots:
    void withoutLimitsItIsClearUntilTheEvent() {
        const auto state = on("2024-02-01", rule(afterHardLanding), Item());
        COMPARE_STANDING(state.standing, "clear");
        QVERIFY(!state.governs && state.limits.empty() && !state.share);
    }
    void theEventMakesItDueAtOnce() {
        const auto requirement = rule(std::string(afterHardLanding) + withLimits);
        const Item item = Item().done("r", "2024-01-10").happened("hard-landing", "2024-01-20");
        const auto state = on("2024-02-01", requirement, item);
        COMPARE_STANDING(state.standing, "lapsed");
        QCOMPARE(state.because, Because::Triggered);
        QVERIFY(!state.governs);
        QCOMPARE(state.trigger->event, std::string("hard-landing"));
        COMPARE_STANDING(state.limits.at(0).standing, "clear");
    }
    void anotherEventDoesNot() {
        COMPARE_STANDING(on("2024-02-01", rule(afterHardLanding), Item().happened("mildew", "2024-01-20")).standing,
                         "clear");
    }
    void itStaysDueUntilDoneAfterTheEvent_data() {
        QTest::addColumn<QString>("done");
        QTest::addColumn<int>("hour");
        QTest::addColumn<QString>("standing");
        QTest::newRow("done the day before") << "2024-01-19" << 0 << "lapsed";
        QTest::newRow("done at 18:00 of the day, the event without a time") << "2024-01-20" << 0 << "clear";
        QTest::newRow("done at 18:00 of the day, the event at 19:00") << "2024-01-20" << 19 << "lapsed";
        QTest::newRow("done the day after") << "2024-01-21" << 19 << "clear";
    }
    void itStaysDueUntilDoneAfterTheEvent() {
        QFETCH(QString, done);
        QFETCH(int, hour);
        QFETCH(QString, standing);
        const Item item = Item().done("r", done.toStdString()).happened("fire", "2024-01-20", TimeOfDay(hour, 0));
        COMPARE_STANDING(on("2024-02-01", rule(afterHardLanding), item).standing, standing);
    }
    void theFirstEventSinceItWasDoneIsNamed() {
        const Item item = Item()
                              .happened("fire", "2024-01-01")
                              .done("r", "2024-01-05")
                              .happened("hard-landing", "2024-01-10")
                              .happened("fire", "2024-01-20");
        QCOMPARE(on("2024-02-01", rule(afterHardLanding), item).trigger->stamp.at.on(), day("2024-01-10"));
    }
    void aSatisfyingActCountsAfterTheEvent() {
        const auto requirement = rule(std::string(afterHardLanding) + R"(, "satisfied_by": ["annual"])");
        COMPARE_STANDING(
            on("2024-02-01", requirement, Item().happened("fire", "2024-01-20").done("annual", "2024-01-21")).standing,
            "clear");
    }
    void anEventThatRetiresLeavesItSpent() {
        const auto requirement = rule(R"("action": "retire", "triggered_by": ["fire"])");
        COMPARE_STANDING(on("2024-02-01", requirement, Item().happened("fire", "2024-01-20")).standing, "spent");
    }
    void anEventBeatsAnExemption() {
        const auto requirement =
            rule(std::string(afterHardLanding) + withLimits + R"(, "exempt_until": {"months": 24})");
        const Item item = Item().made("2024-01-01").happened("fire", "2024-01-20");
        COMPARE_STANDING(on("2024-02-01", requirement, item).standing, "lapsed");
    }
    void onceDoneItStaysClosedWhateverHappens() {
        const auto requirement = rule(std::string(afterHardLanding) + R"(, "once": true)");
        const Item before = Item().done("r", "2024-01-10").happened("fire", "2024-01-20");
        COMPARE_STANDING(on("2024-02-01", requirement, before).standing, "closed");
    }

    void itIsExemptWhileUnderAllBounds_data() {
        QTest::addColumn<QString>("made");
        QTest::addColumn<QString>("today");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<bool>("exempt");
        // "less than two years old and … less than 150 hours": a manufacturer's instructions, Appendix II-A, 2001.
        QTest::newRow("a day and a minute under") << "2022-06-15"
                                                  << "2024-06-14" << 8999 << true;
        QTest::newRow("two years old") << "2022-06-15"
                                       << "2024-06-15" << 8999 << false;
        QTest::newRow("150 hours") << "2022-06-15"
                                   << "2024-06-14" << 9000 << false;
        QTest::newRow("made in a month: under through the day before its last") << "2022-06"
                                                                                << "2024-06-29" << 0 << true;
        QTest::newRow("made in a month: two years at its last day") << "2022-06"
                                                                    << "2024-06-30" << 0 << false;
        QTest::newRow("manufacture unknown is not provably under") << ""
                                                                   << "2024-06-14" << 0 << false;
        QTest::newRow("clock unknown is not provably under") << "2022-06-15"
                                                             << "2024-06-14" << -1 << false;
    }
    void itIsExemptWhileUnderAllBounds() {
        QFETCH(QString, made);
        QFETCH(QString, today);
        QFETCH(int, minutes);
        QFETCH(bool, exempt);
        const auto requirement =
            rule(R"("exempt_until": {"months": 24, "minutes": 9000}, "limits": [{"clock": "months", "every": 12}])");
        Item item;
        if (!made.isEmpty())
            item.made(made.toStdString());
        item.at(minutes < 0 ? nothingStated : clockOf(minutes));
        const auto state = on(today.toStdString(), requirement, item);
        QCOMPARE(state.because == Because::Exempt, exempt);
        COMPARE_STANDING(state.standing, exempt ? "clear" : "unproven");
        QCOMPARE(state.governs.has_value(), !exempt);
        QCOMPARE(state.limits.size(), std::size_t{1});
    }
    void daysAndLandingsExemptToo() {
        const auto requirement =
            rule(R"("exempt_until": {"limits": [{"clock": "days", "every": 10}, {"clock": "landings", "every": 5}]},
            "limits": [{"clock": "months", "every": 12}])");
        const auto state = [&](std::string_view today, std::int64_t landings) {
            return on(today, requirement, Item().made("2024-01-01").at(clockOf(0, landings))).because;
        };
        QCOMPARE(state("2024-01-10", 4), Because::Exempt);
        QCOMPARE(state("2024-01-11", 4), Because::Limits);
        QCOMPARE(state("2024-01-10", 5), Because::Limits);
    }
};

CROWNRING_TEST(EventsAndExemptionsTest)

}

#include "events_and_exemptions_test.moc"

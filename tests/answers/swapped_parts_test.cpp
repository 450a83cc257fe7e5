// SPDX-License-Identifier: GPL-3.0-or-later

/// Burners that change balloons and valves that change burners: whom a directive binds on any day is what a list kept
/// by hand says, in whatever order the record heard of it.

#include "answers/directives/told.h"
#include "swapped_parts.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <array>
#include <random>

namespace swapped_parts_test {

class SwappedPartsTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        const auto set = qgetenv("RC_PARAMS");
        if (!set.contains("max_success")) // each posts twenty entries
            qputenv("RC_PARAMS", set + " max_success=60");
    }
    /// A valve with a serial of its own in the record is a part like one on a list.
    void aValveThatIsAnItemIsFittedToo() {
        Scratch scratch;
        posted(*scratch.record, twoBurners);
        posted(*scratch.record, issued("AD-1", burnersWithValve));
        posted(*scratch.record, valvesOfTheirOwn);
        const auto binds = [&](const char* burner) {
            const auto facts = scratch.record->facts({std::nullopt, {ItemId(burner)}}, day("2025-04-01")).value();
            const auto rows = directiveRows(*scratch.record, facts, {day("2025-04-01"), {}, {}, false}).value();
            return rows.front().applicability.applies;
        };
        const auto fit = [&](const char* valve, const char* burner) { posted(*scratch.record, fitted(valve, burner)); };
        QVERIFY(binds("R1") == Truth::No && binds("R2") == Truth::No);
        fit("V1", "R1");
        fit("V3", "R2");
        QVERIFY(binds("R1") == Truth::Yes && binds("R2") == Truth::No);
        fit("V2", "R2"); // of a type that nobody knows
        QVERIFY(binds("R2") == Truth::Unknown);
        posted(*scratch.record, burnerOff);
        QVERIFY(binds("R1") == Truth::Yes); // loose, with its valve in it
        posted(*scratch.record, valveOut);
        QVERIFY(binds("R1") == Truth::No);
    }
    void whatIsFittedOnADayDecidesWhomItBinds() {
        std::array<int, 3> met{};
        const auto ok = rc::check("as the sheet says, in any order of arrival", [&] {
            constexpr int steps = 8;
            Sheet sheet;
            std::vector<std::string> entries;
            std::vector<Sheet> days;
            for (int step = 0; step < steps; ++step) {
                entries.push_back(happens(sheet, step));
                days.push_back(sheet);
            }
            Scratch scratch;
            posted(*scratch.record, twoBurners);
            auto directive = issued("AD-1", envelopesWithValve, R"(,"first":{"before_flight":true})", "2024-06-01");
            directive.replace(directive.find("2025-02-01"), 10, "2024-06-01");
            posted(*scratch.record, directive);
            std::mt19937 turn(*rc::gen::arbitrary<unsigned>());
            std::ranges::shuffle(entries, turn);
            for (const auto& entry : entries)
                posted(*scratch.record, entry);
            for (int step = 0; step < steps; ++step) {
                const auto on = CivilDate::parse(dayOf(step)).value();
                const auto facts = scratch.record->facts({}, on).value();
                const auto rows = directiveRows(*scratch.record, facts, {on, {}, {}, false}).value();
                RC_ASSERT(rows.size() == std::size_t{2});
                for (const auto& row : rows) {
                    const auto expected = days[static_cast<std::size_t>(step)].binds(row.item->balloon->text());
                    RC_ASSERT(row.applicability.applies == expected);
                    ++met[static_cast<std::size_t>(expected)];
                }
            }
        });
        QVERIFY(ok);
        for (const auto times : met) // each answer was put to the test
            QVERIFY(times > 10);
    }
};

CROWNRING_TEST(SwappedPartsTest, QCoreApplication)

}

#include "swapped_parts_test.moc"

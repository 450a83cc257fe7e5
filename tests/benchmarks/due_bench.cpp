// SPDX-License-Identifier: GPL-3.0-or-later
/// The due list of 10,000 balloons with 50,000 items, 250,000 requirement rows, 200,000 readings and 5,000,000 flights,
/// against the floor: the same projected rows read by SQLite itself and added up.
#include "answers/due.h"
#include "large_fleet.h"
#include "raw_sqlite.h"

#include <benchmark/benchmark.h>

namespace crownring::bench {

namespace {

constexpr FleetSize large{10'000, 5'000'000};

std::string largeFile() { return folder() + "/crownring-bench-worked.crownring"; }

void dueListOfALargeFleet(benchmark::State& state) {
    const auto record = largeFleet(largeFile(), large);
    std::size_t rows = 0;
    for (auto _ : state) {
        const auto list = due(*record, {}, askedDay());
        rows = list.value().rows.size();
        benchmark::DoNotOptimize(rows);
    }
    state.counters["rows"] = static_cast<double>(rows);
}
BENCHMARK(dueListOfALargeFleet)->Unit(benchmark::kMillisecond)->Iterations(5);

/// The facts alone, to see what reading through Qt costs.
void factsOfALargeFleet(benchmark::State& state) {
    const auto record = largeFleet(largeFile(), large);
    for (auto _ : state)
        benchmark::DoNotOptimize(record->facts({}, askedDay()).value().size());
}
BENCHMARK(factsOfALargeFleet)->Unit(benchmark::kMillisecond)->Iterations(5);

void sameRowsAddedUpBySqlite(benchmark::State& state) {
    largeFleet(largeFile(), large).reset();
    RawSqlite raw(largeFile());
    const auto end = Moment::endOf(askedDay()).minutes();
    const auto asked = askedDay().dayNumber();
    for (auto _ : state) {
        std::int64_t sum = 0;
        sum += raw.addUp("SELECT name_no, sort, text FROM name WHERE name_no > ?", 0);
        sum +=
            raw.addUp("SELECT item_no, day, kind, serial, type, made, minutes, landings, inflations FROM item_entered"
                      " WHERE stands = 1 AND day <= ? ORDER BY item_no",
                      asked);
        sum += raw.addUp(
            "SELECT item_no, balloon_no, place, until_at, in_minutes, in_landings, in_inflations, out_minutes,"
            " out_landings, out_inflations FROM stay WHERE from_at < ? ORDER BY item_no, from_at, from_id",
            end);
        sum += raw.addUp("SELECT item_no, at, entry_id, requirement_no, method, stated_minutes, stated_landings,"
                         " stated_inflations, minutes, landings, inflations FROM done WHERE at < ?"
                         " ORDER BY item_no, at, entry_id",
                         end);
        sum += raw.addUp("SELECT balloon_no, (SELECT minutes_to + landings_to + inflations_to FROM flight f"
                         " WHERE f.balloon_no = b.balloon_no AND (f.at, f.entry_id) < (?, '') ORDER BY f.at DESC,"
                         " f.entry_id DESC LIMIT 1), operations FROM balloon_entered b",
                         end);
        benchmark::DoNotOptimize(sum);
    }
}
BENCHMARK(sameRowsAddedUpBySqlite)->Unit(benchmark::kMillisecond)->Iterations(5);

/// What it would be without running totals: every flight read and added up.
void everyFlightAddedUpBySqlite(benchmark::State& state) {
    largeFleet(largeFile(), large).reset();
    RawSqlite raw(largeFile());
    for (auto _ : state)
        benchmark::DoNotOptimize(raw.addUp("SELECT balloon_no, minutes, landings, inflations FROM flight WHERE at < ?",
                                           Moment::endOf(askedDay()).minutes()));
}
BENCHMARK(everyFlightAddedUpBySqlite)->Unit(benchmark::kMillisecond)->Iterations(3);

}

}

// SPDX-License-Identifier: GPL-3.0-or-later
/// The due list of 10,000 balloons with 50,000 items, 250,000 requirement rows, 200,000 readings and 5,000,000 flights,
/// against the floor: the same projected rows read by SQLite itself and added up.
#include "answers/due.h"
#include "answers/forecast/projected.h"
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

/// When all of those rows fall due, with all that it asks of the record: `due --json` beside `due`.
void datesOfALargeFleet(benchmark::State& state) {
    const auto record = largeFleet(largeFile(), large);
    const auto list = due(*record, {}, askedDay());
    std::size_t dated = 0;
    for (auto _ : state) {
        const auto bands = projected(*record, *list, askedDay());
        dated = 0;
        for (const auto& band : bands.value())
            dated += band.has_value();
    }
    state.counters["dated"] = static_cast<double>(dated);
}
BENCHMARK(datesOfALargeFleet)->Unit(benchmark::kMillisecond)->Iterations(3);

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
    for (auto _ : state) {
        std::int64_t sum = 0;
        for (const auto* statement :
             {"SELECT name_no, sort, text, mark FROM name",
              "SELECT item_no, day, kind, serial, type, made, minutes, landings, inflations FROM item_entered"
              " WHERE stands = 1 ORDER BY item_no",
              "SELECT item_no, from_at, from_id, until_at, until_id, balloon_no, place, in_minutes, in_landings,"
              " in_inflations, out_minutes, out_landings, out_inflations FROM stay ORDER BY item_no, from_at, from_id",
              "SELECT item_no, at, entry_id, requirement_no, method, stated_minutes, stated_landings,"
              " stated_inflations, minutes, landings, inflations, ref, paper FROM done ORDER BY item_no, at, entry_id",
              "SELECT subject_no, at, entry_id, event, celsius, lasted FROM occurrence",
              "SELECT item_no, at, entry_id, defect_no, mark, severity, what, until_day, until_minutes, reading_id"
              " FROM defect_mark ORDER BY item_no, at, entry_id",
              "SELECT item_no, at, entry_id, quantity, value, held, below, unit, gore, panel_row, direction, jaw_mm,"
              " pressure_pa, area_cm2, method, inspection, line, tester, confirmed FROM reading"
              " ORDER BY item_no, at, entry_id",
              "SELECT item_no, at, entry_id, method, gore, panel_row, width_mm, height_mm, lot, defect, inspection"
              " FROM repair ORDER BY item_no, at, entry_id",
              "SELECT item_no, at, entry_id, lot, fabric, first_gore, last_gore, first_row, last_row FROM fabric_stated"
              " ORDER BY item_no, at, entry_id",
              "SELECT balloon_no, day, operations FROM balloon_entered WHERE stands = 1",
              "SELECT balloon_no, at, minutes, landings, inflations FROM flown"})
            sum += raw.addUp(statement, 0);
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

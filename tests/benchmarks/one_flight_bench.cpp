// SPDX-License-Identifier: GPL-3.0-or-later
/// One flight logged and its balloon's standings refreshed, in a small and in a large fleet.
#include "acts/post.h"
#include "answers/due.h"
#include "large_fleet.h"

#include <benchmark/benchmark.h>

namespace crownring::bench {

namespace {

void logOneFlightAndRefresh(benchmark::State& state) {
    const auto balloons = static_cast<int>(state.range(0));
    const auto record = largeFleet(folder() + "/crownring-bench-one-" + std::to_string(balloons) + ".crownring",
                                   {balloons, balloons * 100});
    int nth = 2000;
    for (auto _ : state) {
        auto flight = flightOf(balloons / 2, ++nth, "");
        if (!postOne(*record, *record, std::move(flight)))
            state.SkipWithError("the flight was refused");
        const auto list = due(*record, {balloonName(balloons / 2), {}}, askedDay());
        benchmark::DoNotOptimize(list.value().rows.size());
    }
}
BENCHMARK(logOneFlightAndRefresh)->Arg(10)->Arg(10'000)->Unit(benchmark::kMillisecond)->Iterations(200);

}

}

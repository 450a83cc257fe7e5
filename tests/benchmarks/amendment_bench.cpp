// SPDX-License-Identifier: GPL-3.0-or-later
/// Two hundred corrections of one flight in one batch, with the write lock held: each of the one before it, and all of
/// the flight itself.
#include "acts/post.h"
#include "large_fleet.h"

#include <QtCore/QFile>
#include <benchmark/benchmark.h>

#include <stdexcept>

namespace crownring::bench {

namespace {

constexpr int corrections = 200;

std::unique_ptr<Record> recordWithAFlight() {
    const auto file = folder() + "/crownring-bench-amended.crownring";
    for (const auto* ending : {"", "-wal", "-shm"})
        QFile::remove(QString::fromStdString(file + ending));
    auto record = largeFleet(file, {1, 0});
    if (!postOne(*record, *record, flightOf(0, 0, "flight")))
        throw std::runtime_error("the flight was refused");
    return record;
}

std::string correctionOf(const std::string& target, int number, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2020-02-01","id":"c)" + std::to_string(1000 + number) +
           R"(","replaces":")" + target + R"(","with":)" + with + "}\n";
}

void post(benchmark::State& state, const std::string& lines) {
    for (auto _ : state) {
        state.PauseTiming();
        const auto record = recordWithAFlight();
        state.ResumeTiming();
        if (!postText(*record, *record, lines, "bench"))
            throw std::runtime_error("a correction was refused");
    }
}

void aChainOfCorrections(benchmark::State& state) {
    auto lines = correctionOf("flight", 0, R"({"minutes":61})");
    for (int i = 1; i < corrections; ++i)
        lines += correctionOf("c" + std::to_string(999 + i), i, R"({"note":"slip )" + std::to_string(i) + R"("})");
    post(state, lines);
}
BENCHMARK(aChainOfCorrections)->Unit(benchmark::kMillisecond)->Iterations(1);

void manyCorrectionsOfOneEntry(benchmark::State& state) {
    std::string lines;
    for (int i = 0; i < corrections; ++i)
        lines += correctionOf("flight", i, R"({"minutes":)" + std::to_string(61 + i) + "}");
    post(state, lines);
}
BENCHMARK(manyCorrectionsOfOneEntry)->Unit(benchmark::kMillisecond)->Iterations(1);

}

}

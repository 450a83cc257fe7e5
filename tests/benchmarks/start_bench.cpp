// SPDX-License-Identifier: GPL-3.0-or-later
/// From asking for the program to its first usable frame, and to the complete due list, over an empty and over a large
/// record. Each turn is a process of its own.
#include "large_fleet.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <benchmark/benchmark.h>

#include <chrono>
#include <optional>

namespace crownring::bench {

namespace {

/// The figure that the started program says after `what`, in seconds.
std::optional<double> started(const std::string& record, const QByteArray& what) {
    const auto began = std::chrono::steady_clock::now().time_since_epoch();
    QProcess program;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QStringLiteral("QT_QUICK_BACKEND"), QStringLiteral("software"));
    program.setProcessEnvironment(environment);
    program.start(QStringLiteral(CROWNRING_START_ONCE),
                  {QString::fromStdString(record),
                   QString::number(std::chrono::duration_cast<std::chrono::nanoseconds>(began).count())});
    if (!program.waitForFinished(120'000) || program.exitCode() != 0)
        return std::nullopt;
    for (const auto& line : program.readAllStandardOutput().split('\n'))
        if (line.startsWith(what + ' '))
            return line.mid(what.size() + 1).toDouble() / 1000;
    return std::nullopt;
}

std::string recordOf(int balloons) {
    if (balloons > 0) {
        const auto file = folder() + "/crownring-bench-large.crownring";
        largeFleet(file, {balloons, balloons * 500}).reset();
        return file;
    }
    const auto file = folder() + "/crownring-bench-empty.crownring";
    largeFleet(file, {0, 0}).reset();
    return file;
}

void start(benchmark::State& state, const char* what) {
    const auto record = recordOf(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        const auto seconds = started(record, what);
        if (!seconds)
            return state.SkipWithError("the program did not start");
        state.SetIterationTime(*seconds);
    }
}
BENCHMARK_CAPTURE(start, usable, "usable")
    ->Arg(0)
    ->Arg(10'000)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(10);
BENCHMARK_CAPTURE(start, complete, "complete")
    ->Arg(0)
    ->Arg(10'000)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(5);

}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "kept_memory.h"

#include <QtCore/QCoreApplication>
#include <benchmark/benchmark.h>

int main(int argc, char** argv) {
    crownring::keepFreedMemory(); // as the screen does
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
/// How long a made-up fleet's visits take to plan, and how near to proven they are.
///
///     crownring_plan_bench [balloons = 200] [weeks = 104] [stations = 4] [seeds = 5]
#include "forecast/visits/made_questions.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>

int main(int count, char** arguments) {
    using namespace crownring;
    const auto number = [&](int nth, int otherwise) { return nth < count ? std::atoi(arguments[nth]) : otherwise; };
    std::puts("| seed | seconds | gap | weeks late |\n| --- | --- | --- | --- |");
    for (int seed = 1; seed <= number(4, 5); ++seed) {
        Draws draws(static_cast<std::uint64_t>(seed));
        const auto fleet = testing::largeFleet(draws, number(1, 200), number(2, 104), number(3, 4));
        const auto began = std::chrono::steady_clock::now();
        const auto plan = cheapestPlans(fleet);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
        if (!plan)
            return EXIT_FAILURE;
        std::printf("| %d | %.1f | %.2f %% | %d |\n", seed, took.count(), 100 * plan->gap, plan->late);
    }
    return EXIT_SUCCESS;
}

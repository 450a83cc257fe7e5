// SPDX-License-Identifier: GPL-3.0-or-later
/// How well use and dates are foretold on made-up fleets of five characters whose last year is hidden: a table in
/// Markdown, for tests/README.md.
///
///     crownring_forecast_backtest [fleets of each character = 40] [seed = 1001]
///
/// What the forecast fixes (`memories`, `seasonWorth` …) was chosen on seeds 1 to 40; nothing below 1001 is reported.
#include "forecast/backtest.h"
#include "forecast/made_logs.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    using namespace crownring::made;
    const long fleets = argc > 1 ? std::strtol(argv[1], nullptr, 10) : 40;
    const auto seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1001;
    std::puts("| fleets | months | in p10 to p90 | error | dates | in p10 to p90 | error | whole year in p10 to p90 |\n"
              "| --- | --- | --- | --- | --- | --- | --- | --- |");
    Scores all;
    for (const auto character : allCharacters) {
        Scores scores;
        for (long fleet = 0; fleet < fleets; ++fleet)
            scores += backtest(madeFleet(character, seed + static_cast<unsigned long>(fleet)),
                               seed + static_cast<unsigned long>(fleet));
        std::puts(rowOf(nameOf(character), scores).c_str());
        all += scores;
    }
    std::puts(rowOf("**all**", all).c_str());
    return EXIT_SUCCESS;
}

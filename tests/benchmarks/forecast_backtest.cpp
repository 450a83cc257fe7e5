// SPDX-License-Identifier: GPL-3.0-or-later
/// How well use and dates are foretold when the last year is hidden: a table in Markdown, for tests/README.md.
///
///     crownring_forecast_backtest [fleets of each character = 40] [seed = 1001]      made-up fleets
///     crownring_forecast_backtest record FILE DAY                                    of a record, the year up to a day
///
/// What the forecast fixes (`memories`, `seasonWorth` …) was chosen on seeds 1 to 60; they are not reported.
#include "answers/forecast/fleet_use.h"
#include "forecast/backtest.h"
#include "forecast/made_logs.h"
#include "store/record_file.h"

#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace {

using namespace crownring;
using namespace crownring::made;

void printHead() {
    std::puts("| fleets | months | in p10 to p90 | error | dates | in p10 to p90 | error | whole year in p10 to p90 |\n"
              "| --- | --- | --- | --- | --- | --- | --- | --- |");
}

int ofMadeFleets(std::uint64_t fleets, std::uint64_t seed) {
    printHead();
    Scores all;
    for (const auto character : allCharacters) {
        Scores scores;
        for (auto fleet = seed; fleet < seed + fleets; ++fleet)
            scores += backtest(madeFleet(character, fleet), fleet);
        std::puts(rowOf(nameOf(character), scores).c_str());
        all += scores;
    }
    std::puts(rowOf("**all**", all).c_str());
    return EXIT_SUCCESS;
}

int ofRecord(const char* file, const char* until) {
    const auto last = CivilDate::parse(until);
    const auto record = openRecord(file, OpenMode::Existing);
    if (!last || !record)
        return EXIT_FAILURE;
    const auto cards = (*record)->balloons(*last);
    if (!cards)
        return EXIT_FAILURE;
    std::vector<MadeBalloon> fleet;
    for (const auto& card : *cards) {
        const auto log = logOf(**record, card, *last);
        if (card.out || !log || log->first > addMonths(*last, -13, DayRule::Same))
            continue;
        fleet.push_back(cutAt(*log, addMonths(*last, -12, DayRule::Same)));
        fleet.back().isAsked = !fleet.back().known.days.empty();
    }
    printHead();
    std::puts(rowOf(file, backtest(fleet, 1)).c_str());
    return EXIT_SUCCESS;
}

}

int main(int argc, char** argv) {
    if (argc == 4 && std::string_view(argv[1]) == "record")
        return ofRecord(argv[2], argv[3]);
    return ofMadeFleets(argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 40,
                        argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1001);
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/place_plan.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace crownring {

std::vector<SuggestedPlace> suggestedPlaces(int count, int gores, int rows) {
    std::vector<SuggestedPlace> places;
    if (gores < 1 || rows < 1)
        return places;
    const std::array<int, 4> heights{rows, std::max(1, rows * 3 / 4), rows, std::max(1, rows / 2)};
    const int wanted = std::min(count, gores * rows);
    for (int turn = 0; static_cast<int>(places.size()) < wanted; ++turn) {
        const int step = turn % std::max(wanted, 1);
        SuggestedPlace place{1 + step * gores / wanted, heights[static_cast<std::size_t>(turn) % heights.size()]};
        // Where a place is taken already the next free panel upward, then around, takes its turn.
        for (int tries = 0; tries < gores * rows && std::ranges::find(places, place) != places.end(); ++tries) {
            place.row = place.row % rows + 1;
            if (place.row == 1)
                place.gore = place.gore % gores + 1;
        }
        places.push_back(place);
    }
    return places;
}

std::vector<SuggestedPlace> stillAsked(std::vector<SuggestedPlace> plan, std::vector<SuggestedPlace> read, int gores) {
    std::erase_if(read, [&](const SuggestedPlace& place) { return std::erase(plan, place) > 0; });
    for (const auto& place : read) {
        if (plan.empty())
            break;
        const auto apart = [&](const SuggestedPlace& planned) {
            const int around = std::abs(planned.gore - place.gore);
            return std::min(around, std::abs(gores - around)) + std::abs(planned.row - place.row);
        };
        plan.erase(std::ranges::min_element(plan, {}, apart));
    }
    return plan;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/score.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/fabric_answer.h"

#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

Json answerOf(const FabricChannel& channel, CivilDate on, const Score& score) {
    Json bins = Json::array();
    for (const auto& bin : score.bins)
        bins.push_back({{"count", bin.count},
                        {"foretold", bin.count > 0 ? Json(bin.foretold) : Json()},
                        {"came", bin.count > 0 ? Json(bin.came) : Json()}});
    const bool any = score.count > 0;
    return {{"on", on.iso()},
            {"quantity", channel.quantity},
            {"half_years", halfYearsScored},
            {"tests", score.count},
            {"failed", score.came},
            {"brier", any ? Json(score.brier) : Json()},
            {"brier_of_base_rate", any ? Json(score.baseRate) : Json()},
            {"bins", std::move(bins)}};
}

void printScore(const Score& score) {
    std::cout << score.count << " tests of the last " << halfYearsScored / 2 << " years were forecast, " << score.came
              << " failed\n";
    if (score.count == 0)
        return;
    std::cout << std::fixed << std::setprecision(3) << "  mean square of the misses  " << score.brier << "\n"
              << "  had the share that failed been forecast each time  " << score.baseRate << "\n"
              << std::setprecision(0);
    for (std::size_t at = 0; at < score.bins.size(); ++at) {
        const auto& bin = score.bins[at];
        const double width = 100.0 / static_cast<double>(score.bins.size());
        std::cout << "  forecast " << std::setw(3) << width * static_cast<double>(at) << " to " << std::setw(3)
                  << width * static_cast<double>(at + 1) << " %: " << std::setw(6) << bin.count << " tests";
        if (bin.count > 0)
            std::cout << ", mean " << 100 * bin.foretold << " %, failed " << 100 * bin.came << " %";
        std::cout << "\n";
    }
}

}

int run(const FabricScoreOptions& options, const Common& common) {
    const auto books = openToAsk(common, options.on);
    if (!books)
        return BadInput;
    const auto channel = channelOfFleet(*books, options.quantity, books.on);
    if (!channel)
        return refuse(channel.error());
    const auto record = fabricRecord(*books, *channel, books.on);
    if (!record)
        return refuse(record.error());
    const auto score = pastScore(*record, options.seed);
    if (!score)
        return refuse(score.error());
    if (options.json)
        print(answerOf(*channel, books.on, **score));
    else
        printScore(**score);
    return Done;
}

}

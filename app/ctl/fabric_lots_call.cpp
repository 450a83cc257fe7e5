// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/lots.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/fabric_answer.h"

#include <cmath>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

std::string_view nameOf(LotStanding standing) {
    switch (standing) {
    case LotStanding::TooLittle:
        return "too-little";
    case LotStanding::AsOthers:
        return "as-others";
    case LotStanding::Watch:
        return "watch";
    case LotStanding::Alarm:
        return "alarm";
    }
    return "";
}

std::string_view wordOf(LotStanding standing) {
    return standing == LotStanding::TooLittle  ? "too little to say"
           : standing == LotStanding::AsOthers ? "as the others"
                                               : nameOf(standing);
}

Json jsonOf(const FabricRecord& record, const LotRow& row) {
    const auto finite = [](double value) { return std::isfinite(value) ? Json(value) : Json(); };
    return {{"lot", record.lots[row.lot]},
            {"envelopes", row.envelopes},
            {"readings", row.readings},
            {"rate_ratio", row.pace ? ctl::jsonOf(row.pace->ratio) : Json()},
            {"faster", row.pace ? Json(row.pace->faster) : Json()},
            {"standing", nameOf(row.standing)},
            {"ratio_alone", row.verdict ? finite(row.verdict->ratio) : Json()},
            {"p", row.verdict ? finite(row.verdict->p) : Json()},
            {"detectable_ratio", row.verdict ? finite(row.verdict->detectableRatio) : Json()}};
}

Json answerOf(const FabricFit& fit, const std::vector<FabricLots>& fabrics) {
    const auto& record = *fit.record;
    Json answer{{"on", record.on.iso()}, {"quantity", record.channel.quantity}, {"fabrics", Json::array()}};
    for (const auto& fabric : fabrics) {
        Json lots = Json::array();
        for (const auto& row : fabric.lots)
            lots.push_back(jsonOf(record, row));
        answer["fabrics"].push_back({{"fabric", record.fabrics[fabric.fabric]},
                                     {"smallest_detectable_ratio",
                                      fabric.smallestDetectableRatio ? Json(*fabric.smallestDetectableRatio) : Json()},
                                     {"lots", std::move(lots)}});
    }
    answer["convergence"] = {{"rhat_max", fit.worstRHat}, {"draws", fit.posterior.draws()}};
    return answer;
}

void printLots(const FabricFit& fit, const std::vector<FabricLots>& fabrics) {
    const auto& record = *fit.record;
    std::cout << std::fixed << std::setprecision(2);
    for (const auto& fabric : fabrics) {
        std::cout << record.fabrics[fabric.fabric] << "\n";
        for (const auto& row : fabric.lots) {
            std::cout << "  " << std::left << std::setw(16)
                      << (record.lots[row.lot].empty() ? "lot not known" : record.lots[row.lot]) << std::right
                      << std::setw(4) << row.envelopes << (row.envelopes == 1 ? " envelope  " : " envelopes ")
                      << std::setw(5) << row.readings << (row.readings == 1 ? " test   " : " tests  ");
            if (row.pace)
                std::cout << "ages " << row.pace->ratio.low << " to " << row.pace->ratio.high
                          << " times as fast as the others  ";
            std::cout << wordOf(row.standing) << "\n";
        }
        if (fabric.smallestDetectableRatio)
            std::cout << "  the smallest effect that this fleet could detect: a lot that ages "
                      << *fabric.smallestDetectableRatio << " times as fast\n";
        else
            std::cout << "  fewer than " << leastLots
                      << " lots of it are known well enough to be held against the others\n";
    }
}

}

int run(const FabricLotsOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto channel = channelOfFleet(*record, options.quantity, record.on);
    if (!channel)
        return refuse(channel.error());
    const auto fit = fittedFleet(*record, *channel, record.on, options.seed);
    if (!fit)
        return refuse(fit.error());
    const auto lots = lotsOf(*fit);
    if (options.json)
        print(answerOf(*fit, lots));
    else
        printLots(*fit, lots);
    return Done;
}

}

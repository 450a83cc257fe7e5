// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/fuel.h"
#include "ctl/call.h"
#include "ctl/calls.h"

#include <nlohmann/json.hpp>

#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

const char* sentenceOf(NoFuelRise why) {
    return why == NoFuelRise::TooFewFlights
               ? "too few flights say what they burnt"
               : "one of the latest three has too few earlier ones at a like temperature and load, or states neither";
}

}

int run(const FuelOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto told = fuelTold(*record, Registration(options.balloon), record.on);
    if (!told)
        return refuse(told.error());
    const auto& fuel = *told;
    const bool isWeighed = !fuel || fuel->unit == FuelTold::Unit::Kilograms;
    if (options.json) {
        nlohmann::ordered_json answer{
            {"balloon", options.balloon},
            {"on", record.on.iso()},
            {"unit", fuel ? nlohmann::ordered_json(isWeighed ? "kg/h" : "l/h") : nlohmann::ordered_json()},
            {"flights", fuel ? fuel->flights : 0},
            {"alike", nlohmann::ordered_json()},
            {"before", nlohmann::ordered_json()},
            {"lately", nlohmann::ordered_json()},
            {"rise", nlohmann::ordered_json()},
            {"interval", nlohmann::ordered_json()},
            {"raised", nlohmann::ordered_json()},
            {"reported", fuel && fuel->isReported}};
        if (fuel && fuel->rise) {
            const auto& rise = *fuel->rise;
            answer["alike"] = rise.alike;
            answer["before"] = rise.before;
            answer["lately"] = rise.lately;
            answer["rise"] = rise.share.middle;
            answer["interval"] = {rise.share.low, rise.share.high};
            answer["raised"] = rise.isRaised();
        } else {
            answer["why"] = sentenceOf(fuel && fuel->why ? *fuel->why : NoFuelRise::TooFewFlights);
        }
        print(answer);
        return Done;
    }
    if (!fuel || !fuel->rise) {
        std::cout << "Nothing can be said: " << sentenceOf(fuel && fuel->why ? *fuel->why : NoFuelRise::TooFewFlights)
                  << ".\n";
        return Done;
    }
    constexpr double percent = 100;
    const auto& rise = *fuel->rise;
    std::cout << std::fixed << std::setprecision(1) << rise.lately << (isWeighed ? " kg/h" : " l/h")
              << " on the latest three flights with fuel written down, " << rise.before << " on " << rise.alike
              << " like them before: " << std::showpos << std::setprecision(0) << rise.share.middle * percent << " % ("
              << rise.share.low * percent << " to " << rise.share.high * percent << " % at 95 %)" << std::noshowpos
              << "\n";
    if (fuel->isProposed())
        std::cout << "Look whether the fabric is porous or the vent leaks; report it as increased-fuel-use if it is "
                     "not the pilot or the wind.\n";
    return Done;
}

}

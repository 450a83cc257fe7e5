// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/parts/component_calls.h"
#include "measure/decimal_text.h"
#include "measure/unit.h"
#include "parts/propane.h"
#include "problem/faults/use_fault.h"
#include "words/saturation_source.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

Result<double> figureFrom(const std::string& text, const char* key) {
    if (const auto figure = parseDecimal(text))
        return *figure;
    return problem(UseFault::NotANumber, {text}, atKey(key));
}

}

int run(const PropaneOptions& options, const Common&) {
    const auto celsius = figureFrom(options.celsius, "celsius");
    const auto butane = figureFrom(options.butane, "butane");
    if (!celsius || !butane)
        return refuse(celsius ? butane.error() : celsius.error());
    const auto absolute = saturationPressure(Celsius(*celsius), *butane);
    if (!absolute)
        return refuse(absolute.error());
    constexpr double kilo = 1000;
    const double gauge = (*absolute - standardAtmosphere).value() / kilo;
    if (options.json) {
        print({{"kpa_absolute", absolute->value() / kilo},
               {"kpa_gauge", gauge},
               {"source", words::saturationSource(*butane)}});
    } else {
        std::cout << figureText(absolute->value() / kilo) << " kPa absolute, " << figureText(gauge)
                  << " kPa on a gauge at sea level, over the liquid at " << figureText(*celsius) << " degrees Celsius\n"
                  << words::saturationSource(*butane) << "\n";
    }
    return Done;
}

}

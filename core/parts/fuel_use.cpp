// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/fuel_use.h"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>
#include <set>
#include <vector>

namespace crownring {

namespace {

bool isAlike(const FuelFlight& one, const FuelFlight& other) {
    if (!one.outside || !other.outside || !one.load || !other.load)
        return false;
    const auto apart = *one.outside - *other.outside;
    return apart <= alikeOutside && -1 * apart <= alikeOutside && std::abs(*other.load / *one.load - 1) <= alikeLoad;
}

double rateOf(const FuelFlight& flight) { return std::log(flight.burnt / flight.aloft.value()); }

double meanOf(const std::vector<double>& values) {
    double sum = 0;
    for (const double each : values)
        sum += each;
    return sum / static_cast<double>(values.size());
}

}

tl::expected<FuelRise, NoFuelRise> fuelRise(std::span<const FuelFlight> flights) {
    if (flights.size() < latestCompared + leastAlike)
        return tl::unexpected(NoFuelRise::TooFewFlights);
    const auto earlier = flights.first(flights.size() - latestCompared);
    std::set<std::size_t> compared;
    std::vector<double> above, latest, means;
    double squares = 0;
    double shareOfMeans = 0; // of the scatter of one flight, in the variance of the mean
    std::size_t freedom = flights.size();
    for (const auto& flight : flights.last(latestCompared)) {
        std::vector<double> alike;
        for (std::size_t at = 0; at < earlier.size(); ++at)
            if (isAlike(flight, earlier[at])) {
                alike.push_back(rateOf(earlier[at]));
                compared.insert(at);
            }
        if (alike.size() < leastAlike)
            return tl::unexpected(NoFuelRise::TooFewAlike);
        const double mean = meanOf(alike);
        const auto count = static_cast<double>(alike.size());
        for (const double each : alike)
            squares += (each - mean) * (each - mean) / (count - 1);
        shareOfMeans += 1 / count;
        freedom = std::min(freedom, alike.size() - 1); // the sets overlap: no more than the smallest of them
        above.push_back(rateOf(flight) - mean);
        latest.push_back(rateOf(flight));
        means.push_back(mean);
    }
    constexpr auto three = static_cast<double>(latestCompared);
    const double variance = squares / three;
    const boost::math::students_t student(static_cast<double>(freedom));
    // The means rest on much the same flights, so that what they are off by is one thing and not three.
    const double reach = boost::math::quantile(student, (1 + wearConfidence) / 2) *
                         std::sqrt(variance * (1 / three + shareOfMeans / three));
    const double mean = meanOf(above);
    FuelRise rise;
    rise.share = {std::expm1(mean - reach), std::expm1(mean), std::expm1(mean + reach)};
    rise.before = std::exp(meanOf(means));
    rise.lately = std::exp(meanOf(latest));
    rise.alike = compared.size();
    return rise;
}

}

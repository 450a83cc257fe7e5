// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/wear.h"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace crownring {

namespace {

double quantileOfStudent(std::size_t freedom) {
    const boost::math::students_t student(static_cast<double>(freedom));
    return boost::math::quantile(student, (1 + wearConfidence) / 2);
}

}

tl::expected<WearTrend, NoForecast> wearTrend(std::span<const WearReading> readings) {
    if (readings.size() < leastReadings)
        return tl::unexpected(NoForecast::TooFewReadings);
    const auto count = static_cast<double>(readings.size());
    WearTrend trend;
    trend.readings = readings.size();
    for (const auto& reading : readings) {
        trend.meanHours += reading.at.value() / count;
        trend.meanValue += reading.value / count;
    }
    double crossed = 0;
    for (const auto& reading : readings) {
        const double hours = reading.at.value() - trend.meanHours;
        trend.spread += hours * hours;
        crossed += hours * (reading.value - trend.meanValue);
    }
    if (!(trend.spread > 0))
        return tl::unexpected(NoForecast::SameHours);
    trend.slope.middle = crossed / trend.spread;
    trend.intercept = trend.meanValue - trend.slope.middle * trend.meanHours;
    double squares = 0;
    for (const auto& reading : readings) {
        const double off =
            reading.value - trend.meanValue - trend.slope.middle * (reading.at.value() - trend.meanHours);
        squares += off * off;
    }
    trend.scatter = std::sqrt(squares / (count - 2));
    trend.student = quantileOfStudent(readings.size() - 2);
    const double reach = trend.student * trend.scatter / std::sqrt(trend.spread);
    trend.slope.low = trend.slope.middle - reach;
    trend.slope.high = trend.slope.middle + reach;
    return trend;
}

tl::expected<Between<Hours>, NoForecast> limitMet(const WearTrend& trend, double limit, Wears way) {
    if (trend.slope.low <= 0 && trend.slope.high >= 0)
        return tl::unexpected(NoForecast::MayNever);
    const double slope = trend.slope.middle;
    if ((slope > 0) != (way == Wears::Up))
        return tl::unexpected(NoForecast::WearsAway);
    // The ends solve (away - slope * u)^2 = band * (1/n + u^2/spread), u in hours from the mean of the readings.
    const double away = limit - trend.meanValue;
    const double band = trend.student * trend.student * trend.scatter * trend.scatter;
    const double each = 1 / static_cast<double>(trend.readings);
    const double steep = slope * slope - band / trend.spread;
    const double root = std::sqrt(band * (away * away / trend.spread + steep * each));
    const auto at = [&](double fromMean) { return Hours(trend.meanHours + fromMean); };
    return Between<Hours>{at((slope * away - root) / steep), at(away / slope), at((slope * away + root) / steep)};
}

double chanceMet(const WearTrend& trend, double limit, Wears way, Hours by) {
    const double fromMean = by.value() - trend.meanHours;
    const double beyond = (trend.at(by) - limit) * (way == Wears::Up ? 1 : -1);
    const double error =
        trend.scatter * std::sqrt(1 / static_cast<double>(trend.readings) + fromMean * fromMean / trend.spread);
    if (!(error > 0))
        return beyond < 0 ? 0 : 1;
    const boost::math::students_t student(static_cast<double>(trend.readings - 2));
    return boost::math::cdf(student, beyond / error);
}

}

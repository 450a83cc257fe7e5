// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_axis.h"

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

/// So many figures of up to three digits stand side by side on a phone, and so many longer ones.
constexpr int mostHourIntervals = 7;
constexpr int mostLongHourIntervals = 4;
constexpr double longHours = 1000;
constexpr int mostValueIntervals = 6;
constexpr double bandAgainstKnown = 2;
constexpr double middleAgainstMeasured = 3;
constexpr double roundingSlack = 1e-9; ///< of an interval: an end that falls on a tick stays there

/// The least of 1, 2, 5, 10 … times a power of ten that is not below.
double niceAbove(double rough) {
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double step : {1.0, 2.0, 5.0})
        if (rough <= step * power * (1 + roundingSlack))
            return step * power;
    return 10 * power;
}

/// Takes in what is a number.
void include(double& most, double value) {
    if (std::isfinite(value))
        most = std::max(most, value);
}

double measured(const AgeingCurve& curve) {
    double most = 0;
    include(most, curve.limit);
    for (const auto& reading : curve.readings) {
        include(most, reading.value);
        if (reading.kind == ageing::Kind::Between)
            include(most, reading.upper);
    }
    return most;
}

double highestMiddleUntilNow(const AgeingCurve& curve) {
    double most = 0;
    for (const auto& point : curve.band)
        if (point.hours <= curve.hoursNow)
            include(most, point.middle);
    return most;
}

double highestOfBand(const AgeingCurve& curve) {
    double most = 0;
    for (const auto& point : curve.band)
        include(most, point.high);
    return most;
}

double lowest(const AgeingCurve& curve) {
    double least = std::isfinite(curve.limit) ? std::min(0.0, curve.limit) : 0.0;
    for (const auto& reading : curve.readings)
        if (std::isfinite(reading.value))
            least = std::min(least, reading.value);
    return least;
}

}

AgeingAxis AgeingAxis::around(double low, double high, int most) {
    if (!(high > low))
        high = low + 1;
    AgeingAxis axis;
    int intervals = most + 1;
    for (double rough = (high - low) / most; intervals > most; rough = axis.interval * (1 + 2 * roundingSlack)) {
        axis.interval = niceAbove(rough);
        const double first = std::floor(low / axis.interval + roundingSlack);
        const double last = std::ceil(high / axis.interval - roundingSlack);
        axis.minimum = first * axis.interval;
        axis.maximum = last * axis.interval;
        intervals = static_cast<int>(last - first);
    }
    axis.ticks = intervals + 1;
    const int decimals = std::max(0, static_cast<int>(-std::floor(std::log10(axis.interval) + roundingSlack)));
    axis.format = QStringLiteral("%.%1f").arg(decimals);
    return axis;
}

AgeingAxis hoursAxis(const AgeingCurve& curve) {
    double most = 0;
    include(most, curve.hoursNow);
    for (const auto& reading : curve.readings)
        include(most, reading.hours);
    for (const auto& point : curve.band)
        include(most, point.hours);
    return AgeingAxis::around(0, most, most < longHours ? mostHourIntervals : mostLongHourIntervals);
}

AgeingAxis valueAxis(const AgeingCurve& curve) {
    double known = measured(curve);
    const double middle = highestMiddleUntilNow(curve);
    known = std::max(known, known > 0 ? std::min(middle, middleAgainstMeasured * known) : middle);
    const double top = std::min(std::max(known, highestOfBand(curve)), bandAgainstKnown * known);
    return AgeingAxis::around(lowest(curve), top, mostValueIntervals);
}

}

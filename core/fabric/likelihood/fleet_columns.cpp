// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/fleet_columns.h"

#include "problem/faults/fabric_fault.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>

namespace crownring {

namespace {

bool isValue(const Observation& seen) {
    const bool low = seen.seen == Seen::AtMost || std::isfinite(seen.low);
    const bool high = (seen.seen != Seen::AtMost && seen.seen != Seen::Between) || std::isfinite(seen.high);
    return low && high && (seen.seen != Seen::Between || seen.low < seen.high);
}

bool isReading(const SetReading& reading) {
    return std::isfinite(reading.hours) && reading.hours >= 0 && std::isfinite(reading.dose) && reading.dose >= 0 &&
           reading.row >= 0 && reading.row <= 1 && isValue(reading.observed);
}

/// Where each of `count` groups begins in a sorted column of their numbers.
template <class Number>
std::vector<std::size_t> beginnings(std::size_t count, std::size_t size, Number number) {
    std::vector<std::size_t> first(count + 1, 0);
    for (std::size_t k = 0; k < size; ++k)
        ++first[number(k) + 1];
    std::partial_sum(first.begin(), first.end(), first.begin());
    return first;
}

Result<void> checked(const FabricFleet& fleet) {
    const auto within = [](const std::vector<std::size_t>& numbers, std::size_t count) {
        return std::all_of(numbers.begin(), numbers.end(), [&](std::size_t number) { return number < count; });
    };
    if (!within(fleet.fabricOfLot, fleet.fabrics) || !within(fleet.lotOfSet, fleet.fabricOfLot.size()))
        return problem(FabricFault::BelongsToNothing);
    std::size_t last = 0;
    for (std::size_t k = 0; k < fleet.readings.size(); ++k) {
        const auto& reading = fleet.readings[k];
        if (reading.set >= fleet.lotOfSet.size() || reading.set < last)
            return problem(FabricFault::ReadingOfNoSet, {k});
        if (!isReading(reading))
            return problem(FabricFault::NoReading, {k});
        last = reading.set;
    }
    for (const auto& coupon : fleet.coupons)
        if (coupon.lot >= fleet.fabricOfLot.size() || !isValue(coupon.observed))
            return problem(FabricFault::NoCoupon);
    return {};
}

}

Result<FleetColumns> fleetColumns(const FabricFleet& fleet) {
    if (auto sound = checked(fleet); !sound)
        return tl::unexpected(sound.error());
    FleetColumns columns;
    columns.fabrics = fleet.fabrics;
    columns.fabricOfLot = fleet.fabricOfLot;
    columns.lotOfSet = fleet.lotOfSet;
    for (const auto& reading : fleet.readings) {
        const double hours = reading.hours + doseWeight * reading.dose;
        columns.lnAge.push_back(std::log(hours / hoursOfAgeUnit / agePivot));
        columns.depth.push_back(1 - reading.row);
        columns.observed.push_back(reading.observed);
    }
    columns.firstOfSet =
        beginnings(columns.sets(), fleet.readings.size(), [&](std::size_t k) { return fleet.readings[k].set; });
    for (const auto& coupon : fleet.coupons) {
        columns.coupons.push_back(coupon.observed);
        columns.lotOfCoupon.push_back(coupon.lot);
    }
    return columns;
}

void agesOf(const FleetColumns& fleet, const AgeingShape& shape, std::vector<double>& ages) {
    ages.resize(fleet.readings());
    const auto size = static_cast<Eigen::Index>(fleet.readings());
    const Eigen::Map<const Eigen::ArrayXd> lnAge(fleet.lnAge.data(), size);
    const Eigen::Map<const Eigen::ArrayXd> depth(fleet.depth.data(), size);
    Eigen::Map<Eigen::ArrayXd>(ages.data(), size) = agePivot * (shape.phi * (lnAge - shape.gamma * depth)).exp();
}

}

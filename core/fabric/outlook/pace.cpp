// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/pace.h"

#include <numeric>

namespace crownring {

namespace {

constexpr int horizon = 100 * 12; ///< months

}

YearlyPace paceOf(std::span<const double> hoursOfMonths, int firstMonth) {
    YearlyPace sums{};
    std::array<int, 12> counts{};
    for (std::size_t k = 0; k < hoursOfMonths.size(); ++k) {
        const auto month = (static_cast<std::size_t>(firstMonth) - 1 + k) % 12;
        sums[month] += hoursOfMonths[k];
        ++counts[month];
    }
    const double all = std::accumulate(hoursOfMonths.begin(), hoursOfMonths.end(), 0.0);
    const double usual = hoursOfMonths.empty() ? 0 : all / static_cast<double>(hoursOfMonths.size());
    for (std::size_t month = 0; month < sums.size(); ++month)
        sums[month] = counts[month] > 0 ? sums[month] / counts[month] : usual;
    return sums;
}

double flownBetween(const PointOfMonth& now, const PointOfMonth& then, const YearlyPace& pace) {
    const auto ofMonth = [&](int month) { return pace[static_cast<std::size_t>(month) - 1]; };
    const int months = (then.year - now.year) * 12 + then.month - now.month;
    double hours = then.gone * ofMonth(then.month) - now.gone * ofMonth(now.month);
    for (int ahead = 0; ahead < months; ++ahead)
        hours += ofMonth((now.month - 1 + ahead) % 12 + 1);
    return months < 0 || hours < 0 ? 0 : hours;
}

std::optional<PointOfMonth> reachedAt(const PointOfMonth& now, double hours, const YearlyPace& pace) {
    if (hours <= 0)
        return now;
    auto at = now;
    for (int month = 0; month < horizon; ++month) {
        const double ofMonth = pace[static_cast<std::size_t>(at.month) - 1];
        const double left = ofMonth * (1 - at.gone);
        if (hours <= left) {
            at.gone += hours / ofMonth;
            return at;
        }
        hours -= left;
        at = {at.month == 12 ? at.year + 1 : at.year, at.month % 12 + 1, 0};
    }
    return std::nullopt;
}

}

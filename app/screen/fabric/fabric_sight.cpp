// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/fabric_sight.h"

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

double between(double from, double to, double part) { return from + (to - from) * part; }

PanelForecast between(const PanelForecast& a, const PanelForecast& b, double part) {
    return {{between(a.value.low, b.value.low, part), between(a.value.middle, b.value.middle, part),
             between(a.value.high, b.value.high, part)},
            between(a.below, b.below, part)};
}

/// From new to beyond its middle life, or as far as the map looks where that is not in sight.
void drawCurve(const FabricFit& fit, FabricOutlook& outlook) {
    const auto& weakest = outlook.weakest();
    if (!weakest.outlook.byReadings)
        return;
    const double now = weakest.outlook.flown.value();
    const auto& middle = weakest.outlook.life.middle;
    const double end =
        std::max(now + FabricOutlook::mostAhead, middle ? std::min(middle->value() * 1.25, 3 * now + 300) : 0);
    for (std::size_t point = 0; point <= FabricOutlook::curvePoints; ++point) {
        const double hours = end * static_cast<double>(point) / static_cast<double>(FabricOutlook::curvePoints);
        outlook.curve.emplace_back(hours, panelForecast(fit, weakest.set, std::nullopt, Hours(hours - now)).value);
    }
    outlook.curve.emplace_back(now, panelForecast(fit, weakest.set, std::nullopt, Hours(0)).value);
    std::ranges::sort(outlook.curve, {}, &std::pair<double, Band>::first);
}

FabricOutlook::Steps stepsOf(const FabricFit& fit, std::size_t set, int row) {
    FabricOutlook::Steps steps;
    for (std::size_t step = 0; step < steps.size(); ++step)
        steps[step] = panelForecast(fit, set, row,
                                    Hours(FabricOutlook::mostAhead * static_cast<double>(step) / FabricOutlook::steps));
    return steps;
}

}

std::vector<std::size_t> FabricSight::lots() const {
    std::vector<std::size_t> lots;
    for (std::size_t at = 0; at < of().setCount; ++at) {
        const auto lot = record().sets[of().firstSet + at].lot;
        if (!record().lots[lot].empty() && std::ranges::find(lots, lot) == lots.end())
            lots.push_back(lot);
    }
    return lots;
}

Result<FabricSight> fabricSight(Books& books, const ItemId& envelope, std::size_t channel, CivilDate on) {
    auto channels = channelsOf(books, envelope, on);
    if (!channels)
        return tl::unexpected(channels.error());
    FabricSight sight;
    sight.channels = std::move(*channels);
    sight.channel = channel < sight.channels.size() ? channel : 0;
    auto record = fabricRecord(books, sight.at(), on);
    auto ahead = aheadOf(books, envelope, on);
    if (!record || !ahead)
        return tl::unexpected(record ? ahead.error() : record.error());
    sight.fleet = std::make_shared<const FabricRecord>(std::move(*record));
    sight.ahead = std::move(*ahead);
    sight.envelope = sight.record().numberOf(envelope);
    for (int row = 1; row <= sight.of().rows; ++row)
        for (int gore = 1; gore <= sight.of().gores; ++gore)
            sight.setOfPanel.push_back(sight.record().setAt(sight.envelope, {gore, row}));
    return sight;
}

FabricOutlook fabricOutlook(const FabricFit& fit, std::size_t envelope, const Ahead& ahead) {
    const auto& record = *fit.record;
    const auto& of = record.envelopes[envelope];
    FabricOutlook outlook;
    outlook.forecast = forecastOf(fit, envelope, ahead);
    outlook.worstRHat = fit.worstRHat;
    outlook.draws = fit.posterior.draws();
    outlook.envelopes = record.envelopes.size();
    outlook.readings = record.readings.size();
    drawCurve(fit, outlook);
    const auto byReadings = [&](std::size_t set) {
        return std::ranges::any_of(outlook.forecast.sets,
                                   [&](const SetForecast& each) { return each.set == set && each.outlook.byReadings; });
    };
    for (int row = 1; row <= of.rows; ++row)
        for (int gore = 1; gore <= of.gores; ++gore)
            if (const auto key = std::pair(record.setAt(envelope, {gore, row}), row);
                !outlook.panels.contains(key) && byReadings(key.first))
                outlook.panels.emplace(key, stepsOf(fit, key.first, row));
    return outlook;
}

std::optional<PanelForecast> FabricOutlook::at(std::size_t set, int row, double hoursAhead) const {
    const auto found = panels.find({set, row});
    if (found == panels.end())
        return std::nullopt;
    const double place = std::clamp(hoursAhead / mostAhead, 0.0, 1.0) * static_cast<double>(steps);
    const auto step = std::min(static_cast<std::size_t>(place), steps - 1);
    return between(found->second[step], found->second[step + 1], place - static_cast<double>(step));
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/doubt.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr std::size_t mostSlips = 3;

bool isPlausible(double value, const Quantity& quantity) {
    return value >= quantity.lowest && value <= quantity.highest;
}

/// The same digits in other units; units that mean the same count once.
std::vector<Slip> otherUnits(double figure, const Unit& given, const Quantity& quantity) {
    std::vector<Slip> slips;
    std::vector<double> meant;
    for (const auto& unit : unitsOf(quantity.dimension)) {
        const auto value = convert(figure, unit, unitOf(quantity));
        if (unit.symbol == given.symbol || !isPlausible(value, quantity) ||
            std::find(meant.begin(), meant.end(), value) != meant.end())
            continue;
        meant.push_back(value);
        slips.push_back({figure, unit.symbol});
    }
    return slips;
}

std::vector<Slip> movedPoint(double figure, const Unit& given, const Quantity& quantity) {
    std::vector<Slip> slips;
    for (const double factor : {10.0, 100.0, 1000.0})
        for (const double moved : {figure / factor, figure * factor})
            if (moved != figure && isPlausible(convert(moved, given, unitOf(quantity)), quantity))
                slips.push_back({moved, given.symbol});
    return slips;
}

std::string written(const Slip& slip, const Quantity& quantity) {
    return amountText(slip.value, *unitNamed(slip.unit, quantity.dimension));
}

std::string questionOf(double figure, const Unit& given, const Quantity& quantity, const std::vector<Slip>& likely) {
    const auto bound = [&](double value) { return figureText(convert(value, unitOf(quantity), given)); };
    auto text = std::string(quantity.title) + ": " + amountText(figure, given) + " is outside " +
                bound(quantity.lowest) + " to " + bound(quantity.highest) +
                (given.shown.empty() ? "" : " " + std::string(given.shown)) + ". ";
    if (likely.empty())
        return text + "Is that so?";
    text += "Is it ";
    for (std::size_t i = 0; i < likely.size(); ++i)
        text += (i == 0 ? "" : i + 1 == likely.size() ? " or " : ", ") + written(likely[i], quantity);
    return text + "?";
}

}

std::optional<Doubt> doubt(const Measured& reading, const Unit& given) {
    const auto* quantity = quantityNamed(reading.quantity);
    if (!quantity || given.dimension != quantity->dimension)
        return std::nullopt;
    const bool startsLow = reading.below && reading.value < quantity->lowest;
    if (isPlausible(startsLow ? *reading.below : reading.value, *quantity))
        return std::nullopt;
    const auto figure = convert(reading.value, unitOf(*quantity), given);
    auto likely = otherUnits(figure, given, *quantity);
    const auto moved = movedPoint(figure, given, *quantity);
    likely.insert(likely.end(), moved.begin(), moved.end());
    if (likely.size() > mostSlips)
        likely.resize(mostSlips);
    return Doubt{questionOf(figure, given, *quantity, likely), std::move(likely)};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/doubt.h"

#include "bench/reading/doubt_phrase.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr std::size_t mostSlips = 3;

/// The same digits in other units; units that mean the same count once.
std::vector<Figure> otherUnits(const Figure& written, const Quantity& quantity) {
    std::vector<Figure> meant;
    for (const auto& unit : unitsOf(quantity.dimension))
        if (const Figure other(written.value(), unit); unit.symbol != written.unit().symbol &&
                                                       isPlausible(quantity, other) &&
                                                       std::ranges::find(meant, other) == meant.end())
            meant.push_back(other);
    return meant;
}

std::vector<Figure> movedPoint(const Figure& written, const Quantity& quantity) {
    std::vector<Figure> meant;
    for (const double factor : {10.0, 100.0, 1000.0})
        for (const double moved : {written.value() / factor, written.value() * factor})
            if (const Figure other(moved, written.unit()); moved != written.value() && isPlausible(quantity, other))
                meant.push_back(other);
    return meant;
}

Phrase questionOf(const Figure& written, const Quantity& quantity, const std::vector<Figure>& likely) {
    const auto& given = written.unit();
    const auto bound = [&](double value) { return Figure(value, unitOf(quantity)).as(given); };
    Arguments arguments{termOf(quantity), written, bound(quantity.lowest).value(), bound(quantity.highest)};
    if (likely.empty())
        return {DoubtPhrase::IsThatSo, std::move(arguments)};
    arguments.emplace_back(listed(likely, Listed::Joined::Or));
    return {DoubtPhrase::IsItRather, std::move(arguments)};
}

}

std::optional<Doubt> doubt(const Measured& reading, const Unit& given) {
    const auto* quantity = quantityNamed(reading.quantity);
    if (!quantity || given.dimension != quantity->dimension)
        return std::nullopt;
    const bool startsLow = reading.below && reading.value < Figure(quantity->lowest, unitOf(*quantity));
    if (isPlausible(*quantity, startsLow ? *reading.below : reading.value))
        return std::nullopt;
    const auto written = reading.value.as(given);
    auto likely = otherUnits(written, *quantity);
    const auto moved = movedPoint(written, *quantity);
    likely.insert(likely.end(), moved.begin(), moved.end());
    if (likely.size() > mostSlips)
        likely.resize(mostSlips);
    return Doubt{questionOf(written, *quantity, likely), std::move(likely)};
}

std::optional<Phrase> heldTooShort(const ReadingTaken& reading, const Measured& measured,
                                   std::span<const StatedLimit> limits) {
    const auto* quantity = quantityNamed(measured.quantity);
    if (!measured.held || !quantity)
        return std::nullopt;
    const auto& held = reading.circumstances.seconds;
    for (const auto& limit : limits) {
        if (!limit.seconds || seriesOf(limit.quantity, limit.conditions) != seriesOf(measured))
            continue;
        if (!held)
            return Phrase{DoubtPhrase::HoldUnsaid, {termOf(*quantity), *limit.seconds}};
        if (*held < *limit.seconds)
            return Phrase{DoubtPhrase::HeldTooShort, {termOf(*quantity), *held, *limit.seconds}};
    }
    return std::nullopt;
}

std::optional<Phrase> farFromStated(const Measured& reading, const Unit& given, std::span<const StatedLimit> limits) {
    const auto* quantity = quantityNamed(reading.quantity);
    if (!reading.held || !quantity || given.dimension != quantity->dimension)
        return std::nullopt;
    for (const auto& limit : limits) {
        if (seriesOf(limit.quantity, limit.conditions) != seriesOf(reading))
            continue;
        const auto& stated = limit.proof ? limit.proof : limit.least;
        const double most = limit.proof ? 1.2 : 2.2;
        if (stated && stated->value() > 0 && reading.value / *stated > most)
            return Phrase{DoubtPhrase::FarFromStated, {termOf(*quantity), reading.value.as(given), stated->as(given)}};
    }
    return std::nullopt;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/verdict.h"

#include "bench/reading/judged_phrase.h"
#include "bench/reading/limit_phrase.h"
#include "measure/unit.h"
#include "parts/propane.h"
#include "problem/faults/reading_fault.h"
#include "registry/reading_phrase.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace crownring {

namespace {

Result<StatedLimit> withBounds(StatedLimit limit, const LimitStated& stated, const Quantity& quantity,
                               const Unit& unit) {
    const auto stands = [&](const std::optional<double>& figure) {
        return figure ? std::optional(Figure(*figure, unit)) : std::nullopt;
    };
    limit.least = stands(stated.least);
    limit.most = stands(stated.most);
    limit.proof = stands(stated.proof);
    for (const auto& [bound, key] : {std::pair{limit.least, "least"}, {limit.most, "most"}, {limit.proof, "proof"}})
        if (bound && !std::isfinite(bound->value()))
            return problem(ReadingFault::LimitNotANumber, {}, atKey(key));
    if (!limit.least && !limit.most && !limit.proof)
        return problem(ReadingFault::LimitWithoutBound, {}, atKey("least"));
    if (limit.least && limit.most && *limit.least > *limit.most)
        return problem(ReadingFault::LimitTurnedRound, {}, atKey("least"));
    if (limit.proof && !quantity.traits.held)
        return problem(ReadingFault::LimitCannotBeHeld, {termOf(quantity)}, atKey("proof"));
    return limit;
}

/// In the unit of what it is held against.
Phrase said(const Measured& reading, const Unit& unit) {
    Arguments arguments{quantityTerm(reading.quantity), reading.value.as(unit)};
    if (reading.held)
        return {ReadingPhrase::Held, std::move(arguments)};
    if (!reading.below)
        return {ReadingPhrase::Read, std::move(arguments)};
    arguments.push_back(reading.below->as(unit));
    return {ReadingPhrase::Step, std::move(arguments)};
}

struct Span {
    Figure low;
    std::optional<Figure> high; ///< nothing where nothing bounds it above
    bool stepped;               ///< it begins where a step turned
};

Span spanOf(const Measured& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    const bool stepped = reading.below || (quantity && quantity->traits.stepped);
    if (reading.held || (stepped && !reading.below))
        return {reading.value, std::nullopt, stepped};
    return {reading.value, reading.below.value_or(reading.value), stepped};
}

Judgement againstLeast(const Span& span, const Figure& least) {
    if (reaches(span.low, least))
        return Judgement::Passes;
    // The end of a step is not part of it.
    const bool mayReach = !span.high || (span.stepped ? *span.high > least : reaches(*span.high, least));
    return mayReach ? Judgement::Undecided : Judgement::Fails;
}

Judgement againstMost(const Span& span, const Figure& most) {
    if (span.stepped ? reaches(span.low, most) : !reaches(most, span.low))
        return Judgement::Fails;
    return span.high && reaches(most, *span.high) ? Judgement::Passes : Judgement::Undecided;
}

Judgement judgedBy(const StatedLimit& limit, const Measured& reading) {
    const auto span = spanOf(reading);
    auto judgement = Judgement::Passes;
    if (const auto least = limit.needed())
        judgement = againstLeast(span, *least);
    if (limit.most) {
        const auto other = againstMost(span, *limit.most);
        if (other == Judgement::Fails || judgement == Judgement::Passes)
            judgement = other;
    }
    return judgement;
}

Phrase reasonOf(Judgement judgement, const StatedLimit& limit, const Measured& reading) {
    const auto least = limit.needed();
    const auto what = said(reading, *limit.unit());
    Phrase reason = least && limit.most ? Phrase{JudgedPhrase::Between, {what, *least, *limit.most}}
                    : least             ? Phrase{JudgedPhrase::AtLeast, {what, *least}}
                                        : Phrase{JudgedPhrase::AtMost, {what, limit.most.value_or(Figure())}};
    return judgement == Judgement::Undecided ? Phrase{JudgedPhrase::Undecided, {std::move(reason)}} : reason;
}

/// Whether a reading and a limit of one quantity are known to be of one test.
enum class Fit {
    Same,
    Other,      ///< of another test
    NoPressure, ///< nobody can tell: the limit of a permeability does not state its pressure
    Unsaid,     ///< the reading does not say a size that the limit asks: they might be
    Undirected, ///< nor its direction
    Cold,       ///< the fuel could not have pressed so much
};

/// What propane at rest presses by gauge at the temperature of the fuel; nothing where that is not said.
std::optional<Figure> pressedBy(const Measured& reading, const Unit& unit) {
    if (!reading.liquid)
        return std::nullopt;
    const auto pressure = saturationPressure(*reading.liquid);
    const auto* pascals = unitNamed("Pa", Dimension::Pressure);
    if (!pressure || !pascals)
        return std::nullopt;
    return Figure((*pressure - standardAtmosphere).value(), *pascals).as(unit);
}

/// It fails by too little, and so it had to.
bool isCold(Judgement judgement, const StatedLimit& limit, const Measured& reading) {
    const auto least = limit.needed();
    if (judgement != Judgement::Fails || !least || reaches(reading.value, *least))
        return false;
    const auto most = pressedBy(reading, least->unit());
    return most && !reaches(*most, *least);
}

Fit fitOf(const StatedLimit& limit, const Measured& reading) {
    const auto asked = nominalSizes(limit.conditions);
    const auto done = nominalSizes(reading.conditions);
    const auto* quantity = quantityNamed(reading.quantity);
    if (quantity && quantity->traits.airflow && !asked.pressure)
        return Fit::NoPressure;
    const auto differs = [](const auto& wanted, const auto& had) { return wanted && had && *wanted != *had; };
    const auto missing = [](const auto& wanted, const auto& had) { return wanted && !had; };
    if (differs(asked.pressure, done.pressure) || differs(asked.area, done.area) || differs(asked.jaw, done.jaw))
        return Fit::Other;
    if (missing(asked.pressure, done.pressure) || missing(asked.area, done.area) || missing(asked.jaw, done.jaw))
        return Fit::Unsaid;
    return missing(limit.conditions.direction, reading.conditions.direction) ? Fit::Undirected : Fit::Same;
}

Phrase whyApart(Fit fit, const StatedLimit& limit, const Measured& reading) {
    if (fit == Fit::NoPressure)
        return {JudgedPhrase::LimitWithoutPressure, {}};
    if (fit == Fit::Cold) {
        const auto& unit = *limit.unit();
        return {JudgedPhrase::FuelTooCold,
                {said(reading, unit), InUnit{reading.liquid->value(), "degC"},
                 pressedBy(reading, unit).value_or(Figure()), limit.needed().value_or(Figure())}};
    }
    if (fit == Fit::Undirected)
        return {JudgedPhrase::DirectionNotSaid, {Term{Term::Of::Direction, *limit.conditions.direction}}};
    return {fit == Fit::Unsaid ? JudgedPhrase::TestNotSaid : JudgedPhrase::OtherTest,
            {testedAs(seriesOf(limit.quantity, limit.conditions)), testedAs(seriesOf(reading))}};
}

/// Of the zone itself something is stated.
bool isBounded(Zone zone, std::string_view quantity, std::span<const StatedLimit> limits) {
    return std::ranges::any_of(limits,
                               [&](const StatedLimit& each) { return each.quantity == quantity && each.zone == zone; });
}

bool speaksOf(const StatedLimit& limit, const Measured& reading, std::span<const StatedLimit> limits) {
    if (limit.zone ? *limit.zone != reading.zone
                   : reading.zone != Zone::Envelope && isBounded(reading.zone, limit.quantity, limits))
        return false;
    const auto& asked = limit.conditions.direction;
    const auto& done = reading.conditions.direction;
    return limit.quantity == reading.quantity && (!asked || !done || *asked == *done);
}

/// The order in which answers stand: what might apply and is not known to comes before a pass, another test after it.
int hardness(Judgement judgement, Fit fit) {
    switch (judgement) {
    case Judgement::Fails:
        return 5;
    case Judgement::Undecided:
        return 4;
    case Judgement::Incomparable:
        return fit == Fit::Unsaid || fit == Fit::Undirected || fit == Fit::Cold ? 3 : 1;
    case Judgement::Passes:
        return 2;
    case Judgement::NoLimit:
        break;
    }
    return 0;
}

struct Weighed {
    Decision decision;
    Fit fit = Fit::Same;
};

Weighed weighed(const Measured& reading, std::span<const StatedLimit> limits) {
    Weighed hardest;
    int most = 0;
    for (const auto& limit : limits) {
        if (!speaksOf(limit, reading, limits))
            continue;
        auto fit = fitOf(limit, reading);
        auto judgement = fit == Fit::Same ? judgedBy(limit, reading) : Judgement::Incomparable;
        if (isCold(judgement, limit, reading)) {
            fit = Fit::Cold;
            judgement = Judgement::Incomparable;
        }
        if (const int hard = hardness(judgement, fit); hard > most) {
            most = hard;
            hardest = {{judgement, &limit}, fit};
        }
    }
    return hardest;
}

}

std::string_view judgementName(Judgement judgement) {
    constexpr std::array<std::string_view, judgementCount> names{"passes", "fails", "undecided", "no-limit",
                                                                 "incomparable"};
    return names[static_cast<std::size_t>(judgement)];
}

std::optional<Figure> StatedLimit::needed() const {
    if (least && proof)
        return std::max(*least, *proof);
    return least ? least : proof;
}

const Unit* StatedLimit::unit() const {
    for (const auto* bound : {&least, &most, &proof})
        if (*bound)
            return &(*bound)->unit();
    return nullptr;
}

std::optional<double> StatedLimit::shareOf(const Measured& reading) const {
    const auto isSome = [](const Figure& figure) { return figure.value() > 0; };
    if (const auto bound = needed(); bound && isSome(*bound))
        return reading.value / *bound;
    if (most && isSome(*most) && isSome(reading.value))
        return *most / reading.below.value_or(reading.value);
    return std::nullopt;
}

Result<StatedLimit> limitFrom(const LimitStated& stated) {
    const auto quantity = quantityFor(stated.quantity);
    if (!quantity)
        return tl::unexpected(quantity.error());
    const auto unit = unitFor(**quantity, stated.unit);
    if (!unit)
        return tl::unexpected(unit.error());
    if (auto bad = misfit(**quantity, stated.conditions))
        return tl::unexpected(std::move(*bad));
    StatedLimit limit;
    limit.type = stated.type;
    limit.kind = stated.kind;
    limit.quantity = stated.quantity;
    limit.places = stated.places;
    limit.zone = stated.zone;
    limit.conditions = stated.conditions;
    limit.passes = stated.passes;
    limit.source = stated.source;
    limit.retires = stated.retires;
    limit.seconds = stated.seconds;
    return withBounds(std::move(limit), stated, **quantity, **unit);
}

ReadingTaken readIn(const Unit& unit, ReadingTaken reading) {
    const auto* written = unitNamed(reading.unit, unit.dimension);
    if (!written)
        return reading;
    reading.value = convert(reading.value, *written, unit);
    if (reading.below)
        reading.below = convert(*reading.below, *written, unit);
    reading.unit = unit.symbol;
    return reading;
}

std::optional<Phrase> boundsOf(const StatedLimit& limit) {
    if (limit.least && limit.most)
        return Phrase{LimitPhrase::LeastAndMost, {*limit.least, *limit.most}};
    if (limit.most && limit.proof)
        return Phrase{LimitPhrase::MostAndProof, {*limit.most, *limit.proof}};
    if (limit.most)
        return Phrase{LimitPhrase::Most, {*limit.most}};
    if (limit.least)
        return Phrase{LimitPhrase::Least, {*limit.least}};
    return limit.proof ? std::optional(Phrase{LimitPhrase::Proof, {*limit.proof}}) : std::nullopt;
}

Decision decide(const Measured& reading, std::span<const StatedLimit> limits) {
    return weighed(reading, limits).decision;
}

Judged judge(const Measured& reading, std::span<const StatedLimit> limits) {
    const auto [decision, fit] = weighed(reading, limits);
    const auto& [judgement, limit] = decision;
    if (!limit)
        return {judgement, limit, {JudgedPhrase::NoLimit, {quantityTerm(reading.quantity)}}};
    return {judgement, limit, fit == Fit::Same ? reasonOf(judgement, *limit, reading) : whyApart(fit, *limit, reading)};
}

}

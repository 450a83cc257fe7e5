// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/verdict.h"

#include "bench/reading/judged_phrase.h"
#include "problem/faults/reading_fault.h"
#include "registry/reading_phrase.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace crownring {

namespace {

Result<StatedLimit> withBounds(StatedLimit limit, const LimitStated& stated, const Quantity& quantity,
                               const Unit& unit) {
    const auto own = [&](const std::optional<double>& figure) {
        return figure ? std::optional(figureOf(quantity, *figure, unit)) : std::nullopt;
    };
    limit.least = own(stated.least);
    limit.most = own(stated.most);
    limit.proof = own(stated.proof);
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

Phrase said(const Measured& reading) {
    Arguments arguments{quantityTerm(reading.quantity), reading.value};
    if (reading.held)
        return {ReadingPhrase::Held, std::move(arguments)};
    if (!reading.below)
        return {ReadingPhrase::Read, std::move(arguments)};
    arguments.push_back(*reading.below);
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

Phrase reasonOf(const StatedLimit& limit, const Measured& reading) {
    const auto least = limit.needed();
    if (least && limit.most)
        return {JudgedPhrase::Between, {said(reading), *least, *limit.most}};
    return least ? Phrase{JudgedPhrase::AtLeast, {said(reading), *least}}
                 : Phrase{JudgedPhrase::AtMost, {said(reading), limit.most.value_or(Figure())}};
}

Judged judgedBy(const StatedLimit& limit, const Measured& reading) {
    const auto span = spanOf(reading);
    Judged judged{Judgement::Passes, &limit, reasonOf(limit, reading)};
    if (const auto least = limit.needed())
        judged.judgement = againstLeast(span, *least);
    if (limit.most) {
        const auto other = againstMost(span, *limit.most);
        if (other == Judgement::Fails || judged.judgement == Judgement::Passes)
            judged.judgement = other;
    }
    if (judged.judgement == Judgement::Undecided)
        judged.reason = {JudgedPhrase::Undecided, {std::move(judged.reason)}};
    return judged;
}

/// Why a reading and a limit of one quantity are not known to be of one test.
struct Apart {
    Phrase why;
    bool unknown = false; ///< the reading does not say what the limit asks: they might be of one
};

/// Nothing where they are of one.
std::optional<Apart> apart(const StatedLimit& limit, const Measured& reading) {
    const auto asked = seriesOf(limit.quantity, limit.conditions);
    const auto done = seriesOf(reading);
    const auto* quantity = quantityNamed(reading.quantity);
    if (quantity && quantity->traits.airflow && !asked.pressure)
        return Apart{{JudgedPhrase::LimitWithoutPressure, {}}};
    const auto differs = [](const auto& wanted, const auto& had) { return wanted && had && *wanted != *had; };
    const auto missing = [](const auto& wanted, const auto& had) { return wanted && !had; };
    const Arguments both{testedAs(asked), testedAs(done)};
    if (differs(asked.pressure, done.pressure) || differs(asked.area, done.area) || differs(asked.jaw, done.jaw))
        return Apart{{JudgedPhrase::OtherTest, both}};
    if (missing(asked.pressure, done.pressure) || missing(asked.area, done.area) || missing(asked.jaw, done.jaw))
        return Apart{{JudgedPhrase::TestNotSaid, both}, true};
    if (missing(limit.conditions.direction, reading.conditions.direction))
        return Apart{{JudgedPhrase::DirectionNotSaid, {Term{Term::Of::Direction, *limit.conditions.direction}}}, true};
    return std::nullopt;
}

bool speaksOf(const StatedLimit& limit, const Measured& reading) {
    const auto& asked = limit.conditions.direction;
    const auto& done = reading.conditions.direction;
    return limit.quantity == reading.quantity && (!asked || !done || *asked == *done);
}

/// The order in which answers stand: what might apply and is not known to comes before a pass, another test after it.
int hardness(Judgement judgement, bool unknown) {
    switch (judgement) {
    case Judgement::Fails:
        return 5;
    case Judgement::Undecided:
        return 4;
    case Judgement::Incomparable:
        return unknown ? 3 : 1;
    case Judgement::Passes:
        return 2;
    case Judgement::NoLimit:
        break;
    }
    return 0;
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
    limit.conditions = stated.conditions;
    limit.passes = stated.passes;
    limit.source = stated.source;
    limit.retires = stated.retires;
    return withBounds(std::move(limit), stated, **quantity, **unit);
}

Judged judge(const Measured& reading, std::span<const StatedLimit> limits) {
    Judged hardest{Judgement::NoLimit, nullptr, {JudgedPhrase::NoLimit, {quantityTerm(reading.quantity)}}};
    int most = 0;
    for (const auto& limit : limits) {
        if (!speaksOf(limit, reading))
            continue;
        const auto differ = apart(limit, reading);
        auto judged = differ ? Judged{Judgement::Incomparable, &limit, differ->why} : judgedBy(limit, reading);
        if (const int hard = hardness(judged.judgement, differ && differ->unknown); hard > most) {
            most = hard;
            hardest = std::move(judged);
        }
    }
    return hardest;
}

}

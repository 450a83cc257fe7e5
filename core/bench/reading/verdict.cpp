// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/verdict.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace crownring {

namespace {

tl::unexpected<Problem> refuse(std::string message, std::string mend, const char* key) {
    return problem(Code::BadQuantity, std::move(message), std::move(mend), {{}, 0, key});
}

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
            return refuse("it is not a number", "write the figure that the manual states", key);
    if (!limit.least && !limit.most && !limit.proof)
        return refuse("the limit has no bound", "state least, most or proof", "least");
    if (limit.least && limit.most && *limit.least > *limit.most)
        return refuse("least is above most", "look again at the manual", "least");
    if (limit.proof && !quantity.traits.held)
        return refuse(std::string(quantity.title) + " cannot be held", "state least or most", "proof");
    return limit;
}

std::string titleOf(const Measured& reading) {
    const auto* quantity = quantityNamed(reading.quantity);
    return std::string(quantity ? quantity->title : reading.quantity);
}

std::string readingText(const Measured& reading) {
    const auto value = amountText(reading.value);
    if (reading.held)
        return "held at " + value;
    return reading.below ? value + " to below " + amountText(*reading.below) : value;
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

Judged judgedBy(const StatedLimit& limit, const Measured& reading) {
    const auto span = spanOf(reading);
    Judged judged{Judgement::Passes, &limit, titleOf(reading) + " " + readingText(reading)};
    std::string bounds;
    if (const auto least = limit.needed()) {
        judged.judgement = againstLeast(span, *least);
        bounds = ", at least " + amountText(*least);
    }
    if (limit.most) {
        const auto other = againstMost(span, *limit.most);
        if (other == Judgement::Fails || judged.judgement == Judgement::Passes)
            judged.judgement = other;
        bounds += (bounds.empty() ? ", at most " : " and at most ") + amountText(*limit.most);
    }
    judged.reason += bounds + " is stated";
    if (judged.judgement == Judgement::Undecided)
        judged.reason += ": the reading is a bound that does not reach the limit";
    return judged;
}

/// Why a reading and a limit of one quantity are not known to be of one test.
struct Apart {
    std::string why;      ///< empty: they are of one
    bool unknown = false; ///< the reading does not say what the limit asks: they might be
};

Apart apart(const StatedLimit& limit, const Measured& reading) {
    const auto asked = seriesOf(limit.quantity, limit.conditions);
    const auto done = seriesOf(reading);
    const auto* quantity = quantityNamed(reading.quantity);
    if (quantity && quantity->traits.airflow && !asked.pressure)
        return {"the limit does not state its pressure"};
    const auto differs = [](const auto& wanted, const auto& had) { return wanted && had && *wanted != *had; };
    const auto missing = [](const auto& wanted, const auto& had) { return wanted && !had; };
    const auto both = "the limit is for " + seriesText(asked) + ", the reading is " + seriesText(done);
    if (differs(asked.pressure, done.pressure) || differs(asked.area, done.area) || differs(asked.jaw, done.jaw))
        return {both};
    if (missing(asked.pressure, done.pressure) || missing(asked.area, done.area) || missing(asked.jaw, done.jaw))
        return {both + " and does not say the rest", true};
    if (missing(limit.conditions.direction, reading.conditions.direction))
        return {"the limit is for the " + *limit.conditions.direction + ", the reading does not state its direction",
                true};
    return {};
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
    Judged hardest{Judgement::NoLimit, nullptr, "no limit is stated for " + titleOf(reading)};
    int most = 0;
    for (const auto& limit : limits) {
        if (!speaksOf(limit, reading))
            continue;
        auto [why, unknown] = apart(limit, reading);
        auto judged = why.empty() ? judgedBy(limit, reading) : Judged{Judgement::Incomparable, &limit, std::move(why)};
        if (const int hard = hardness(judged.judgement, unknown); hard > most) {
            most = hard;
            hardest = std::move(judged);
        }
    }
    return hardest;
}

}

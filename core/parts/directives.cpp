// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/directives.h"

#include "parts/near_name.h"

#include <algorithm>
#include <array>

namespace crownring {

namespace {

constexpr std::array<std::string_view, whyBoundCount> whys{
    "all-holds",      "other-kind",   "other-type",     "other-serial", "nothing-fitted", "type-missing",
    "serial-missing", "serial-shape", "parts-unlisted", "nearly-alike", "entries-differ"};

/// As a type is written in two ways by two hands: whatever its case, blanks and dashes.
bool isOneType(std::string_view a, std::string_view b) { return plainSerial(a) == plainSerial(b); }

/// The worse of two answers, with its reason; of equal ones the first.
Applicability both(Applicability a, Applicability b) { return b.applies < a.applies ? b : a; }

/// The best answer for any thing of the tree; unknown where a part of which nothing is said may be it.
Applicability anywhere(const ThingAsked& asked, const std::vector<FittedThing>& things, bool isWhole) {
    Applicability best = isWhole ? Applicability{Truth::No, WhyBound::NothingFitted, asked.name}
                                 : Applicability{Truth::Unknown, WhyBound::PartsUnlisted, asked.name};
    const auto take = [&](Applicability found) {
        if (found.applies > best.applies || (found.applies == Truth::Unknown && best.why == WhyBound::PartsUnlisted))
            best = std::move(found);
    };
    for (const auto& thing : things) {
        if (auto found = isAsked(asked, thing); found.applies != Truth::No)
            take(std::move(found));
        if (auto found = anywhere(asked, thing.parts, thing.isWhole); found.applies != Truth::No)
            take(std::move(found));
    }
    return best;
}

Applicability typeOf(const ThingAsked& asked, const FittedThing& thing) {
    if (asked.types.empty())
        return {Truth::Yes, WhyBound::AllHolds, thing.name};
    if (!thing.type)
        return {Truth::Unknown, WhyBound::TypeMissing, thing.name};
    if (std::ranges::any_of(asked.types, [&](const auto& type) { return isOneType(type, *thing.type); }))
        return {Truth::Yes, WhyBound::AllHolds, thing.name};
    if (std::ranges::any_of(asked.types, [&](const auto& type) { return isNearlyType(*thing.type, type); }))
        return {Truth::Unknown, WhyBound::NearlyAlike, thing.name};
    return {Truth::No, WhyBound::OtherType, thing.name};
}

Applicability serialOf(const ThingAsked& asked, const FittedThing& thing) {
    if (asked.serials.empty())
        return {Truth::Yes, WhyBound::AllHolds, thing.name};
    if (!thing.serial)
        return {Truth::Unknown, WhyBound::SerialMissing, thing.name};
    switch (isAmong(*thing.serial, asked.serials)) {
    case Truth::Yes:
        return {Truth::Yes, WhyBound::AllHolds, thing.name};
    case Truth::No:
        return {Truth::No, WhyBound::OtherSerial, thing.name};
    case Truth::Unknown:
        break;
    }
    return {Truth::Unknown, WhyBound::SerialShape, thing.name};
}

}

std::string_view whyBoundName(WhyBound why) { return whys[static_cast<std::size_t>(why)]; }

bool mayBe(std::string_view part, const FittedThing& thing) {
    return thing.name == part || (!thing.isItem && isNearlyPart(thing.name, part));
}

Applicability isAsked(const ThingAsked& asked, const FittedThing& thing) {
    const bool isNamed = asked.name.empty() || asked.name == thing.name;
    if (!isNamed && !mayBe(asked.name, thing))
        return {Truth::No, WhyBound::OtherKind, thing.name};
    const Applicability named{isNamed ? Truth::Yes : Truth::Unknown,
                              isNamed ? WhyBound::AllHolds : WhyBound::NearlyAlike, thing.name};
    return both(both(typeOf(asked, thing), serialOf(asked, thing)), named);
}

Applicability applies(const BoundBy& bound, const FittedThing& item, const std::vector<FittedThing>& fitted,
                      bool isWhole) {
    auto answer = isAsked(bound.item, item);
    for (const auto& asked : bound.having)
        answer = both(answer, anywhere(asked, fitted, isWhole));
    return answer;
}

}

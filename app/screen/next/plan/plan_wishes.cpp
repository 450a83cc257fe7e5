// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_wishes.h"

#include "words/border.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

/// Pins of a plan have Mondays for days here.
void PlanWishes::forget(const Registration& balloon, CivilDate week) {
    std::erase_if(pins, [&](const VisitPin& pin) { return pin.balloon == balloon && pin.day == week; });
}

void PlanWishes::hold(const VisitPlace& visit) {
    forget(visit.balloon, visit.week);
    pins.push_back({visit.balloon, visit.week, visit.station, false, {}});
}

void PlanWishes::forbid(const VisitPlace& visit, bool anywhere) {
    std::erase_if(pins, [&](const VisitPin& pin) {
        return pin.balloon == visit.balloon && pin.day == visit.week &&
               (anywhere || !pin.forbids || pin.station == visit.station);
    });
    pins.push_back({visit.balloon, visit.week, anywhere ? std::nullopt : std::optional(visit.station), true, {}});
}

void PlanWishes::move(const VisitPlace& visit, const VisitPlace& to) {
    if (visit.week != to.week)
        forbid(visit, true);
    hold(to);
}

bool PlanWishes::isHeld(const VisitPlace& visit) const {
    return std::ranges::any_of(pins, [&](const VisitPin& pin) {
        return !pin.forbids && pin.balloon == visit.balloon && pin.day == visit.week && pin.station == visit.station;
    });
}

void PlanWishes::drop(std::size_t nth) {
    if (nth < pins.size())
        pins.erase(pins.begin() + static_cast<std::ptrdiff_t>(nth));
    else
        letGo.erase(letGo.begin() + static_cast<std::ptrdiff_t>(nth - pins.size()));
}

QString PlanWishes::said(std::size_t nth) const {
    const auto& pin = pins[nth];
    const auto balloon = inward(pin.balloon.text());
    const auto week = inward(pin.day.iso());
    if (!pin.forbids)
        return tr("%1 goes to %2 in the week from %3").arg(balloon, inward(pin.station.value_or("")), week);
    return pin.station ? tr("%1 does not go to %2 in the week from %3").arg(balloon, inward(*pin.station), week)
                       : tr("%1 goes nowhere in the week from %2").arg(balloon, week);
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/directive_due.h"

#include "rules/programme/serial_order.h"
#include "rules/standing/limit_state.h"

#include <algorithm>

namespace crownring {

namespace {

/// What the limits are counted from.
struct Origin {
    CivilDate on;
    Figures clock;
};

LimitState stateFrom(Limit limit, const Origin& origin, const Figures& now, CivilDate today) {
    limit.tolerance = 0;
    if (isCalendar(limit.clock)) {
        const auto due = limit.clock == ClockName::Months ? addMonths(origin.on, limit.every, limit.day)
                                                          : addDays(origin.on, limit.every);
        return stateIn(Interval<CivilDate>{origin.on, origin.on, due}, limit, Action::Comply, today);
    }
    const auto from = figureOf(origin.clock, limit.clock);
    const auto at = figureOf(now, limit.clock);
    LimitState state;
    state.clock = limit.clock;
    return from && at ? stateIn(Interval<ClockCount>{*from, *from, *from + ClockCount(limit.every)}, limit,
                                Action::Comply, *at)
                      : state;
}

bool governsBefore(const LimitState& a, const LimitState& b) {
    return a.standing != b.standing ? a.standing < b.standing : a.share && b.share && *a.share < *b.share;
}

DirectiveState worstOf(const std::vector<LimitState>& limits) {
    if (limits.empty()) // it says not until when: nobody can show that it may wait
        return {Standing::Unproven, {}};
    const auto worst = std::ranges::min_element(limits, governsBefore);
    return {worst->standing, *worst};
}

bool isHarder(const Directive& a, const Directive& b) {
    if (a.force != b.force)
        return a.force == Force::Mandatory;
    if (a.first.beforeFlight != b.first.beforeFlight)
        return a.first.beforeFlight;
    return a.first.by.value_or(CivilDate::last()) < b.first.by.value_or(CivilDate::last());
}

/// Of two revisions of one directive.
bool isLater(const Directive& a, const Directive& b) {
    if (a.effective != b.effective)
        return b.effective < a.effective;
    const int order = compareSerials(plainSerial(a.revision), plainSerial(b.revision));
    if (order != 0 && isOneShape(a.revision, b.revision))
        return order > 0;
    if (isHarder(a, b) != isHarder(b, a))
        return isHarder(a, b);
    return order > 0 || (order == 0 && a.revision > b.revision);
}

bool supersedes(const Directive& one, const Directive& other) {
    return &one != &other && one.isOneIssuers(other) &&
           (one.force == Force::Mandatory || other.force == Force::Recommended) &&
           std::ranges::find(one.supersedes, other.number) != one.supersedes.end();
}

/// One supersedes the other, or what does, or …
bool leadsTo(std::span<const Directive* const> all, const Directive& one, const Directive& other) {
    std::vector<const Directive*> led{&one};
    for (std::size_t at = 0; at < led.size(); ++at)
        for (const auto* each : all)
            if (supersedes(*led[at], *each) && std::ranges::find(led, each) == led.end())
                led.push_back(each);
    return std::ranges::find(led, &other) != led.end();
}

}

std::vector<const Directive*> inForceOn(std::span<const Directive> directives, CivilDate day) {
    std::vector<const Directive*> latest;
    for (const auto& each : directives) {
        if (day < each.effective)
            continue;
        const auto known = std::ranges::find_if(latest, [&](const Directive* other) { return other->isSame(each); });
        if (known == latest.end())
            latest.push_back(&each);
        else if (isLater(each, **known))
            *known = &each;
    }
    const auto all = latest;
    std::erase_if(latest, [&](const Directive* each) {
        return std::ranges::any_of(
            all, [&](const Directive* other) { return supersedes(*other, *each) && !leadsTo(all, *each, *other); });
    });
    return latest;
}

DirectiveState standingOf(const Directive& directive, std::span<const Compliance> done, const Figures& atEffective,
                          const Figures& now, CivilDate today) {
    if (std::ranges::any_of(done, &Compliance::isTerminating) || (!done.empty() && directive.repeat.empty()))
        return {Standing::Closed, {}};
    std::vector<LimitState> limits;
    if (!done.empty()) {
        for (const auto& limit : directive.repeat)
            limits.push_back(stateFrom(limit, {done.back().on, done.back().clock}, now, today));
        return worstOf(limits);
    }
    if (directive.first.beforeFlight)
        return {Standing::Lapsed, {}};
    for (const auto& limit : directive.first.within)
        limits.push_back(stateFrom(limit, {directive.effective, atEffective}, now, today));
    if (directive.first.by)
        limits.push_back(stateIn(Interval<CivilDate>{directive.effective, directive.effective, *directive.first.by},
                                 {.clock = ClockName::Days, .every = 0, .first = {}, .lookAhead = {}}, Action::Comply,
                                 today));
    return worstOf(limits);
}

}

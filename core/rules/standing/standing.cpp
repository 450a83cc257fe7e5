// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/standing.h"

#include "rules/standing/binding.h"
#include "rules/standing/counting_acts.h"
#include "rules/standing/limit_state.h"
#include "rules/standing/with_inspections.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr std::array<std::string_view, standingCount> standingNames = {"spent",   "lapsed", "unproven", "tolerance",
                                                                       "nearing", "clear",  "closed"};

Assessment closed(Because because) {
    Assessment state;
    state.standing = Standing::Closed;
    state.because = because;
    return state;
}

bool isEnded(const Requirement& requirement, const ItemFacts& item) {
    return !requirement.endedBy.empty() && std::ranges::any_of(item.done, [&](const auto& done) {
        return std::ranges::find(requirement.endedBy, done.requirement) != requirement.endedBy.end();
    });
}

/// The first event since the last act that makes the requirement due at once.
const Occurrence* triggerOf(const Requirement& requirement, const ItemFacts& item, std::span<const Act> acts) {
    if (requirement.triggeredBy.empty())
        return nullptr;
    const auto found = std::ranges::find_if(item.events, [&](const Occurrence& event) {
        return (acts.empty() || *acts.back().stamp < event.stamp) &&
               std::ranges::find(requirement.triggeredBy, event.event) != requirement.triggeredBy.end();
    });
    return found == item.events.end() ? nullptr : &*found;
}

bool isUnder(ClockName clock, std::int64_t amount, const ItemFacts& item, CivilDate today) {
    if (!isCalendar(clock)) {
        const auto figure = figureOf(item.clock, clock);
        return figure && *figure < ClockCount(amount);
    }
    if (!isKnownMade(item, today))
        return false;
    const auto made = item.made->lastDay();
    const auto rule = item.made->isMonth() ? DayRule::MonthEnd : DayRule::Same;
    return today < (clock == ClockName::Months ? addMonths(made, amount, rule) : addDays(made, amount));
}

bool isExempt(const Requirement& requirement, const ItemFacts& item, CivilDate today) {
    return !requirement.exemptUntil.empty() && std::ranges::all_of(requirement.exemptUntil, [&](const auto& bound) {
        return isUnder(bound.first, bound.second, item, today);
    });
}

/// Equal standings are parted by the share left; unproven limits have none and keep their order.
bool governsBefore(const LimitState& a, const LimitState& b, Whichever whichever) {
    const bool first = whichever == Whichever::First;
    if (a.standing != b.standing)
        return first ? a.standing < b.standing : b.standing < a.standing;
    if (!a.share || !b.share)
        return false;
    return first ? *a.share < *b.share : *b.share < *a.share;
}

void settleByLimits(Assessment& state, Whichever whichever) {
    if (state.limits.empty()) {
        state.standing = Standing::Clear;
        return;
    }
    const auto governing = std::ranges::min_element(
        state.limits, [&](const auto& a, const auto& b) { return governsBefore(a, b, whichever); });
    state.standing = governing->standing;
    state.governs = governing->clock;
    state.share = governing->share;
}

void settle(Assessment& state, const Requirement& requirement, const ItemFacts& item, const CountingActs& counting,
            CivilDate today) {
    if (const auto* trigger = triggerOf(requirement, item, counting.inOrder())) {
        state.standing = requirement.action == Action::Retire ? Standing::Spent : Standing::Lapsed;
        state.because = Because::Triggered;
        state.trigger = trigger;
    } else if (isExempt(requirement, item, today)) {
        state.standing = Standing::Clear;
        state.because = Because::Exempt;
    } else {
        settleByLimits(state, requirement.whichever);
        state.because = counting.rowFull ? Because::RowFull : Because::Limits;
    }
}

/// Whether the item is bound is not known, so no limit of it is.
Assessment unproven(const Requirement& requirement, Because because, std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}, .because = because};
    state.limits.resize(requirement.limits.size());
    std::ranges::transform(requirement.limits, state.limits.begin(), [](const Limit& limit) {
        LimitState unknown;
        unknown.clock = limit.clock;
        return unknown;
    });
    return state;
}

/// What goes with an inspection is looked at only from outside: two that name each other come with nothing.
enum class Depth { Whole, WithoutInspections };

Assessment assessWhereRequired(const Requirement& requirement, const ItemFacts& item, const InForce& inForce,
                               CivilDate today, std::pmr::memory_resource* memory, Depth depth = Depth::Whole);

/// An inspection that the limit goes with is near or past. Where none of them is in force nobody knows.
bool comes(const Limit& limit, const ItemFacts& item, const InForce& inForce, CivilDate today) {
    bool any = false;
    for (const auto& id : limit.with) {
        const auto* inspection = inForce.find(id);
        if (!inspection || !binds(*inspection, item) || !calledForBy(*inspection, item.operations))
            continue;
        any = true;
        if (assessWhereRequired(*inspection, item, inForce, today, std::pmr::get_default_resource(),
                                Depth::WithoutInspections)
                .standing < Standing::Clear)
            return true;
    }
    return !any;
}

Assessment assessWhereRequired(const Requirement& requirement, const ItemFacts& item, const InForce& inForce,
                               CivilDate today, std::pmr::memory_resource* memory, Depth depth) {
    if (isEnded(requirement, item))
        return closed(Because::Ended);
    const auto counting = countingActs(requirement, item, inForce);
    const auto evidence = counting.acts.empty() ? std::nullopt : std::optional(counting.acts.back().evidence);
    if (requirement.once && evidence) {
        auto done = closed(Because::Done);
        done.evidence = evidence;
        return done;
    }
    if (const auto missing = missingFact(requirement, item))
        return unproven(requirement, *missing, memory);
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.limits.reserve(requirement.limits.size());
    for (const auto& limit : requirement.limits)
        if (limit.with.empty())
            state.limits.push_back(limitState(requirement, limit, item, counting.inOrder(), today));
        else if (depth == Depth::Whole)
            state.limits.push_back(
                stateWith(requirement, limit, item, counting.inOrder(), inForce, comes(limit, item, inForce, today)));
    settle(state, requirement, item, counting, today);
    state.evidence = evidence;
    return state;
}

}

std::string_view standingText(Standing standing) { return standingNames[static_cast<std::size_t>(standing)]; }

const LimitState* governingLimit(const Assessment& state) {
    const auto found = std::ranges::find_if(state.limits, [&](const LimitState& limit) {
        return state.governs == limit.clock && state.standing == limit.standing && state.share == limit.share;
    });
    return found == state.limits.end() ? nullptr : &*found;
}

Assessment assess(const Requirement& requirement, const ItemFacts& item, const InForce& inForce, CivilDate today,
                  std::pmr::memory_resource* memory, const std::vector<std::string>& flownFor) {
    auto state = assessWhereRequired(requirement, item, inForce, today, memory);
    if (!calledForBy(requirement, item.operations) && !calledForBy(requirement, flownFor))
        state.because = Because::NotRequired;
    return state;
}

}

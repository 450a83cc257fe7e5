// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/defects.h"

#include "rules/due/due_phrase.h"
#include "rules/standing/limit_state.h"

#include <algorithm>
#include <tuple>

namespace crownring {

namespace {

constexpr std::string_view prefix = "defect/";

LimitState unproven(ClockName clock) {
    LimitState state;
    state.clock = clock;
    return state;
}

/// At the moment that a clearing has where it states none.
bool isUntimed(Moment at) { return at == Moment(at.on(), Kind<DefectCleared>::time); }

/// From the day on which it was put off, since no clock was read then.
void limitsOf(const DefectMark& deferred, const ItemFacts& item, CivilDate today,
              std::pmr::vector<LimitState>& limits) {
    if (deferred.until) {
        const auto from = deferred.stamp.at.on();
        limits.push_back(stateIn({from, from, *deferred.until},
                                 {.clock = ClockName::Days, .first = {}, .lookAhead = {}}, Action::Service, today));
    }
    if (deferred.untilMinutes) {
        const Limit limit{.clock = ClockName::Minutes, .first = {}, .lookAhead = {}};
        const ClockCount due(deferred.untilMinutes->value());
        const auto now = figureOf(item.clock, limit.clock);
        limits.push_back(now ? stateIn({ClockCount(0), ClockCount(0), due}, limit, Action::Service, *now)
                             : unproven(limit.clock));
    }
}

Argument sourceOf(const OpenDefect& defect) {
    if (defect.cleared)
        return defect.cleared->unsignedIn
                   ? Phrase{DuePhrase::ClearedUnsigned, {defect.cleared->what, *defect.cleared->unsignedIn}}
                   : Phrase{DuePhrase::ClearingBarred, {defect.cleared->what, *defect.cleared->bar}};
    if (!defect.deferred)
        return Phrase{DuePhrase::FoundOn, {defect.found->stamp.at.on()}};
    const auto& [what, bar] = std::tie(defect.deferred->what, defect.deferred->bar);
    return bar ? Phrase{DuePhrase::DeferralBarred, {what, *bar}} : Phrase{DuePhrase::Deferred, {what}};
}

/// 0 does not bar flight, 1 may be deferred, 2 is never.
int graveness(const DefectMark& found) { return isGrounding(found) ? 2 : rankOf(found.severity); }

/// It was put off by who may not for what it is flown for: that bars what would without it.
bool isBarred(const OpenDefect& defect) {
    return defect.deferred && defect.deferred->bar && defect.found->severity != Severity::Minor;
}

}

bool isGrounding(const DefectMark& found) { return found.failed.has_value() || found.severity == Severity::Grounding; }

std::vector<OpenDefect> openDefects(const ItemFacts& item) {
    std::vector<OpenDefect> open;
    std::vector<const DefectMark*> early; // clearings without a time, which their finding may follow on that day
    const auto isAnswered = [&](const DefectMark& found) {
        return std::erase_if(early, [&](const DefectMark* clearing) {
                   return clearing->defect == found.defect && clearing->stamp.at.on() == found.stamp.at.on();
               }) > 0;
    };
    for (const auto& mark : item.defects) {
        const auto known =
            std::ranges::find_if(open, [&](const OpenDefect& each) { return each.found->defect == mark.defect; });
        if (mark.kind == DefectMark::Kind::Found && known == open.end()) {
            if (!isAnswered(mark))
                open.push_back({&mark, nullptr, nullptr});
        } else if (known == open.end()) {
            if (mark.kind == DefectMark::Kind::Cleared && mark.isCounted() && isUntimed(mark.stamp.at))
                early.push_back(&mark);
        } else if (mark.kind == DefectMark::Kind::Found) {
            // What nobody has put right is not made less by finding it again.
            if (!known->cleared || graveness(*known->found) <= graveness(mark))
                *known = {&mark, known->deferred, nullptr};
        } else if (mark.kind == DefectMark::Kind::Deferred) {
            known->deferred = &mark;
        } else if (!mark.isCounted()) {
            known->cleared = &mark;
        } else {
            open.erase(known);
        }
    }
    return open;
}

bool bars(const OpenDefect& defect, const ItemFacts& item, CivilDate today) {
    if (isGrounding(*defect.found))
        return true;
    if (defect.found->severity == Severity::Minor && !defect.deferred)
        return false;
    const auto standing = assessDefect(defect, item, today).standing;
    return standing == Standing::Lapsed || standing == Standing::Unproven;
}

RequirementId requirementOf(const DefectId& defect) { return RequirementId(std::string(prefix) + defect.text()); }

std::optional<DefectId> defectOf(const RequirementId& requirement) {
    const std::string_view text = requirement.text();
    return text.starts_with(prefix) ? std::optional(DefectId(text.substr(prefix.size()))) : std::nullopt;
}

Requirement defectRequirement(const OpenDefect& defect, const ItemFacts& item, CivilDate today) {
    Requirement requirement;
    requirement.id = requirementOf(defect.found->defect);
    requirement.title = Phrase{DuePhrase::Defect, {whatOf(*defect.found)}};
    requirement.source = sourceOf(defect);
    requirement.note = Phrase{DuePhrase::DefectNote, {}};
    requirement.action = Action::Service;
    const bool mandatory = defect.found->severity != Severity::Minor || bars(defect, item, today);
    requirement.force = mandatory ? Force::Mandatory : Force::Recommended;
    return requirement;
}

const Programme& defectProgramme() {
    static const Programme programme{ProgrammeId("defects"),
                                     "",
                                     Phrase{DuePhrase::DefectsFound, {}},
                                     Phrase{DuePhrase::TheRecordItself, {}},
                                     Phrase{DuePhrase::DefectsAreNoProgramme, {}},
                                     {}};
    return programme;
}

Assessment assessDefect(const OpenDefect& defect, const ItemFacts& item, CivilDate today,
                        std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.because = Because::Defect;
    const bool grounds = isGrounding(*defect.found);
    state.standing = grounds || defect.found->severity != Severity::Minor ? Standing::Lapsed : Standing::Nearing;
    if (isBarred(defect))
        state.because = Because::DeferredElsewhere;
    if (grounds || !defect.deferred || isBarred(defect))
        return state;
    state.because = Because::Deferred;
    limitsOf(*defect.deferred, item, today, state.limits);
    const auto worst = std::ranges::min_element(state.limits, [](const LimitState& a, const LimitState& b) {
        return a.standing != b.standing ? a.standing < b.standing : a.share < b.share;
    });
    if (worst == state.limits.end())
        return state;
    state.standing = worst->standing;
    state.governs = worst->clock;
    state.share = worst->share;
    return state;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/visit.h"

#include <algorithm>

namespace crownring {

namespace {

enum class Errand { Periodic, Special, OwnersTasks, Work, GradedWork, Components };

struct Known {
    std::string_view name;
    Regime regime;
    Errand errand;
};

constexpr std::array<Known, allVisits.size()> known{{
    {"part-ml-inspection", Regime::PartMl, Errand::Periodic},
    {"part-ml-special", Regime::PartMl, Errand::Special},
    {"part-ml-owner-tasks", Regime::PartMl, Errand::OwnersTasks},
    {"us-annual", Regime::Us14Cfr, Errand::Periodic},
    {"us-hundred-hour", Regime::Us14Cfr, Errand::Periodic},
    {"us-special", Regime::Us14Cfr, Errand::Special},
    {"us-owner-tasks", Regime::Us14Cfr, Errand::OwnersTasks},
    {"part-ml-repair", Regime::PartMl, Errand::GradedWork},
    {"part-ml-rectification", Regime::PartMl, Errand::Work},
    {"part-ml-compliance", Regime::PartMl, Errand::Work},
    {"part-ml-modification", Regime::PartMl, Errand::GradedWork},
    {"part-ml-component", Regime::PartMl, Errand::Components},
    {"us-repair", Regime::Us14Cfr, Errand::GradedWork},
    {"us-rectification", Regime::Us14Cfr, Errand::Work},
    {"us-compliance", Regime::Us14Cfr, Errand::Work},
    {"us-alteration", Regime::Us14Cfr, Errand::GradedWork},
    {"us-component", Regime::Us14Cfr, Errand::Components},
}};

const Known& of(Visit visit) { return known[static_cast<std::size_t>(visit)]; }

}

std::string_view regimeName(Regime regime) { return regime == Regime::PartMl ? "part-ml" : "us-14cfr"; }

std::optional<Regime> regimeFrom(std::string_view name) {
    for (const auto regime : allRegimes)
        if (regimeName(regime) == name)
            return regime;
    return std::nullopt;
}

std::string_view visitName(Visit visit) { return of(visit).name; }

std::optional<Visit> visitFrom(std::string_view name) {
    for (const auto visit : allVisits)
        if (visitName(visit) == name)
            return visit;
    return std::nullopt;
}

std::vector<std::string_view> visitNames() {
    std::vector<std::string_view> names;
    for (const auto& each : known)
        names.push_back(each.name);
    return names;
}

Term termOf(Visit visit) { return {Term::Of::Visit, std::string(visitName(visit))}; }

Regime regimeOf(Visit visit) { return of(visit).regime; }

bool isPeriodic(Visit visit) { return of(visit).errand == Errand::Periodic; }

bool isSpecial(Visit visit) { return of(visit).errand == Errand::Special; }

bool isOfOwnersTasks(Visit visit) { return of(visit).errand == Errand::OwnersTasks; }

bool isMaintenance(Visit visit) { return of(visit).errand >= Errand::Work; }

bool isGraded(Visit visit) { return of(visit).errand == Errand::GradedWork; }

bool isInspection(Visit visit) { return isPeriodic(visit) || isSpecial(visit); }

bool isOfComponents(Visit visit) { return of(visit).errand == Errand::Components; }

std::vector<RequirementId> accomplishes(Visit visit) {
    switch (visit) {
    case Visit::PartMlInspection:
        return {RequirementId("ml.inspection")};
    case Visit::PartMlSpecial:
        return {RequirementId("ml.special-inspection"), RequirementId("ml.over-temperature")};
    case Visit::UsAnnual:
        return {RequirementId("us.annual")};
    case Visit::UsHundredHour:
        return {RequirementId("us.hundred-hour")};
    case Visit::UsSpecial:
        return {RequirementId("us.special-inspection")};
    default:
        return {}; // what it was opened for
    }
}

bool accomplishes(Visit visit, const RequirementId& requirement) {
    const auto done = accomplishes(visit);
    return std::ranges::find(done, requirement) != done.end();
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/visit.h"

#include <algorithm>

namespace crownring {

namespace {

enum class Errand { Periodic, Special, OwnersTasks };

struct Known {
    std::string_view name;
    std::string_view title;
    Regime regime;
    Errand errand;
};

constexpr std::array<Known, allVisits.size()> known{{
    {"part-ml-inspection", "Annual or 100-hour inspection (Part-ML)", Regime::PartMl, Errand::Periodic},
    {"part-ml-special", "Special inspection after an event (Part-ML)", Regime::PartMl, Errand::Special},
    {"part-ml-owner-tasks", "Limited pilot-owner maintenance (Part-ML)", Regime::PartMl, Errand::OwnersTasks},
    {"us-annual", "Annual inspection (14 CFR 91.409(a))", Regime::Us14Cfr, Errand::Periodic},
    {"us-hundred-hour", "100-hour inspection (14 CFR 91.409(b))", Regime::Us14Cfr, Errand::Periodic},
    {"us-special", "Special inspection after an event (14 CFR)", Regime::Us14Cfr, Errand::Special},
    {"us-owner-tasks", "Preventive maintenance (14 CFR Part 43, Appendix A(c))", Regime::Us14Cfr, Errand::OwnersTasks},
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

std::string visitList() {
    std::string list;
    for (const auto& each : known)
        list += (list.empty() ? "" : ", ") + std::string(each.name);
    return list;
}

std::string_view visitTitle(Visit visit) { return of(visit).title; }

Regime regimeOf(Visit visit) { return of(visit).regime; }

bool isPeriodic(Visit visit) { return of(visit).errand == Errand::Periodic; }

bool isOfOwnersTasks(Visit visit) { return of(visit).errand == Errand::OwnersTasks; }

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
    case Visit::PartMlOwnerTasks:
    case Visit::UsOwnerTasks:
        break;
    }
    return {};
}

bool accomplishes(Visit visit, const RequirementId& requirement) {
    const auto done = accomplishes(visit);
    return std::ranges::find(done, requirement) != done.end();
}

}

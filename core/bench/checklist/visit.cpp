// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/visit.h"

namespace crownring {

namespace {

struct Known {
    std::string_view name;
    std::string_view title;
    Regime regime;
};

constexpr std::array<Known, allVisits.size()> known{{
    {"part-ml-inspection", "Annual or 100-hour inspection (Part-ML)", Regime::PartMl},
    {"part-ml-special", "Special inspection after an event (Part-ML)", Regime::PartMl},
    {"part-ml-owner-tasks", "Limited pilot-owner maintenance (Part-ML)", Regime::PartMl},
    {"us-annual", "Annual inspection (14 CFR 91.409(a))", Regime::Us14Cfr},
    {"us-hundred-hour", "100-hour inspection (14 CFR 91.409(b))", Regime::Us14Cfr},
    {"us-special", "Special inspection after an event (14 CFR)", Regime::Us14Cfr},
    {"us-owner-tasks", "Preventive maintenance (14 CFR Part 43, Appendix A(c))", Regime::Us14Cfr},
}};

const Known& of(Visit visit) { return known[static_cast<std::size_t>(visit)]; }

}

std::string_view regimeName(Regime regime) { return regime == Regime::PartMl ? "part-ml" : "us-14cfr"; }

std::string_view visitName(Visit visit) { return of(visit).name; }

std::optional<Visit> visitFrom(std::string_view name) {
    for (const auto visit : allVisits)
        if (visitName(visit) == name)
            return visit;
    return std::nullopt;
}

std::string_view visitTitle(Visit visit) { return of(visit).title; }

Regime regimeOf(Visit visit) { return of(visit).regime; }

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

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/owner_rule.h"

#include "bench/release/barred_phrase.h"
#include "record/kinds/programmes.h"

#include <algorithm>
#include <array>
#include <string>

namespace crownring {

namespace {

constexpr std::array<OwnerRule, 9> forbidden{{
    {"Part-ML Appendix II(b)(1)", "it is a critical maintenance task"},
    {"Part-ML Appendix II(b)(2)", "it requires the removal of major components or a major assembly"},
    {"Part-ML Appendix II(b)(3)",
     "it is carried out in compliance with an AD or an airworthiness limitation item unless specifically allowed"},
    {"Part-ML Appendix II(b)(4)",
     "it requires the use of special tools or calibrated tools (except for torque wrench and crimping tool)"},
    {"Part-ML Appendix II(b)(5)", "it requires the use of test equipment or special testing …"},
    {"Part-ML Appendix II(b)(6)", "it is composed of any unscheduled special inspections (e.g. heavy-landing check)"},
    {"Part-ML Appendix II(b)(7)", "it affects systems essential for IFR operations …"},
    {"Part-ML Appendix II(b)(8)",
     "it is a complex maintenance task in accordance with Appendix III, or it is a component maintenance task in "
     "accordance with point (a) or (b) of point ML.A.502"},
    {"Part-ML Appendix II(b)(9)", "it is part of the 100-h/annual check"},
}};

constexpr std::array<OwnerRule, 12> preventive{{
    {"14 CFR Part 43, Appendix A(c)(5)", "replacing defective safety wiring or cotter keys"},
    {"14 CFR Part 43, Appendix A(c)(6)", "lubrication not requiring disassembly"},
    {"14 CFR Part 43, Appendix A(c)(7)",
     "the making of small fabric repairs to envelopes (as defined in, and in accordance with, the balloon "
     "manufacturers' instructions) not requiring load tape repair or replacement"},
    {"14 CFR Part 43, Appendix A(c)(9)", "refinishing the decorative coating of the basket"},
    {"14 CFR Part 43, Appendix A(c)(10)", "applying preservative or protective material"},
    {"14 CFR Part 43, Appendix A(c)(11)", "repairing upholstery and decorative furnishings of the basket interior"},
    {"14 CFR Part 43, Appendix A(c)(15)", "replacing seats or seat parts"},
    {"14 CFR Part 43, Appendix A(c)(22)", "replacing prefabricated fuel lines"},
    {"14 CFR Part 43, Appendix A(c)(24)", "replacing and servicing batteries"},
    {"14 CFR Part 43, Appendix A(c)(25)",
     "cleaning of balloon burner pilot and main nozzles in accordance with balloon manufacturers' instructions"},
    {"14 CFR Part 43, Appendix A(c)(26)", "replacement or adjustment of nonstructural standard fasteners"},
    {"14 CFR Part 43, Appendix A(c)(27)",
     "the interchange of balloon baskets and burners on envelopes when the basket or burner is designated as "
     "interchangeable in the balloon type certificate data, and the baskets and burners are specifically designed for "
     "quick removal and installation"},
}};

/// @param number of Appendix II(b)
Barred byAppendix(std::size_t number) {
    const auto& rule = forbidden[number - 1];
    return {{BarredPhrase::OwnerMayNot, {rule.text}}, std::string(rule.clause)};
}

Barred notPreventive() {
    return {{BarredPhrase::NotPreventive, {}}, "14 CFR 43.3(g), 43.7(f) (from memory); Part 43, Appendix A(c)"};
}

}

std::span<const OwnerRule> ownerMayNotRelease() { return forbidden; }

std::span<const OwnerRule> preventiveMaintenance() { return preventive; }

std::optional<Barred> ownerBar(Visit visit) {
    if (isOfOwnersTasks(visit))
        return std::nullopt;
    if (regimeOf(visit) == Regime::Us14Cfr)
        return notPreventive();
    if (isPeriodic(visit))
        return byAppendix(9);
    if (isOfComponents(visit))
        return byAppendix(8);
    if (isMaintenance(visit))
        return Barred{{BarredPhrase::OwnersTasksOnly, {}}, "ML.A.803 (from memory); Part-ML Appendix II(b)"};
    return byAppendix(6);
}

Barred ownerBarOfMajor(Regime regime) { return regime == Regime::PartMl ? byAppendix(8) : notPreventive(); }

std::optional<Barred> ownerBar(const Requirement& requirement, Regime regime) {
    const bool looks = requirement.action == Action::Inspect || requirement.action == Action::Test;
    if (regime == Regime::Us14Cfr)
        return looks || requirement.action == Action::Comply || requirement.action == Action::Retire
                   ? std::optional(notPreventive())
                   : std::nullopt;
    if (isOfReviews(requirement.id))
        return Barred{{BarredPhrase::ReviewByOwner, {}}, "ML.A.901(b)"};
    if (accomplishes(Visit::PartMlInspection, requirement.id))
        return byAppendix(9);
    if (!requirement.triggeredBy.empty())
        return byAppendix(6);
    if (requirement.action == Action::Comply || requirement.action == Action::Retire)
        return byAppendix(3);
    if (requirement.action == Action::Test)
        return byAppendix(5);
    return std::nullopt;
}

}

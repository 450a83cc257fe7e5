// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an owner who flies may and may not release himself, each with the rule that says so.

#include "bench/checklist/visit.h"
#include "bench/release/entitlement.h"
#include "rules/programme/requirement.h"

#include <optional>
#include <span>
#include <string_view>

namespace crownring {

struct OwnerRule {
    std::string_view clause;
    std::string_view text; ///< the rule's words as far as read; "…" where some are left out
};

/// Part-ML Appendix II(b)(1) to (9): what a pilot-owner may not release. Read in Reg. (EU) 2019/1383 and in a
/// UK-retained copy; "cannot be overridden by less restrictive instructions" of the maintenance programme.
[[nodiscard]] std::span<const OwnerRule> ownerMayNotRelease();

/// 14 CFR Part 43, Appendix A(c): the items of preventive maintenance that fit balloons, read in FAA-H-8083-11 as a
/// partial list, whose other items are shortened here save (7), (25) and (27); the numbers are from memory. What is not
/// on the whole list is not preventive maintenance.
[[nodiscard]] std::span<const OwnerRule> preventiveMaintenance();

/// Why a pilot-owner (Part-ML) or a private pilot (United States) may not release a visit; nothing for owner's tasks.
[[nodiscard]] std::optional<Barred> ownerBar(Visit visit);

/// Why not a major repair or alteration.
[[nodiscard]] Barred ownerBarOfMajor(Regime regime);

/// Why not what a requirement asks for; nothing when no rule of these forbids it by what the requirement says of
/// itself. Whether the task is critical, complex or in the maintenance programme's list is not written in a
/// requirement: the person answers for that.
[[nodiscard]] std::optional<Barred> ownerBar(const Requirement& requirement, Regime regime);

}

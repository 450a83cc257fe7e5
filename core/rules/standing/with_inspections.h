// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Limits that go with inspections: "at every annual", "at every second 100-hour". Such a limit is due when the
/// inspection is carried out and cannot be left out of it; between inspections it grounds nothing. Where it was left
/// out all the same (history from paper) it is due with the next one.
///
///     at every second 100-hour, done with the 300-hour: 2 are left, after the 400-hour 1, and it is due with the
///     500-hour

#include "rules/standing/counting_acts.h"
#include "rules/standing/standing.h"

#include <span>

namespace crownring {

/// Days on which any of the inspections was carried out count once each. Without an act and with nothing to count from
/// (`starts_from` done) it is due with the next.
/// @param comes an inspection that it goes with is itself near or past, or none of them is in force
[[nodiscard]] LimitState stateWith(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                                   std::span<const Act> acts, const InForce& inForce, bool comes);

/// Whether it is due with a visit that carries these out: it then belongs to the visit's work.
/// @param state before the visit
[[nodiscard]] bool isDueWith(const Requirement& requirement, const Assessment& state, const InForce& inForce,
                             std::span<const RequirementId> carriedOut);

}

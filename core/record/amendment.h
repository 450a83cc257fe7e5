// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an entry says now: after the corrections and voids that point at it, at these, and so on.
///
/// An entry is live unless a live void points at it, so a void can be voided. Live corrections apply in the order of
/// their own moments, then ids; each is a shallow patch in which null removes a key. A void beats a correction.

#include "record/entry.h"

#include <optional>
#include <span>
#include <vector>

namespace crownring {

struct Amended {
    std::optional<Entry> entry;          ///< nothing when the entry is voided
    std::vector<EntryId> notApplicable;  ///< live corrections left out because the result would make no sense
    std::vector<EntryId> appliedInOrder; ///< live corrections that shape the entry
};

/// @param original an entry
/// @param amendments all entries that amend it, directly or through one another, in the order of their arrival: each
///        amends `original` or an earlier one.
[[nodiscard]] Amended amended(const Entry& original, std::span<const Entry> amendments);

/// `entry` with the shallow patch `with` (a JSON object); a problem when the result is no entry.
[[nodiscard]] Result<Entry> patched(const Entry& entry, const std::string& with);

}

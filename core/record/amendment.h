// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an entry says now: after the corrections and voids that point at it, at these, and so on.
///
/// An entry is live unless a live void points at it, so a void can be voided. Live corrections apply in the order of
/// their own moments, then ids; each is a shallow patch in which null removes a key. A void beats a correction.

#include "record/entry.h"

#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

namespace crownring {

struct Amended {
    std::optional<Entry> entry;          ///< nothing when the entry is voided
    std::vector<EntryId> notApplicable;  ///< live corrections left out because the result would make no sense
    std::vector<EntryId> appliedInOrder; ///< live corrections that shape the entry
};

/// An entry with all that amends it, directly or through one another. Amendments are added as they arrive; what one
/// changes is carried along its own way to the entry, so that a long history is not gone through again for each.
class AmendmentTree {
public:
    explicit AmendmentTree(Entry original);

    /// @return false, and nothing is added, where it amends neither the original nor what was added before
    bool add(Entry amendment);
    [[nodiscard]] const Entry& original() const { return m_nodes.front().said; }
    /// Of the original and of all that was added, in the order of arrival.
    [[nodiscard]] std::vector<EntryId> ids() const;
    /// One of them as it was written, and as it is by now: nothing when it is voided. @pre it is one of them
    [[nodiscard]] const Entry& said(const EntryId& id) const { return m_nodes[m_places.at(id)].said; }
    [[nodiscard]] const std::optional<Entry>& now(const EntryId& id) const { return m_nodes[m_places.at(id)].now; }
    /// The original by now.
    [[nodiscard]] const std::optional<Entry>& now() const { return m_nodes.front().now; }
    /// The same with the corrections that were applied to it and those that were not.
    [[nodiscard]] Amended amended() const;

private:
    /// A live correction, and what the entry says after it: nothing where it was left out.
    struct Step {
        Moment at;
        EntryId correction;
        std::string with;
        std::optional<Entry> after;
    };
    struct Node {
        Entry said;
        std::optional<std::size_t> target;
        std::vector<std::size_t> amendments;
        std::vector<Step> steps; ///< in the order in which they apply
        std::optional<Entry> now;
    };
    void settle(Node& node);

    std::vector<Node> m_nodes; ///< in the order of arrival
    std::unordered_map<EntryId, std::size_t> m_places;
};

/// @param original an entry
/// @param amendments all entries that amend it, directly or through one another, in the order of their arrival: each
///        amends `original` or an earlier one. What amends neither is left alone.
[[nodiscard]] Amended amended(const Entry& original, std::span<const Entry> amendments);

/// `entry` with the shallow patch `with` (a JSON object); a problem when the result is no entry.
[[nodiscard]] Result<Entry> patched(const Entry& entry, const std::string& with);

}

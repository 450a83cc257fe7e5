// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which requirements are in force for an item on a day: a fold over the adoptions up to that day. For an item, the
/// latest adoption of a programme that binds it gives the revision; where two programmes have a requirement of the same
/// id, the later adoption holds.

#include "record/entry.h"
#include "rules/standing/standing.h"

#include <memory>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

struct Adoption {
    Stamp stamp;
    Bound bound;
    std::shared_ptr<const Programme> programme;
};

/// The requirements in force for one set of adoptions.
class RequirementSet final : public InForce {
public:
    explicit RequirementSet(std::span<const Adoption* const> inOrder);
    [[nodiscard]] const Requirement* find(const RequirementId& id) const override;
    struct Held {
        const Requirement* requirement;
        const Programme* programme;
    };
    [[nodiscard]] const std::vector<Held>& all() const { return m_all; }

private:
    std::vector<Held> m_all;
    std::unordered_map<RequirementId, const Requirement*> m_byId;
};

class Obligations {
public:
    /// @param adoptions live ones dated on or before the day asked, in the order of their stamps.
    explicit Obligations(std::vector<Adoption> adoptions);
    ~Obligations();
    Obligations(Obligations&&) noexcept;
    Obligations& operator=(Obligations&&) noexcept;

    /// For an item fitted to `balloon` (or to none). Sets are shared between items bound by the same adoptions; they
    /// live as long as this object.
    [[nodiscard]] const RequirementSet& of(const ItemId& item, const std::optional<Registration>& balloon) const;
    /// The same for an item that would fly with `balloon` while fitted to `fittedTo`: bound by both.
    [[nodiscard]] const RequirementSet& of(const ItemId& item, const std::optional<Registration>& balloon,
                                           const std::optional<Registration>& fittedTo) const;
    [[nodiscard]] const std::vector<Adoption>& adoptions() const { return m_adoptions; }

private:
    std::vector<Adoption> m_adoptions;
    struct Index;
    std::unique_ptr<Index> m_index;
};

}

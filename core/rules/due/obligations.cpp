// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/obligations.h"

#include <boost/container/small_vector.hpp>

#include <algorithm>
#include <functional>
#include <map>
#include <unordered_set>

namespace crownring {

RequirementSet::RequirementSet(std::span<const Adoption* const> inOrder) {
    std::unordered_set<ProgrammeId> seen;
    for (auto adoption = inOrder.rbegin(); adoption != inOrder.rend(); ++adoption) {
        const auto& programme = *(*adoption)->programme;
        if (!seen.insert(programme.id).second)
            continue;
        for (const auto& requirement : programme.requirements)
            if (m_byId.emplace(requirement.id, &requirement).second)
                m_all.push_back({&requirement, &programme});
    }
}

const Requirement* RequirementSet::find(const RequirementId& id) const {
    const auto found = m_byId.find(id);
    return found == m_byId.end() ? nullptr : found->second;
}

/// Adoptions are named by their place in the order of stamps. Names are looked up by reference: the index points into
/// the adoptions, which stay where they are when the obligations are moved.
struct Obligations::Index {
    using Places = boost::container::small_vector<std::uint32_t, 4>; ///< ascending
    template <class Id>
    struct SameName {
        bool operator()(const Id* a, const Id* b) const { return *a == *b; }
    };
    template <class Id>
    struct HashOfName {
        std::size_t operator()(const Id* id) const { return std::hash<Id>{}(*id); }
    };
    template <class Id>
    using ByName = std::unordered_map<const Id*, Places, HashOfName<Id>, SameName<Id>>;

    ByName<Registration> balloons;
    ByName<ItemId> items;
    Places everything;
    std::map<Places, RequirementSet> sets; ///< made when first asked for

    template <class Id>
    static void add(ByName<Id>& names, const std::vector<Id>& bound, std::uint32_t place) {
        for (const auto& id : bound) {
            auto& places = names[&id];
            if (places.empty() || places.back() != place)
                places.push_back(place);
        }
    }
    template <class Id>
    static void gather(Places& places, const ByName<Id>& names, const Id& id) {
        if (const auto found = names.find(&id); found != names.end())
            places.insert(places.end(), found->second.begin(), found->second.end());
    }
};

Obligations::Obligations(std::vector<Adoption> adoptions)
    : m_adoptions(std::move(adoptions)), m_index(std::make_unique<Index>()) {
    std::uint32_t place = 0;
    for (const auto& adoption : m_adoptions) {
        if (const auto* balloons = std::get_if<BoundBalloons>(&adoption.bound))
            Index::add(m_index->balloons, balloons->balloons, place);
        else if (const auto* items = std::get_if<BoundItems>(&adoption.bound))
            Index::add(m_index->items, items->items, place);
        else
            m_index->everything.push_back(place);
        ++place;
    }
}

Obligations::~Obligations() = default;
Obligations::Obligations(Obligations&&) noexcept = default;
Obligations& Obligations::operator=(Obligations&&) noexcept = default;

const RequirementSet& Obligations::of(const ItemId& item, const std::optional<Registration>& balloon) const {
    return of(item, balloon, std::nullopt);
}

const RequirementSet& Obligations::of(const ItemId& item, const std::optional<Registration>& balloon,
                                      const std::optional<Registration>& fittedTo) const {
    Index::Places places = m_index->everything;
    if (balloon)
        Index::gather(places, m_index->balloons, *balloon);
    if (fittedTo)
        Index::gather(places, m_index->balloons, *fittedTo);
    Index::gather(places, m_index->items, item);
    std::ranges::sort(places);
    // Not std::ranges::unique: clang 14 cannot read its result, a subrange of libstdc++ 12.
    places.erase(std::unique(places.begin(), places.end()), places.end());
    if (const auto known = m_index->sets.find(places); known != m_index->sets.end())
        return known->second;
    std::vector<const Adoption*> inOrder;
    for (const auto place : places)
        inOrder.push_back(&m_adoptions[place]);
    return m_index->sets.emplace(std::move(places), RequirementSet(inOrder)).first->second;
}

}

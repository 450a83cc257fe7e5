// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Of the plain reading of a record: what inspections leave standing, and what they show.

#include "registry/item_facts.h"

#include <algorithm>
#include <map>
#include <vector>

namespace crownring::testing {

/// What became of inspections: which lists are pending on a day, and what counts that stands under one.
class PlainMatters {
public:
    /// @param live in their order
    explicit PlainMatters(const std::vector<Entry>& live) {
        for (const auto& entry : live) {
            const Stamp stamp{momentOf(entry), entry.id};
            if (const auto* opened = std::get_if<InspectionOpened>(&entry.body))
                m_items.try_emplace(opened->inspection, opened->items);
            else if (const auto* closed = std::get_if<InspectionClosed>(&entry.body))
                m_closed.try_emplace(closed->inspection, stamp, closed->outcome);
            else if (const auto* incomplete = std::get_if<ReleaseIncomplete>(&entry.body))
                m_incomplete[incomplete->inspection].push_back(stamp);
            else if (const auto* approved = std::get_if<ReturnApproved>(&entry.body))
                m_approved[approved->inspection].push_back(stamp);
            else if (const auto* revoked = std::get_if<ReleaseRevoked>(&entry.body))
                m_revoked[revoked->inspection] = stamp;
        }
    }
    [[nodiscard]] std::vector<IncompleteWork> incompleteOn(const ItemId& item, CivilDate on) const {
        std::vector<IncompleteWork> works;
        for (const auto& [inspection, releases] : m_incomplete) {
            const Stamp* last = nullptr;
            for (const auto& each : releases)
                if (each.at < Moment::endOf(on))
                    last = &each;
            const auto items = m_items.find(inspection);
            const auto closing = m_closed.find(inspection);
            const bool isClosed = closing != m_closed.end() && closing->second.first.at < Moment::endOf(on);
            if (items != m_items.end() && std::ranges::count(items->second, item) > 0 && !isClosed && last)
                works.push_back({inspection, *last});
        }
        std::ranges::sort(works, {}, &IncompleteWork::released);
        return works;
    }
    [[nodiscard]] std::vector<PendingList> listsOn(const ItemId& item, CivilDate on) const {
        std::vector<PendingList> lists;
        for (const auto& [inspection, closing] : m_closed) {
            const auto items = m_items.find(inspection);
            if (items != m_items.end() && std::ranges::count(items->second, item) > 0 &&
                closing.second == Outcome::Discrepancies && closing.first.at < Moment::endOf(on) &&
                !isApproved(inspection, on))
                lists.push_back({inspection, closing.first});
        }
        std::ranges::sort(lists, {}, &PendingList::closed);
        return lists;
    }
    /// Nothing where it does not count.
    [[nodiscard]] std::optional<Evidence> evidenceOf(const RequirementDone& done, CivilDate on) const {
        const InspectionId inspection(done.ref.empty() ? "none" : done.ref);
        const auto closing = m_closed.find(inspection);
        if (m_revoked.contains(inspection))
            return std::nullopt;
        if (closing == m_closed.end() || closing->second.second == Outcome::Abandoned)
            return Evidence::Stated;
        if (closing->second.second == Outcome::Discrepancies && !isApproved(inspection, on))
            return std::nullopt;
        return Evidence::Signed;
    }

private:
    [[nodiscard]] bool isApproved(const InspectionId& inspection, CivilDate on) const {
        const auto approvals = m_approved.find(inspection);
        const auto revoked = m_revoked.find(inspection);
        return approvals != m_approved.end() && std::ranges::any_of(approvals->second, [&](const Stamp& approval) {
                   return m_closed.at(inspection).first < approval && approval.at < Moment::endOf(on) &&
                          (revoked == m_revoked.end() || revoked->second < approval);
               });
    }

    std::map<InspectionId, std::vector<ItemId>> m_items;        ///< of the first opening
    std::map<InspectionId, std::pair<Stamp, Outcome>> m_closed; ///< the first closing
    std::map<InspectionId, std::vector<Stamp>> m_incomplete;
    std::map<InspectionId, std::vector<Stamp>> m_approved;
    std::map<InspectionId, Stamp> m_revoked; ///< the last time
};

}

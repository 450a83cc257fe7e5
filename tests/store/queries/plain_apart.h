// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Of the plain reading of a record: what is kept apart, and what was taken out of it.

#include "registry/item_facts.h"

#include <map>
#include <tuple>
#include <utility>
#include <vector>

namespace crownring::testing {

/// Told what happens in its order.
class PlainApart {
public:
    void say(const Stamp& stamp, const OutOfService& state, const ItemId& item) {
        m_said[item].emplace(std::tuple(stamp.at, state.state, stamp.id), state);
        if (state.state == ServiceState::InService)
            m_back[item] = stamp;
    }
    /// The carrier came back into service with the item in it.
    void bringBack(const ItemId& item, const ItemId& carrier, const Stamp& stamp) {
        m_backWith[{item, carrier}] = stamp;
    }
    void takeOut(const ItemId& item, const ItemId& carrier, const Stamp& stamp) {
        if (auto apart = keptApart(carrier))
            m_taken[item].push_back({carrier, stamp, *apart});
    }
    [[nodiscard]] std::optional<OutOfService> takenOut(const ItemId& item) const {
        const auto found = m_taken.find(item);
        const TakenOut* last = nullptr;
        if (found != m_taken.end())
            for (const auto& each : found->second)
                if (!isBack(item, each) && (!last || last->at < each.at))
                    last = &each; // of several of one moment the first by name
        if (!last)
            return std::nullopt;
        auto out = last->out;
        out.part = last->carrier;
        out.takenOut = true;
        if (out.state == ServiceState::Condemned)
            out.state = ServiceState::Unserviceable;
        return out;
    }

private:
    struct TakenOut {
        ItemId carrier;
        Stamp at;
        OutOfService out;
    };
    [[nodiscard]] bool isBack(const ItemId& item, const TakenOut& taken) const {
        const auto own = m_back.find(item);
        const auto with = m_backWith.find({item, taken.carrier});
        return (own != m_back.end() && taken.at < own->second) ||
               (taken.out.state != ServiceState::Condemned && with != m_backWith.end() && taken.at < with->second);
    }
    [[nodiscard]] std::optional<OutOfService> keptApart(const ItemId& item) const {
        const auto found = m_said.find(item);
        std::optional<OutOfService> apart;
        if (found == m_said.end())
            return apart;
        for (const auto& [key, state] : found->second)
            if (apart && apart->state == ServiceState::Condemned)
                break;
            else if (isKeptApart(state.state))
                apart = state;
            else if (state.state == ServiceState::InService)
                apart.reset();
        return apart;
    }

    std::map<ItemId, std::map<std::tuple<Moment, ServiceState, EntryId>, OutOfService>> m_said;
    std::map<ItemId, std::vector<TakenOut>> m_taken;
    std::map<ItemId, Stamp> m_back; ///< the last word of its own
    std::map<std::pair<ItemId, ItemId>, Stamp> m_backWith;
};

}

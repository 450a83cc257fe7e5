// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/counting_acts.h"

#include <algorithm>

namespace crownring {

namespace {

/// One way to satisfy the row: the requirement itself, or one of `satisfied_by`.
struct Way {
    const RequirementId* id;
    const Requirement* carriedOut; ///< null when it is not in force
    std::int64_t inARow = 0;       ///< since the last fuller act; counted where it may be done only so often
};
using Ways = boost::container::small_vector<Way, 4>;
using Together = std::span<const Accomplishment>; ///< all that was signed at one moment

/// The row's own first: where several are signed together, it is asked first.
Ways waysOf(const Requirement& requirement, const InForce& inForce) {
    Ways ways{{&requirement.id, &requirement}};
    for (const auto& id : requirement.satisfiedBy)
        if (id != requirement.id)
            ways.push_back({&id, inForce.find(id)});
    return ways;
}

bool has(Together together, const RequirementId& id) {
    return std::ranges::any_of(together, [&](const auto& done) { return done.requirement == id; });
}

/// May an act by this way, done now, still count?
bool withinRow(Way& way, Together together, bool present) {
    if (!way.carriedOut || !way.carriedOut->atMost)
        return true;
    if (std::ranges::any_of(way.carriedOut->satisfiedBy, [&](const auto& id) { return has(together, id); })) {
        way.inARow = 0;
        return true;
    }
    if (present)
        ++way.inARow;
    return way.inARow <= *way.carriedOut->atMost;
}

template <class What>
void keepFirst(std::optional<What>& kept, const std::optional<What>& next) {
    if (!kept)
        kept = next;
}

void keepFirst(Figures& kept, const Figures& next) {
    keepFirst(kept.minutes, next.minutes);
    keepFirst(kept.landings, next.landings);
    keepFirst(kept.inflations, next.inflations);
}

/// Gathers the accomplishments of one moment into one act: what a paper states goes before what was computed.
class Gathering {
public:
    void add(const Way& way, Together together, const Requirement& requirement) {
        for (const auto& done : together) {
            if (done.requirement != *way.id)
                continue;
            keepFirst(m_act.clock, done.stated);
            keepFirst(m_computed, done.clock);
            keepFirst(m_act.expires, done.expires);
            if (m_act.method.empty())
                m_act.method = done.method;
            if (!m_act.stamp || *m_act.stamp < done.stamp)
                m_act.stamp = &done.stamp;
            m_act.evidence = std::min(m_act.evidence, done.evidence);
            if (!m_act.window)
                m_act.window =
                    way.carriedOut && !way.carriedOut->window.empty() ? &way.carriedOut->window : &requirement.window;
        }
    }
    [[nodiscard]] bool any() const { return m_act.stamp != nullptr; }
    /// @pre any()
    [[nodiscard]] Act act(const ItemFacts& item) {
        m_act.on = m_act.stamp->at.on();
        if (m_act.on >= item.entered)
            keepFirst(m_act.clock, m_computed);
        return m_act;
    }

private:
    Act m_act;
    Figures m_computed{std::nullopt, std::nullopt, std::nullopt};
};

}

CountingActs countingActs(const Requirement& requirement, const ItemFacts& item, const InForce& inForce) {
    CountingActs counting;
    if (item.done.empty())
        return counting;
    auto ways = waysOf(requirement, inForce);
    const Together all = item.done;
    for (std::size_t from = 0, to = 0; from < all.size(); from = to) {
        while (to < all.size() && all[to].stamp.at == all[from].stamp.at)
            ++to;
        const auto together = all.subspan(from, to - from);
        Gathering gathering;
        bool done = false;
        for (auto& way : ways) {
            const bool present = has(together, *way.id);
            done = done || present;
            if (withinRow(way, together, present) && present)
                gathering.add(way, together, requirement);
        }
        if (gathering.any())
            counting.acts.push_back(gathering.act(item));
        if (done)
            counting.rowFull = !gathering.any();
    }
    return counting;
}

}

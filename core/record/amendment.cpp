// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/amendment.h"

#include "problem/faults/entry_fault.h"
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>

namespace crownring {

namespace {

/// A live correction as it is by now.
struct Correction {
    Moment at;
    const EntryId* id;
    const std::string* with;
    bool operator<(const Correction& other) const { return at != other.at ? at < other.at : *id < *other.id; }
};

}

AmendmentTree::AmendmentTree(Entry original) {
    m_places.emplace(original.id, 0);
    m_nodes.push_back({original, {}, {}, {}, std::move(original)});
}

bool AmendmentTree::add(Entry amendment) {
    const auto amended = amends(amendment);
    const auto target = amended ? m_places.find(*amended) : m_places.end();
    if (target == m_places.end() || !m_places.emplace(amendment.id, m_nodes.size()).second)
        return false;
    auto changed = std::optional(target->second);
    m_nodes[*changed].amendments.push_back(m_nodes.size());
    m_nodes.push_back({amendment, changed, {}, {}, std::move(amendment)});
    while (changed) {
        auto& node = m_nodes[*changed];
        const auto before = std::exchange(node.now, std::nullopt);
        settle(node);
        changed = node.now == before ? std::nullopt : node.target;
    }
    return true;
}

std::vector<EntryId> AmendmentTree::ids() const {
    std::vector<EntryId> ids;
    ids.reserve(m_nodes.size());
    for (const auto& node : m_nodes)
        ids.push_back(node.said.id);
    return ids;
}

/// Steps before the first that differs stand as they were worked out. @pre all that amends it is settled
void AmendmentTree::settle(Node& node) {
    std::vector<Correction> corrections;
    bool voided = false;
    for (const auto at : node.amendments)
        if (const auto& amendment = m_nodes[at].now) {
            const auto* correction = std::get_if<EntryCorrected>(&amendment->body);
            if (correction)
                corrections.push_back({momentOf(*amendment), &amendment->id, &correction->with});
            voided = voided || !correction;
        }
    std::sort(corrections.begin(), corrections.end());
    auto& steps = node.steps;
    const auto [known, next] = std::mismatch(
        steps.begin(), steps.end(), corrections.begin(), corrections.end(), [](const Step& step, const Correction& as) {
            return step.at == as.at && step.correction == *as.id && step.with == *as.with;
        });
    steps.erase(known, steps.end());
    const auto last = std::find_if(steps.rbegin(), steps.rend(), [](const Step& step) { return step.after; });
    auto said = last == steps.rend() ? node.said : *last->after;
    for (auto each = next; each != corrections.end(); ++each) {
        auto& step = steps.emplace_back(Step{each->at, *each->id, *each->with, std::nullopt});
        if (auto after = patched(said, step.with))
            step.after = said = std::move(*after);
    }
    if (!voided)
        node.now = std::move(said);
}

Amended AmendmentTree::amended() const {
    Amended amended{now(), {}, {}};
    if (amended.entry)
        for (const auto& step : m_nodes.front().steps)
            (step.after ? amended.appliedInOrder : amended.notApplicable).push_back(step.correction);
    return amended;
}

Amended amended(const Entry& original, std::span<const Entry> amendments) {
    AmendmentTree tree(original);
    for (const auto& each : amendments)
        tree.add(each);
    return tree.amended();
}

Result<Entry> patched(const Entry& entry, const std::string& with) {
    auto object = toJson(entry);
    const auto patch = nlohmann::json::parse(with, nullptr, false);
    if (!patch.is_object())
        return problem(EntryFault::NotACorrection);
    for (const auto& [key, value] : patch.items()) {
        if (value.is_null())
            object.erase(key);
        else
            object[key] = value;
    }
    return entryFrom(object);
}

}

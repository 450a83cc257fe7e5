// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/amendment.h"

#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>

namespace crownring {

namespace {

using Pointers = std::multimap<EntryId, std::size_t>;

/// Works from the latest arrival back, so that whatever points at an entry is settled before the entry itself.
class Settling {
public:
    explicit Settling(std::span<const Entry> amendments) : m_settled(amendments.size()) {
        for (std::size_t i = 0; i < amendments.size(); ++i)
            if (const auto target = amends(amendments[i]))
                m_pointers.emplace(*target, i);
        for (std::size_t i = amendments.size(); i-- > 0;)
            m_settled[i] = settle(amendments[i]);
    }

    [[nodiscard]] Amended settle(const Entry& entry) const {
        Amended result;
        std::vector<const Entry*> corrections;
        const auto [first, last] = m_pointers.equal_range(entry.id);
        for (auto pointer = first; pointer != last; ++pointer) {
            const auto& amendment = m_settled[pointer->second].entry;
            if (!amendment)
                continue;
            if (std::holds_alternative<EntryVoided>(amendment->body))
                return {};
            corrections.push_back(&*amendment);
        }
        std::sort(corrections.begin(), corrections.end(),
                  [](const Entry* a, const Entry* b) { return stampOf(*a) < stampOf(*b); });
        result.entry = entry;
        for (const auto* correction : corrections) {
            if (auto next = patched(*result.entry, std::get<EntryCorrected>(correction->body).with)) {
                result.entry = std::move(*next);
                result.appliedInOrder.push_back(correction->id);
            } else {
                result.notApplicable.push_back(correction->id);
            }
        }
        return result;
    }

private:
    Pointers m_pointers;
    std::vector<Amended> m_settled;
};

}

Amended amended(const Entry& original, std::span<const Entry> amendments) {
    return Settling(amendments).settle(original);
}

Result<Entry> patched(const Entry& entry, const std::string& with) {
    auto object = toJson(entry);
    const auto patch = nlohmann::json::parse(with, nullptr, false);
    if (!patch.is_object())
        return problem(Code::BadValue, "a correction is a JSON object", "name the keys to change");
    for (const auto& [key, value] : patch.items()) {
        if (value.is_null())
            object.erase(key);
        else
            object[key] = value;
    }
    return entryFrom(object);
}

}

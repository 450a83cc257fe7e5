// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/json/strict_json.h"

#include "problem/faults/entry_fault.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <set>
#include <string>

namespace crownring {

namespace {

using nlohmann::json;

/// Watches a text being parsed: counts the keys written in each object and holds them against the keys that it got.
class Watch {
public:
    bool operator()(int depth, json::parse_event_t event, const json& parsed) {
        const auto level = static_cast<std::size_t>(std::min(depth, deepestJson));
        switch (event) {
        case json::parse_event_t::object_start:
        case json::parse_event_t::array_start:
            m_tooDeep = m_tooDeep || depth >= deepestJson;
            m_keys[level] = 0;
            return !m_tooDeep;
        case json::parse_event_t::key:
            ++m_keys[level - 1];
            return true;
        case json::parse_event_t::object_end:
            m_twice = m_twice || parsed.size() != m_keys[level];
            return true;
        case json::parse_event_t::array_end:
        case json::parse_event_t::value:
            return true;
        }
        return true;
    }
    [[nodiscard]] bool tooDeep() const { return m_tooDeep; }
    [[nodiscard]] bool twice() const { return m_twice; }

private:
    std::array<std::size_t, deepestJson + 1> m_keys{};
    bool m_tooDeep = false;
    bool m_twice = false;
};

/// Which key that is: asked only of a text that has one.
std::string keyWrittenTwice(std::string_view text) {
    std::array<std::set<std::string>, deepestJson + 1> keys;
    std::string twice;
    const auto watch = [&](int depth, json::parse_event_t event, const json& parsed) {
        const auto level = static_cast<std::size_t>(std::min(depth, deepestJson));
        if (event == json::parse_event_t::object_start)
            keys[level].clear();
        if (event == json::parse_event_t::key && !keys[level - 1].insert(parsed.get<std::string>()).second &&
            twice.empty())
            twice = parsed.get<std::string>();
        return true;
    };
    [[maybe_unused]] const auto watched = json::parse(text, watch, false);
    return twice;
}

}

Result<json> strictJson(std::string_view text) {
    Watch watch;
    auto value = json::parse(text, std::ref(watch), false);
    if (watch.tooDeep())
        return problem(EntryFault::NestedTooDeep, {deepestJson});
    if (value.is_discarded())
        return problem(EntryFault::NotJson);
    if (watch.twice())
        return problem(EntryFault::KeyTwice, {keyWrittenTwice(text)});
    return value;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/json/strict_json.h"

#include "problem/faults/entry_fault.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <iterator>
#include <set>
#include <string>

namespace crownring {

namespace {

using nlohmann::json;

/// Walks over a text, and makes the parser one of this file: of the copies in a program that are compiled otherwise
/// the linker takes any, and this one every record is read by.
class Letter {
public:
    // NOLINTBEGIN(readability-identifier-naming): as std::iterator_traits looks for them
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;
    // NOLINTEND(readability-identifier-naming)
    explicit Letter(const char* at) : m_at(at) {}
    reference operator*() const { return *m_at; }
    Letter& operator++() {
        ++m_at;
        return *this;
    }
    bool operator==(const Letter&) const = default;

private:
    const char* m_at;
};

template <class Watcher>
json parse(std::string_view text, Watcher watch) {
    return json::parse(Letter(text.data()), Letter(text.data() + text.size()), watch, false);
}

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
    [[maybe_unused]] const auto watched = parse(text, watch);
    return twice;
}

}

Result<json> strictJson(std::string_view text) {
    Watch watch;
    auto value = parse(text, std::ref(watch));
    if (watch.tooDeep())
        return problem(EntryFault::NestedTooDeep, {deepestJson});
    if (value.is_discarded())
        return problem(EntryFault::NotJson);
    if (watch.twice())
        return problem(EntryFault::KeyTwice, {keyWrittenTwice(text)});
    return value;
}

}

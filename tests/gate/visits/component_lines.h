// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is said of components, as lines of JSON.

#include <nlohmann/json.hpp>

#include <string>

namespace crownring::testing {

inline std::string line(const char* kind, const char* on, nlohmann::json more) {
    more["entry"] = kind;
    more["on"] = on;
    return more.dump();
}

inline std::string state(const char* on, const char* item, const char* what) {
    return line("item.state", on, {{"item", item}, {"state", what}});
}

inline std::string fitted(const char* on, const char* item, const char* to) {
    return line("item.fitted", on, {{"item", item}, {"to", to}});
}

inline std::string removed(const char* on, const char* item, const char* from) {
    return line("item.removed", on, {{"item", item}, {"from", from}});
}

}

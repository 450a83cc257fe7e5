// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/wording/places.h"

#include <algorithm>

namespace crownring {

namespace {

/// Tells the plain pieces of a body and its places one after the other.
template <class Plain, class Place>
void eachPiece(std::string_view body, Plain plain, Place place) {
    while (!body.empty()) {
        const auto open = body.find_first_of("{}");
        plain(body.substr(0, open));
        if (open == std::string_view::npos)
            return;
        body.remove_prefix(open);
        const auto end = body.find_first_of("{}", 1);
        const bool closes = body.front() == '{' && end != std::string_view::npos && body[end] == '}' && end > 1;
        place(closes ? body.substr(1, end - 1) : body.substr(0, 1));
        body.remove_prefix(closes ? end + 1 : 1);
    }
}

std::string_view valueOf(const Places& places, std::string_view name) {
    const auto found = places.find(name);
    return found == places.end() ? std::string_view() : std::string_view(found->second);
}

}

std::vector<std::string> placesIn(std::string_view body) {
    std::vector<std::string> names;
    eachPiece(
        body, [](std::string_view) {},
        [&](std::string_view name) {
            if (std::ranges::find(names, name) == names.end())
                names.emplace_back(name);
        });
    return names;
}

std::string filled(std::string_view body, const Places& places) {
    std::string text;
    eachPiece(
        body, [&](std::string_view piece) { text += piece; },
        [&](std::string_view name) {
            const auto value = valueOf(places, name);
            text += value.empty() ? "(" + std::string(name) + ")" : std::string(value);
        });
    return text;
}

std::vector<std::string> emptyPlaces(std::string_view body, const Places& places) {
    auto names = placesIn(body);
    std::erase_if(names, [&](const std::string& name) { return !valueOf(places, name).empty(); });
    return names;
}

}

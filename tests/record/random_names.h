// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pieces that the generators of entries are made of.

#include "record/entry.h"

#include <rapidcheck.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace crownring::random {

template <class T>
rc::Gen<std::optional<T>> optionally(rc::Gen<T> gen) {
    return rc::gen::oneOf(rc::gen::just(std::optional<T>()),
                          rc::gen::map(std::move(gen), [](T value) { return std::optional<T>(std::move(value)); }));
}

rc::Gen<std::string> joined(rc::Gen<std::string> piece);
/// Text as people type it and as they do not: other scripts, quotes, line ends, control characters; no U+0000.
rc::Gen<std::string> anyText();
rc::Gen<std::string> anySlug();

/// A name: something, no control characters, at most 200 characters.
template <class NameOf>
rc::Gen<NameOf> anyName() {
    return rc::gen::map(
        joined(rc::gen::element<std::string>("a", "Z", "7", " ", "-", "\"", "\\", "'", "é", "Ж", "🎈", "%", "|")),
        [](const std::string& text) { return NameOf(text.empty() ? "n" : text); });
}

template <class CountOf>
rc::Gen<CountOf> anyCount(std::int64_t least, std::int64_t most) {
    // Both ends often, small figures often, any figure sometimes.
    return rc::gen::map(rc::gen::oneOf(rc::gen::element(least, most),
                                       rc::gen::inRange(least, std::min(most, least + 100) + 1),
                                       rc::gen::inRange(least, most + 1)),
                        [](std::int64_t value) { return CountOf(value); });
}

template <class NameOf>
rc::Gen<std::vector<NameOf>> someOf(rc::Gen<NameOf> name) {
    return rc::gen::map(rc::gen::container<std::vector<NameOf>>(name), [](std::vector<NameOf> names) {
        std::sort(names.begin(), names.end());
        names.erase(std::unique(names.begin(), names.end()), names.end());
        if (names.empty())
            names.emplace_back("n");
        return names;
    });
}

/// Where entries get the names and days that they speak of.
struct Names {
    rc::Gen<ItemId> item;
    rc::Gen<Registration> balloon;
    rc::Gen<RequirementId> requirement;
    rc::Gen<InspectionId> inspection;
    rc::Gen<DefectId> defect;
    rc::Gen<PersonId> person;
    rc::Gen<DirectiveId> directive;
    rc::Gen<EntryId> target; ///< of corrections and voids
    rc::Gen<CivilDate> on;
};

}

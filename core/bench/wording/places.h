// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The places of a wording, in braces: "{aircraft}".

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// What the record fills them with; empty: it has nothing to say there.
using Places = std::map<std::string, std::string, std::less<>>;

/// In their order, each once; a brace that opens no place, or closes none, as itself.
[[nodiscard]] std::vector<std::string> placesIn(std::string_view body);

/// What is filled in is not looked at again. What is empty stays, as "(limitations)".
[[nodiscard]] std::string filled(std::string_view body, const Places& places);

/// The places of the body that the record has nothing for.
[[nodiscard]] std::vector<std::string> emptyPlaces(std::string_view body, const Places& places);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a JSON Schema allows at a place of a document, for the mend of a problem.

#include "rules/programme/schema_phrase.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// Keys and indices from the root of a document: {"requirements", "0", "limits", "1", "every"}.
using DocumentPath = std::vector<std::string>;

/// RFC 6901: "/requirements/0/limits/1/every".
[[nodiscard]] std::string jsonPointer(const DocumentPath& path);

/// "one of inspect, test, …", "a whole number from 1 to 10000000000", "one of the keys clock, day, every, …"; nothing
/// where the schema says nothing of the place.
[[nodiscard]] std::optional<Phrase> allowedAt(const nlohmann::json& schema, const DocumentPath& path);

}

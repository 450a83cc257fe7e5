// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Checks a programme document against assets/schema/programme.schema.json.

#include "problem/problem.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string_view>

namespace crownring {

/// Reads JSON text. BadJson when it is none, when it nests deeper than any programme does, or when an object has a key
/// twice (`Where::key` names it).
[[nodiscard]] Result<nlohmann::json> programmeJson(std::string_view text);

/// What breaks the schema, with a JSON pointer in `Where::key`; empty when nothing does.
[[nodiscard]] std::optional<Problem> breachOfSchema(const nlohmann::json& document);

}

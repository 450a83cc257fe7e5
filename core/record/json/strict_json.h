// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// JSON as a record may take it: a reader of JSON may keep either of two equal keys (RFC 8259 section 4), so that two
/// programs could read two flights in one line; such a text is refused rather than guessed at.

#include "problem/problem.h"

#include <nlohmann/json_fwd.hpp>

#include <string_view>

namespace crownring {

/// How deep objects and lists may stand in one another; what the record knows needs fewer than ten levels.
inline constexpr int deepestJson = 32;

/// @return BadJson when `text` is not one JSON value in UTF-8, has a key twice in one object, or is nested deeper than
///         `deepestJson`.
[[nodiscard]] Result<nlohmann::json> strictJson(std::string_view text);

}

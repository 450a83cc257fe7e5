// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How forecasts of fabric are said.

#include "fabric/outlook.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace crownring::ctl {

[[nodiscard]] nlohmann::ordered_json jsonOf(const Band& band);
[[nodiscard]] nlohmann::ordered_json jsonOf(const std::optional<Band>& band);
/// "enough", "held-only", "assumed".
[[nodiscard]] std::string_view wordOf(Ground ground);
/// What a number must not be read without; empty where there is nothing to add.
[[nodiscard]] std::string sentenceOf(const ForecastGrounds& grounds);

inline constexpr const char* noSubstitute = "A forecast plans tests and takes the place of none.";

}

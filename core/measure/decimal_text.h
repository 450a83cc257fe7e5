// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Figures as people write them: "98.5", "98,5", "-40", "1e-06".

#include <optional>
#include <string_view>

namespace crownring {

/// Comma and point both divide, and there is no divider of thousands; blanks around it do not matter. Nothing for
/// anything else.
[[nodiscard]] std::optional<double> parseDecimal(std::string_view text);

}

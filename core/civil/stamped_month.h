// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A month as it is stamped on a pressure vessel. Year and month stand in this order under ADR ("16/05",
/// 6.2.2.7.7), month and year in the United States ("05 A123 16", 49 CFR 180.213); both from memory. Which it is is
/// never guessed.

#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// What it may mean, each "YYYY-MM": two where the order decides, none of what is no stamp. Of a year in two digits
/// 70 to 99 are of the last century.
[[nodiscard]] std::vector<std::string> monthsStamped(std::string_view stamp);

}

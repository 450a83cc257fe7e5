// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A table as comma-separated values after RFC 4180.

#include "paper/document.h"

#include <string>

namespace crownring::paper {

/// The head, then the rows, all with the same number of fields (section 2, rule 4); lines end in CR LF (rule 1); fields
/// with commas, quotes or line ends are quoted and their quotes doubled (rules 6 and 7). UTF-8 without a mark. What a
/// spreadsheet would take for a formula (= + - @, tab or return first, but for a number) begins with an apostrophe: it
/// stays text.
[[nodiscard]] std::string csv(const Table& table);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A document as plain text, for a terminal.

#include "paper/document.h"

#include <string>

namespace crownring::paper {

inline constexpr std::size_t terminalColumns = 96;

/// Lines of at most `columns` letters (a word that is longer than its place is cut, never dropped). Every line of the
/// document is there: record id and caution at the head and the foot, a map as the list of its panels.
[[nodiscard]] std::string toText(const Document& document, const Speech& in, std::size_t columns = terminalColumns);

}

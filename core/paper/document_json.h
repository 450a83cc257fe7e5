// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A document as JSON, for other programs.

#include "paper/document.h"

#include <string>

namespace crownring::paper {

/// One object, indented by two: title, subtitle, record, caution, and blocks, each an object whose `block` names its
/// kind (heading, paragraph, facts, table, statement, signature, envelope-map, page-break, checks). Bytes that are no
/// UTF-8 are replaced by U+FFFD.
[[nodiscard]] std::string toJson(const Document& document);

}

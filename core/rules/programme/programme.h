// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Programme documents: read, checked against assets/schema/programme.schema.json, and the shelf of those that ship
/// with the program.

#include "problem/problem.h"
#include "rules/programme/requirement.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Reads a programme document (JSON). BadJson when it is no JSON; BadProgramme with the path inside the document
/// (`Where::key`, a JSON pointer such as "/requirements/0/limits/1/every") when it breaks the schema or contradicts
/// itself (a requirement id twice, `by_method` without a limit on months, `kept` without a window, …).
[[nodiscard]] Result<Programme> programmeFrom(std::string_view text);

/// The same, of a text that is asked for again and again: read once.
[[nodiscard]] Result<std::shared_ptr<const Programme>> knownProgramme(std::string_view text);

/// The canonical text of a document: keys sorted, no spaces. Two documents that say the same have the same digest.
[[nodiscard]] Result<std::string> canonicalProgramme(std::string_view text);

/// The programmes that ship with the program, as their canonical texts.
[[nodiscard]] const std::vector<std::string>& shelf();
/// The shelf's text of a programme; empty when it has none.
[[nodiscard]] std::string_view shelfText(const ProgrammeId& programme);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A line that the program adds to a checklist: for work that neither the visit by itself nor a line of the list
/// accomplishes.

#include "bench/checklist/checklist.h"
#include "rules/programme/requirement.h"

#include <vector>

namespace crownring {

/// "do/…". That of a test of an envelope asks for readings of its fabric: those of the line that ships for that test,
/// else all of them.
[[nodiscard]] ChecklistLine lineFor(const Requirement& requirement, ItemKind kind, Regime regime);

/// A test of an envelope: it is done by readings, each judged against a limit that the type's manual states.
[[nodiscard]] bool isTestOfFabric(const Requirement& requirement, ItemKind kind);

/// All that a test of fabric can read.
[[nodiscard]] const std::vector<AskedReading>& readingsOfFabric();

}

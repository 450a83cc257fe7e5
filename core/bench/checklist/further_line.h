// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A line that the program adds to a checklist: for work that neither the visit by itself nor a line of the list
/// accomplishes.

#include "bench/checklist/checklist.h"
#include "record/kinds/inspections.h"
#include "rules/programme/requirement.h"

#include <span>
#include <vector>

namespace crownring {

/// "do/…". That of a test of an envelope asks for readings of its fabric: those of the line that ships for that test,
/// else all of them.
[[nodiscard]] ChecklistLine lineFor(const Requirement& requirement, ItemKind kind, Regime regime);

/// A test of an envelope: it is done by readings, each judged against a limit that the type's manual states.
[[nodiscard]] bool isTestOfFabric(const Requirement& requirement, ItemKind kind);

/// What of the readings of a line the work of a visit asks for: of a test of fabric that is there for several
/// requirements, what those of the work read. A requirement reads what the line that ships for it reads; where none
/// does, all that the line asks for.
[[nodiscard]] std::vector<AskedReading> askedByWork(const ChecklistLine& line, std::span<const Work> work);

/// All that a test of fabric can read.
[[nodiscard]] const std::vector<AskedReading>& readingsOfFabric();

}

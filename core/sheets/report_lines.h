// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The lines of an inspection for its report: a row a line; the items on which it came out alike share it.

#include "sheets/marks.h"
#include "sheets/sheet_parts.h"

namespace crownring {

/// @param clauses, people are added to, and are listed by who asks
void addChecks(paper::Document& document, const BenchFile& file, Marks& clauses, Marks& people, const Speech& in);
/// What the numbers and letters stand for.
void addKey(paper::Document& document, const Marks& clauses, const Marks& people, const Speech& in);

}

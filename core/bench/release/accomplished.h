// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an inspection accomplishes when it is closed with a release.

#include "bench/release/bench_file.h"

#include <vector>

namespace crownring {

/// Of its work that of which every own line (`ChecklistLine::isFor`) was done, on the item and for the visit; and what
/// the visit itself answers where something was done on the item. What was put down as not applicable was not done: one
/// such line among a requirement's own leaves it undone. A test of fabric is done by its readings alone.
[[nodiscard]] std::vector<Work> accomplishments(const BenchFile& file);

/// The same once the outstanding lines that are done by flying are done: nothing else waits on a check flight.
[[nodiscard]] std::vector<Work> coveredOnceDone(const BenchFile& file, std::span<const std::string> further = {});

/// What goes with the inspections of its work and was not done.
[[nodiscard]] std::vector<GoesWith> leftOut(const BenchFile& file);

}

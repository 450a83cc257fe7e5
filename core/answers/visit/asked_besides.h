// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the rules ask of the items of a visit besides what it was opened for.

#include "bench/release/bench_file.h"
#include "registry/books.h"

namespace crownring {

/// Reads into the file which of its work are tests, what goes with it, and what stands against the items once that work
/// is done.
[[nodiscard]] Result<void> readAskedBesides(Books& books, BenchFile& file);

}

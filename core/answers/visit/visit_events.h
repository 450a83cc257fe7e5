// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What happened that a visit answers.

#include "bench/release/bench_file.h"
#include "registry/books.h"

namespace crownring {

/// Reads into the file what was reported of its items since the work that it makes due was last done before the visit;
/// where its work is not stated, of what such a visit accomplishes. @pre `owed` is read
[[nodiscard]] Result<void> readVisitEvents(Books& books, BenchFile& file);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A check flight was flown, and is not ticked (14 CFR 91.407(b); ML.A.801(f), GM1 ML.A.301(f), from memory); and
/// whether one can rest on a release after incomplete maintenance (ML.A.801(f), from memory).

#include "bench/release/release.h"
#include "registry/books.h"

namespace crownring {

/// Of the lines of a visit that are done by flying and put down as done: unless all that was worked on flew as its
/// balloon, free, after the work and before the line was settled, up to the day of a release.
[[nodiscard]] Result<std::vector<Refusal>> refusalsOfCheckFlights(Books& books, const BenchFile& file, CivilDate on);

/// What is outstanding besides lines that are flown.
[[nodiscard]] Listed notFlown(std::span<const Outstanding> outstanding);

/// Why a rig-up would refuse the check flight, on the day of the signature: besides it something is left open, it is of
/// no balloon, what stands beside the work bars it, its end is past. Empty where the flight can rest on it.
[[nodiscard]] std::vector<Argument> barsOfCheckFlight(const BenchFile& file, const Signing& signing);

}

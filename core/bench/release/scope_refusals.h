// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether what is certified was there, and was inspected as the words will say. Pure.

#include "bench/release/release.h"

namespace crownring {

/// What of the scope stands in the way of signing it.
[[nodiscard]] std::vector<Refusal> refusalsOfScope(const BenchFile& file);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Work that is no inspection: is it described as a maintenance entry describes it (14 CFR 43.9(a), its list from
/// memory; ML.A.801(e), from memory), may who signs release it, and is it where such a visit may be?
///
/// Sources, from memory where not said otherwise: a major repair or alteration has its form (14 CFR 43.9(d), Part 43
/// Appendix B: FAA Form 337) or its approval (ML.A.304, Part-21), and a mechanic (A&P) without an inspection
/// authorization does not approve it (14 CFR 65.95(a)(1), 43.7(b)); a pilot-owner releases the tasks of his list alone
/// (Part-ML Appendix II(b), read; 14 CFR 43.3(g) with Part 43 Appendix A(c), in part read).

#include "bench/release/release.h"

#include <vector>

namespace crownring {

[[nodiscard]] std::vector<Refusal> refusalsOfWork(const BenchFile& file, const Signing& signing);

}

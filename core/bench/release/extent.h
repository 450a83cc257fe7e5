// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a release says was done: "the type of inspection and a brief description of the extent" (14 CFR 43.11(a)(1),
/// read), "basic details of the maintenance" (ML.A.801(e), from memory). Extensive work is summarised, with the name of
/// the inspection that holds the details (AMC M.A.801, read).

#include "bench/release/bench_file.h"
#include "bench/release/release_text.h"

#include <vector>

namespace crownring {

/// The checklist and what it was carried out on; what it accomplishes; each repair, part off and on, and defect that
/// was put right.
[[nodiscard]] std::vector<Argument> extentOf(const BenchFile& file);
/// What was read, test by test, from the least to the most, with the limit that it was held against.
[[nodiscard]] std::vector<Argument> readingsInBrief(const BenchFile& file);

/// A deferred defect: since when and why it waits, until when, who agreed and how it is placarded.
/// @param found what it is
[[nodiscard]] Argument deferredText(const BenchFile& file, const DefectMark& deferral, Argument found);

/// The directive that work was done to, with its revision.
[[nodiscard]] std::string dataOf(const DirectiveAnswered& answer);
/// The descriptions of work, in their order, and then the directives that were complied with.
[[nodiscard]] std::vector<DescribedWork> describedWork(const BenchFile& file);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The readings that an inspection asks for, series by series, and which of them comes next.

#include "bench/release/bench_file.h"

#include <span>
#include <string>
#include <vector>

namespace crownring {

/// What a line of the checklist asks to be read of an item; or what a reading found there, and is read again.
struct AskedFor {
    ItemId item;
    std::string line; ///< of the checklist; empty: no line asks
    std::string quantity;
    auto operator<=>(const AskedFor&) const = default;
};

struct AskedSeries {
    AskedFor of;
    ReadingCount count;
};

/// Those that still want readings first, else in the order in which one works; at the end what no line asks for: to be
/// read again is what a reading found and is open (`BenchFile::foundBy`), whatever the visit is.
[[nodiscard]] std::vector<AskedSeries> askedSeries(const BenchFile& file);

/// Those of the readings by which open defects were found that a series reads again: in their places nothing was read
/// in this visit that passes. The pointers are into `file`
[[nodiscard]] std::vector<const ReadingTaken*> toReadAgain(const BenchFile& file, const AskedFor& of);

/// Null where nothing like it is asked for.
[[nodiscard]] const AskedSeries* among(std::span<const AskedSeries> series, const AskedFor& of);

/// Where to go on after a reading of `here`: there until it has enough, then to the first that wants some, and there
/// again where none does. Null where nothing is asked for.
/// @param series as of `askedSeries`
[[nodiscard]] const AskedSeries* nextSeries(std::span<const AskedSeries> series, const AskedFor& here);

}

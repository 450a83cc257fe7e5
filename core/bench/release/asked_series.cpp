// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/asked_series.h"

#include <algorithm>

namespace crownring {

std::vector<AskedSeries> askedSeries(const BenchFile& file) {
    std::vector<AskedSeries> series;
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.line && work.item)
            for (const auto& asked : work.line->readings)
                series.push_back(
                    {{work.item->id, work.line->id, asked.quantity}, readingCount(file, *work.item, asked)});
    std::stable_partition(series.begin(), series.end(), [](const AskedSeries& each) { return !each.count.enough(); });
    return series;
}

const AskedSeries* among(std::span<const AskedSeries> series, const AskedFor& of) {
    const auto found = std::ranges::find(series, of, &AskedSeries::of);
    return found == series.end() ? nullptr : &*found;
}

const AskedSeries* nextSeries(std::span<const AskedSeries> series, const AskedFor& here) {
    const auto* current = among(series, here);
    if (series.empty() || (current && (!current->count.enough() || series.front().count.enough())))
        return current;
    return &series.front();
}

}

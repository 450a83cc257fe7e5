// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/asked_series.h"

#include <algorithm>

namespace crownring {

namespace {

bool isReadAgain(const BenchFile& file, const ReadingTaken& failed) {
    return std::ranges::any_of(speakingReadings(file.inspection), [&](const auto* reading) {
        return takesThePlaceOf(reading->body, failed) && stateOf(file, reading->body).judgement == Judgement::Passes;
    });
}

bool isOf(const AskedFor& of, const ReadingTaken& reading) {
    return of.item == reading.item && of.quantity == reading.quantity;
}

void addUnasked(const BenchFile& file, std::vector<AskedSeries>& series) {
    const auto add = [&](const ReadingTaken& reading) {
        if (file.item(reading.item) &&
            std::ranges::none_of(series, [&](const AskedSeries& each) { return isOf(each.of, reading); }))
            series.push_back({{reading.item, {}, reading.quantity}, {}});
    };
    for (const auto& [defect, reading] : file.foundBy)
        add(reading);
    for (const auto& reading : file.inspection.readings)
        add(reading.body);
    for (auto& each : series) {
        if (!each.of.line.empty())
            continue;
        for (const auto& [defect, reading] : file.foundBy)
            if (isOf(each.of, reading)) {
                each.count.wanted += 1;
                each.count.taken += isReadAgain(file, reading) ? 1 : 0;
            }
        if (each.count.wanted == 0)
            each.count.taken = static_cast<int>(std::ranges::count_if(
                file.inspection.readings, [&](const auto& reading) { return isOf(each.of, reading.body); }));
    }
}

}

std::vector<const ReadingTaken*> toReadAgain(const BenchFile& file, const AskedFor& of) {
    std::vector<const ReadingTaken*> again;
    for (const auto& [defect, reading] : file.foundBy)
        if (isOf(of, reading) && !isReadAgain(file, reading))
            again.push_back(&reading);
    return again;
}

std::vector<AskedSeries> askedSeries(const BenchFile& file) {
    std::vector<AskedSeries> series;
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.line && work.item)
            for (const auto& asked : work.line->readings)
                series.push_back(
                    {{work.item->id, work.line->id, asked.quantity}, readingCount(file, *work.item, asked)});
    if (file.inspection.isOpen())
        addUnasked(file, series);
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/not_asked.h"

#include <algorithm>

namespace crownring {

std::vector<NotAsked> notAsked(const BenchFile& file) {
    std::vector<NotAsked> found;
    for (const auto& item : file.items)
        if (!item.type)
            found.push_back({item.id, {}});
    for (const auto& work : workLines(file.inspection, file.items)) {
        const auto of = work.item ? std::ranges::find(found, work.item->id, &NotAsked::item) : found.end();
        if (of == found.end() || !work.line)
            continue;
        for (const auto& asked : work.line->readings)
            if (!asked.required && std::ranges::find(of->quantities, asked.quantity) == of->quantities.end())
                of->quantities.push_back(asked.quantity);
    }
    std::erase_if(found, [](const NotAsked& each) { return each.quantities.empty(); });
    return found;
}

}

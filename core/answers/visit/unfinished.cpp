// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/unfinished.h"

#include "bench/checklist/inspection.h"

#include <algorithm>
#include <map>

namespace crownring {

Result<void> leaveOutUntouched(Books& books, std::vector<ItemFacts>& facts) {
    std::map<InspectionId, Inspection> visits;
    for (auto& item : facts)
        for (auto work = item.incomplete.begin(); work != item.incomplete.end();) {
            auto visit = visits.find(work->inspection);
            if (visit == visits.end()) {
                const auto told = books.told({Subject::Inspection, work->inspection.text(), {}, CivilDate::last()});
                if (!told)
                    return tl::unexpected(told.error());
                auto inspection = inspectionFrom(work->inspection, *told);
                if (!inspection)
                    return tl::unexpected(inspection.error());
                visit = visits.emplace(work->inspection, std::move(*inspection)).first;
            }
            // Where nothing says what it was, it lies on all.
            const auto& inspection = visit->second;
            const bool isSaid = std::ranges::any_of(inspection.opened.body.items,
                                                    [&](const ItemId& each) { return inspection.concerns(each); });
            work = isSaid && !inspection.concerns(item.id) ? item.incomplete.erase(work) : work + 1;
        }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/supported.h"

#include "answers/bench_file.h"

namespace crownring {

Result<std::vector<InspectionId>> unsupportedReleases(Books& books, const std::optional<Registration>& balloon,
                                                      CivilDate on, std::size_t most) {
    const auto cards = inspectionsOn(books, on);
    if (!cards)
        return tl::unexpected(cards.error());
    std::vector<InspectionId> unsupported;
    for (const auto& card : *cards) {
        if (!card.isReleased() || (balloon && card.balloon != balloon))
            continue;
        if (most-- == 0)
            break;
        const auto file = benchFile(books, card.inspection, on);
        if (!file)
            return tl::unexpected(file.error());
        if (!file->unsupported.empty())
            unsupported.push_back(card.inspection);
    }
    return unsupported;
}

}

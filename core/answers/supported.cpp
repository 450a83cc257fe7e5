// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/supported.h"

#include "answers/bench_file.h"

#include <algorithm>
#include <functional>
#include <map>

namespace crownring {

namespace {

/// What it accomplished.
bool counts(const Inspection& inspection) {
    return inspection.closed && !inspection.revoked &&
           (inspection.closed->body.outcome == Outcome::Released || inspection.approved);
}

}

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

Result<std::vector<InspectionId>> unsupportedReleasesOf(Books& books, const std::vector<ItemId>& items, CivilDate on,
                                                        std::size_t most) {
    std::map<Stamp, InspectionId, std::greater<>> visits;
    for (const auto& item : items) {
        const auto told = books.told({Subject::Item, item.text(), {kindName<InspectionOpened>()}, on});
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& line : *told)
            if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body); opened && !line.voided)
                visits.emplace(stampOf(nowOf(line)), opened->inspection);
    }
    std::vector<InspectionId> unsupported;
    for (const auto& [opened, inspection] : visits) {
        const auto file = benchFile(books, inspection, on);
        if (!file)
            return tl::unexpected(file.error());
        if (!counts(file->inspection) || file->inspection.closed->stamp.at.on() > on)
            continue;
        if (most-- == 0)
            break;
        if (!file->unsupported.empty())
            unsupported.push_back(inspection);
    }
    return unsupported;
}

Result<LostReleases> unsupportedByBalloon(Books& books, CivilDate on, std::size_t most) {
    const auto unsupported = unsupportedReleases(books, std::nullopt, on, most);
    if (!unsupported)
        return tl::unexpected(unsupported.error());
    LostReleases lost;
    if (unsupported->empty())
        return lost;
    const auto cards = inspectionsOn(books, on);
    if (!cards)
        return tl::unexpected(cards.error());
    for (const auto& card : *cards)
        if (card.balloon && std::ranges::find(*unsupported, card.inspection) != unsupported->end())
            lost[*card.balloon].push_back(card.inspection);
    return lost;
}

}

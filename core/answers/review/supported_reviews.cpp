// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/review/supported_reviews.h"

#include "answers/due.h"
#include "answers/review/reviews.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// The latest review of an item that its rows may count from.
const Accomplishment* latestReview(const ItemFacts& item) {
    const Accomplishment* latest = nullptr;
    for (const auto& done : item.done)
        if (isOfReviews(done.requirement) && done.evidence == Evidence::Signed)
            latest = &done;
    return latest;
}

/// The entry of a review of a balloon, under whatever name that was signed.
Result<std::optional<Entry>> signedAs(Books& books, const EntryId& id, const Registration& balloon, CivilDate on) {
    const auto renamings = books.renamings(on);
    if (!renamings)
        return tl::unexpected(renamings.error());
    for (const auto& name : namesOf(balloon, *renamings)) {
        const auto reviews = signedReviews(books, name, on);
        if (!reviews)
            return tl::unexpected(reviews.error());
        if (const auto found = std::ranges::find(*reviews, id, &Entry::id); found != reviews->end())
            return *found;
    }
    return std::optional<Entry>();
}

}

Result<std::vector<Entry>> markUnsupportedReviews(Books& books, std::vector<DueRow>& rows, CivilDate on) {
    std::vector<Entry> lost;
    std::map<EntryId, bool> known;
    for (auto& row : rows) {
        if (!isOfReviews(row.requirement->id) || row.state.evidence != Evidence::Signed || !row.item->balloon)
            continue;
        const auto* latest = latestReview(*row.item);
        if (!latest)
            continue;
        const auto [at, isNew] = known.try_emplace(latest->stamp.id, false);
        if (isNew) {
            auto review = signedAs(books, latest->stamp.id, *row.item->balloon, on);
            if (!review)
                return tl::unexpected(review.error());
            if (!*review)
                continue;
            const auto file = reviewFile(books, **review);
            if (!file)
                return tl::unexpected(file.error());
            at->second = !refusals(*file, std::get<ReviewSigned>((*review)->body)).empty();
            if (at->second)
                lost.push_back(std::move(**review));
        }
        row.state.unsupported = at->second;
    }
    return lost;
}

}

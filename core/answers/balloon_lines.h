// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One line for each balloon: what it is, and what governs it.

#include "registry/books.h"
#include "rules/due/headline.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

namespace crownring {

struct BalloonLine {
    BalloonCard card;
    Headline headline;                ///< into the due list of the answer
    std::vector<ItemId> outOfService; ///< fitted to a balloon that is in service itself: nothing is asked of these
    std::int64_t notEntered = 0;      ///< items fitted to it that are not in the record on that day: nor of these

    /// Something is fitted of which nothing can be said: the balloon is not clear, whatever the rest says.
    [[nodiscard]] bool isUnknown() const { return !outOfService.empty() || notEntered > 0; }
    [[nodiscard]] Standing standing() const {
        const auto governing = headline.row ? headline.row->state.standing : Standing::Unproven;
        return isUnknown() ? std::min(governing, Standing::Unproven) : governing;
    }
    /// Does what is due on the rest say how it stands?
    [[nodiscard]] bool isGoverned() const { return headline.row && standing() == headline.row->state.standing; }
};

struct BalloonLines {
    std::shared_ptr<const DueList> due;
    std::vector<BalloonLine> lines; ///< by registration
};

using Headlines = std::unordered_map<Registration, Headline>;
/// What governs each balloon that something is fitted to; one that is not among them is governed by nothing. The answer
/// points into the due list.
/// @param everything the list is of the whole fleet
[[nodiscard]] Result<Headlines> headlines(Books& books, const DueList& due, bool everything);

/// And what governs each item, wherever it is: the row comes first among those that bind it.
struct Governing {
    Headlines balloons;
    std::unordered_map<ItemId, const DueRow*> items; ///< none where nothing binds it
};
[[nodiscard]] Result<Governing> governing(Books& books, const DueList& due, bool everything);

/// Over this much past use an item's pace is taken.
inline constexpr int monthsOfRecentUse = 24;

/// The rows of a list as one meets them (`asTheyCome`), by the pace of its items; they point into it.
[[nodiscard]] Result<std::vector<const DueRow*>> dueAsItComes(Books& books, const DueList& due);

/// What is in service; what is not stands there when it is asked for, governed by nothing.
/// @param balloon only this one, in service or not; UnknownReference when it is not in the record on that day
/// @param outside `AsInService`: all, with what would be due if they were in service
[[nodiscard]] Result<BalloonLines> balloonLines(Books& books, const std::optional<Registration>& balloon, CivilDate on,
                                                Outside outside = Outside::LeftOut);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the manuals of types state, as the record holds it up to a day.

#include "bench/reading/verdict.h"
#include "record/kinds/shop.h"
#include "registry/books.h"

#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace crownring {

/// A limit, and from when until when it was the latest of its sort.
struct LimitSpan {
    StatedLimit limit;
    Moment from;
    std::optional<Moment> until; ///< nothing where it still is

    [[nodiscard]] bool covers(Moment at) const { return from <= at && (!until || at < *until); }
    [[nodiscard]] bool isOf(ItemKind kind, const std::string& type) const {
        return limit.kind == kind && limit.type.text() == type;
    }
};

struct TypeBook {
    std::vector<TypeDescribed> types;
    std::vector<StatedLimit> limits; ///< the latest of each sort
    std::vector<LimitSpan> spans;    ///< all, by what they say of each other

    [[nodiscard]] std::vector<LimitSpan> spansOf(ItemKind kind, const std::optional<std::string>& type) const;
};
/// @param without limits that are passed over, as if they were not stated
[[nodiscard]] Result<TypeBook> typeBook(Books& books, CivilDate on, const std::set<EntryId>& without = {});

/// A reading fails when it does by what the manual states by now, and as well when it did by what was stated as it was
/// taken: a limit that is stated later may make it worse, and never better. Until it is rectified, what failed fails.
/// The pointer in the answer is into `spans`.
/// @param spans of the item's kind and type
[[nodiscard]] Decision decideAsTaken(const Measured& reading, Moment at, std::span<const LimitSpan> spans);
[[nodiscard]] Judgement judgedAsTaken(const ReadingTaken& reading, Moment at, std::span<const LimitSpan> spans);

}

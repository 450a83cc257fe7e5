// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an answer rests on, as its reader found it: to be held against what was kept of it when it was written.

#include "record/kinds/subject.h"
#include "store/connection/row_digest.h"
#include "store/connection/statement.h"

#include <map>
#include <utility>

namespace crownring {

enum class Part {
    Facts = 1, ///< of an item
    Fabric,    ///< of an item: readings, repairs, lots
    Balloon,   ///< what it brings to the items on it
    Adoptions, ///< all of them
    Told,      ///< what is told under a name of any sort; of all of a sort under `Account::ofSort`
    Service,   ///< what is out of service and what was renamed, all of it
    Fitted,    ///< to a balloon, and from when until when
    Pictures,  ///< all photographs; not kept in a record that earlier versions wrote, until the next one
    Amendments ///< what amends an entry by itself, under `accountOf` it
};
template <>
struct Kept<Part> {
    static constexpr int first = static_cast<int>(Part::Facts), last = static_cast<int>(Part::Amendments);
};

struct Account {
    static constexpr std::int64_t all = 0;

    Part part = Part::Facts;
    std::int64_t subject = all; ///< number of the item or balloon
    Tally tally;

    [[nodiscard]] static std::int64_t ofSort(Subject sort) { return -static_cast<std::int64_t>(sort); }
};

/// By subject.
using Moved = std::map<std::int64_t, Tally>;

/// The digest of a row of `told`.
[[nodiscard]] inline std::uint64_t toldDigest(Subject sort, std::int64_t number, const Stamp& stamp) {
    RowDigest digest;
    digest.add(static_cast<std::int64_t>(sort));
    digest.add(number);
    digest.add(stamp.at.minutes());
    digest.add(std::string_view(stamp.id.text()));
    return digest.value();
}

/// An entry has no number among the names: its account stands under a digest of its id.
[[nodiscard]] inline std::int64_t accountOf(const EntryId& target) {
    RowDigest digest;
    digest.add(std::string_view(target.text()));
    return static_cast<std::int64_t>(digest.value());
}

[[nodiscard]] inline std::uint64_t amendmentDigest(const EntryId& target, std::int64_t amendment) {
    RowDigest digest;
    digest.add(std::string_view(target.text()));
    digest.add(amendment);
    return digest.value();
}

}

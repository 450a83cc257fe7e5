// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An entry is one immutable statement about the world: a flight was flown, an item was fitted, an inspection was done.
/// Everything that the program knows is a fold over entries. A mistake is not erased: an `EntryCorrected` or
/// `EntryVoided` points at the entry that it changes. The kinds of entries stand in record/kinds, a family a file.

#include "record/kinds/body.h"

namespace crownring {

struct Entry {
    EntryId id;
    CivilDate on;
    std::optional<TimeOfDay> time;
    std::string by;
    std::string note;
    Body body;
    bool operator==(const Entry&) const = default;
};

[[nodiscard]] Moment momentOf(const Entry& entry);
[[nodiscard]] Stamp stampOf(const Entry& entry);

/// The id of the entry that this one corrects or voids.
[[nodiscard]] std::optional<EntryId> amends(const Entry& entry);

}

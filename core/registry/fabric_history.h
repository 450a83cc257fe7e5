// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record holds about the fabric of one item up to a day, as corrected; all in the order of stamps.

#include "record/entry.h"
#include "registry/item_facts.h"

#include <vector>

namespace crownring {

/// What an entry says, and its place in the order of the record.
template <class Body>
struct Stamped {
    Stamp stamp;
    Body body;
    bool operator==(const Stamped&) const = default;
};

/// The repair answers the reading: it put right the defect that was found with it, on that day, whichever of the two
/// states the later time.
/// @param defects of the item
[[nodiscard]] bool answers(const Stamped<RepairMade>& repair, const Stamped<ReadingTaken>& reading,
                           const std::vector<DefectMark>& defects);

struct FabricHistory {
    ItemId item;
    std::vector<Stamped<ReadingTaken>> readings;
    std::vector<Stamped<RepairMade>> repairs;
    std::vector<Stamped<FabricStated>> stated;
    bool operator==(const FabricHistory&) const = default;
};

}

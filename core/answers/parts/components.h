// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is told of components beside their facts: stamps, lots, release documents, when one was filled.

#include "registry/books.h"

#include <map>

namespace crownring {

struct Component {
    std::string lot;                    ///< as it was entered, else as it was fitted last
    std::optional<PartRelease> release; ///< under which it was fitted last, else entered
    std::optional<VesselStamped> vessel;
    std::optional<CivilDate> filled; ///< the last time
    std::optional<double> percent;
    bool operator==(const Component&) const = default;
};

/// By item, as told up to `on`; only those of which something is told. Of one item, or of all.
[[nodiscard]] Result<std::map<ItemId, Component>> componentsTold(Books& books, const std::optional<ItemId>& item,
                                                                 CivilDate on);

/// The balloon that each was on last, or flew with, up to `on`; those that the record knows of.
[[nodiscard]] Result<std::map<ItemId, Registration>> lastBalloons(Books& books, const std::vector<ItemId>& items,
                                                                  CivilDate on);

}

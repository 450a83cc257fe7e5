// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// RapidCheck generators of entries that the record accepts, for the properties of every room.
///
///     const auto entry = *anyEntry();               // one entry, odd names and texts included
///     const auto history = *anyHistory(Cast{});     // entries that speak of the same few things

#include "record/entry.h"

#include <rapidcheck.h>

#include <ostream>
#include <vector>

namespace crownring::random {

/// One entry of any kind, with odd names.
rc::Gen<Entry> anyEntry();

/// The few things that the entries of one history speak of.
struct Cast {
    std::vector<ItemId> items{ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")};
    std::vector<Registration> balloons{Registration("QE-ABC"), Registration("QE-DEF")};
    std::vector<RequirementId> requirements{RequirementId("annual"), RequirementId("hundred")};
    CivilDate first = *CivilDate::parse("2024-01-01");
    int days = 60;
};

/// Entries in an order of arrival that respects references, ids e0, e1, …: everything of the cast is entered, then up
/// to `most` flights, fittings, accomplishments, readings, events, and corrections and voids of what went before.
rc::Gen<std::vector<Entry>> anyHistory(const Cast& cast, int most = 40);

}

namespace rc {

void showValue(const crownring::Entry& entry, std::ostream& os);

}

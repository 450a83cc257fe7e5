// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The strength tests of all envelopes of one type, as the record has them, in the form that the fabric room computes
/// with. The panels that an envelope came with are one set of it, since the record does not say of which lots they are;
/// a panel that was repaired with new fabric begins a set of its own, at zero hours, with the lot of the repair.
///
/// Of pulls of another test than the limit's (width of the jaws) none is taken. Where no row is stated a pull counts as
/// one at the crown; one from before the envelope was entered has no hours and is left out. Over-temperatures are not
/// counted as dose: the record knows how hot it was, and not for how long.

#include "fabric/fleet.h"
#include "fabric/life.h"
#include "fabric/pace.h"
#include "registry/books.h"

#include <string>
#include <vector>

namespace crownring {

struct FabricRecord {
    std::string type;
    double limit = 0; ///< newtons: the least that passes, or the proof load where only that is stated
    std::string source;
    std::vector<ItemId> envelopes;
    std::vector<std::string> lots;          ///< the first is that of all original panels: not stated, empty
    std::vector<std::size_t> envelopeOfSet; ///< the first set of an envelope is that of its original panels
    std::vector<CrownUse> useOfSet;
    FabricFleet fleet;
    std::size_t leftOut = 0; ///< pulls of another test, or that cannot be read
};

/// UnknownReference where the type's manual states no strength, MissingKey where an envelope's hours are not known.
[[nodiscard]] Result<FabricRecord> fabricRecord(Books& books, const std::string& type, CivilDate on);

/// What an item flew in the last two years, by month of the year.
[[nodiscard]] Result<YearlyPace> paceOfItem(Books& books, const ItemId& item, CivilDate on);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What shops and pilots write down of a made-up fleet besides its flights.

#include "record/entry_json.h"

#include <array>
#include <string>
#include <vector>

namespace crownring::bench {

inline const CivilDate firstDay = *CivilDate::fromYearMonthDay(2020, 1, 1);

inline constexpr int itemsPerBalloon = 5;
inline constexpr std::array itemKinds{ItemKind::Envelope, ItemKind::Basket, ItemKind::Burner, ItemKind::Cylinder,
                                      ItemKind::Cylinder};

[[nodiscard]] Registration balloonName(int number);
[[nodiscard]] ItemId itemName(int balloon, int item);
/// One of six types of its kind.
[[nodiscard]] std::string typeName(int balloon, int item);

/// An entry with an id as long as those that the program makes. @param what, of, nth tell it from all others
[[nodiscard]] NumberedEntry written(CivilDate on, char what, int of, int nth, Body body);

/// The limits of all types: strength and permeability of fabric, and what else their manuals bound.
void stateLimits(std::vector<NumberedEntry>& into);

/// Of one balloon: twenty readings of its envelope in four visits, seven at places that were read before; a minor
/// defect in one of three, deferred in one of nine, a barring one that was cleared in one of seven; a hard landing in
/// one of eight, an envelope that became too hot in one of twenty-five.
void work(int balloon, std::vector<NumberedEntry>& into);

}

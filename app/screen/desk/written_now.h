// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The time of what is written down of a defect as it happens: without one a clearing would stand at the end of the
/// afternoon, before a list that is signed in the evening. Of the withdrawal of a release, too, in the evening;
/// of the state of an item and of a filling whenever it is: what was done before on that day carries its time.

#include "record/entry.h"
#include "screen/desk/fleet_sheet.h"

#include <optional>

namespace crownring::screen {

/// Of an act that is written down as it happens: now, in UTC; nothing of another day than today.
[[nodiscard]] std::optional<TimeOfDay> timeOfAct(CivilDate on, CivilDate today);

/// An event of a time that has not come: it has not happened. @param now in UTC
[[nodiscard]] bool isYetToCome(const Entry& entry, const Moment& now);
/// By the machine's clock.
[[nodiscard]] bool isYetToCome(const Entry& entry);

/// @param now of the machine's clock, UTC
/// @return the time that such an entry gets: now, though not before what is known of that defect on that day; the time
/// that it has where it is of another kind, states one, or is of another day than today
[[nodiscard]] std::optional<TimeOfDay> timeWritten(const Entry& entry, const FleetSheet& sheet, CivilDate today,
                                                   TimeOfDay now);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The file of stations that visits are planned with: remembered for each record; a record that the program filled
/// itself comes with the stations of the demo fleet.

#include "answers/plan/stations.h"

#include <QString>

namespace crownring::screen {

struct House;

/// Empty where none was chosen.
[[nodiscard]] QString stationsFileOf(const House& house);
/// FileUnreadable, or what is wrong in it, with the file's name and the place.
[[nodiscard]] Result<Stations> stationsIn(const QString& path);
/// "stations.json: Ovelmere workshop, Harrowfell hangar".
[[nodiscard]] QString stationsText(const QString& path, const Stations& stations);

}

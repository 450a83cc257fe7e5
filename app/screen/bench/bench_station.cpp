// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/inspection_desk.h"
#include "screen/desk/habits.h"
#include "screen/desk/house.h"

namespace crownring::screen {

QString InspectionDesk::station() const { return house().habits.station(); }

void InspectionDesk::setStation(const QString& station) { house().habits.setStation(station); }

}

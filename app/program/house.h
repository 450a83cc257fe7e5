// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Everything of the screen that lives as long as the program, in the order in which it is needed.

#include "screen/desk/day.h"
#include "screen/desk/fleet.h"
#include "screen/desk/habits.h"
#include "screen/desk/notice.h"
#include "screen/desk/record_desk.h"
#include "screen/fabric/fabric_fits.h"

namespace crownring::screen {

struct House {
    House(CivilDate today, bool remembered)
        : habits(remembered), day(today), desk(nullptr), fleet(nullptr), notice(nullptr), fits(nullptr) {}

    Habits habits;
    Day day;
    RecordDesk desk;
    Fleet fleet;
    Notice notice;
    FabricFits fits;
};

/// The day that the machine's calendar shows.
[[nodiscard]] CivilDate machineToday();

}

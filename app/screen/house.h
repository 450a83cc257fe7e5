// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Everything of the screen that lives as long as the program, in the order in which it is needed.

#include "day.h"
#include "fabric_fits.h"
#include "fleet.h"
#include "habits.h"
#include "notice.h"
#include "record_desk.h"

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

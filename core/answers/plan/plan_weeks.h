// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The weeks of a plan. A visit takes a week: it begins on Monday and is signed on Friday; at its weekends is flown.

#include "civil/civil_date.h"

namespace crownring {

struct PlanWeeks {
    CivilDate first; ///< a Monday
    int count = 0;

    /// Those that begin from the day on, for so many months.
    static PlanWeeks from(CivilDate day, int months);
    [[nodiscard]] CivilDate monday(int week) const { return addDays(first, 7 * week); }
    [[nodiscard]] CivilDate signedOn(int week) const { return addDays(first, 7 * week + 4); }
    /// The last week in which it can be signed by a day; below 0 where that is before the first.
    [[nodiscard]] int lastWeekBy(CivilDate day) const;
    /// The week that a day is in, also outside.
    [[nodiscard]] int weekOf(CivilDate day) const;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/plan_weeks.h"

namespace crownring {

namespace {

constexpr int aWeek = 7;
constexpr int friday = 4;

int floorOfWeeks(std::int64_t days) {
    return static_cast<int>(days >= 0 ? days / aWeek : -((-days + aWeek - 1) / aWeek));
}

}

PlanWeeks PlanWeeks::from(CivilDate day, int months) {
    constexpr int thursday = 3; // 1970-01-01 was one
    const int sinceMonday = static_cast<int>(((day.dayNumber() + thursday) % aWeek + aWeek) % aWeek);
    const auto first = addDays(day, (aWeek - sinceMonday) % aWeek);
    const auto end = addMonths(day, months, DayRule::Same);
    return {first, first < end ? floorOfWeeks(daysBetween(first, end).value() - 1) + 1 : 0};
}

int PlanWeeks::lastWeekBy(CivilDate day) const { return floorOfWeeks(daysBetween(first, day).value() - friday); }

int PlanWeeks::weekOf(CivilDate day) const { return floorOfWeeks(daysBetween(first, day).value()); }

}

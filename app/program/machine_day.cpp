// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/machine_day.h"

#include <QDate>

namespace crownring {

CivilDate machineDay() {
    const auto date = QDate::currentDate();
    return CivilDate::fromYearMonthDay(date.year(), date.month(), date.day()).value_or(CivilDate());
}

}

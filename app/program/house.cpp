// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/house.h"

#include <QDate>

namespace crownring::screen {

CivilDate machineToday() {
    const auto date = QDate::currentDate();
    return CivilDate::fromYearMonthDay(date.year(), date.month(), date.day()).value_or(CivilDate());
}

}

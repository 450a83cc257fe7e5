// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the user should know about a file that becomes flights, and what a log lacks.

#include "problem/argument.h"

namespace crownring {

enum class LogPhrase : std::uint8_t {
    ADate,
    ABalloon,
    ADuration,
    EitherColumn, ///< %1, %2: two headings, %3: what both may be
    ReadAsWindows1252,
    NoTimesOfDay,   ///< %1: the heading
    NumbersNoNames, ///< %1: the heading
    FuelUnread,     ///< %1: the heading
    DatesInSeveralOrders,
    DatesTellNoOrder,
    ShortYears,          ///< %1: how many
    DurationUnitOpen,    ///< %1: the heading
    TemperatureUnitOpen, ///< %1: the heading
    AmountUnitOpen,      ///< %1: the heading
    ZoneNotStated,       ///< %1: the lines
    DurationTaken,       ///< %1: the lines
    Lines,               ///< %1: how many, %2: the first of them
    LinesAndMore,        ///< %1: how many, %2: the first of them
};

}

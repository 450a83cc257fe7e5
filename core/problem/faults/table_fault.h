// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Files of other programs: text, tables, flight logs, tables of fabric tests.

#include "problem/fault.h"

namespace crownring {

enum class TableFault : std::uint8_t {
    TooLarge, ///< %1: the most MiB
    TooManyRows,
    Utf16,
    NotText,
    QuoteNeverCloses,
    TextAfterQuote,
    EmptyLog,          ///< %1: the headings that are understood
    ColumnsMissing,    ///< %1: the headings that are understood, %2: those that are there, %3: what has no column
    FieldsNotAsHeader, ///< %1, %2: how many fields the row and the header have
    NoBalloon,
    NotARegistration, ///< %1: the most bytes
    NoDate,
    NotADate,               ///< %1: as written
    NotADateButDigits,      ///< %1: as written
    NotInTheOrder,          ///< %1: as written
    NotInTheOrderButDigits, ///< %1: as written
    LaterThanToday,         ///< %1: as written
    BeforeBalloons,         ///< %1: as written
    NotATimeAloft,          ///< %1: as written
    TooShort,
    UnlikelyLong,  ///< %1: as written, %2: the hours and minutes that this means
    NotATimeOfDay, ///< %1: as written
    TimesGiveNone, ///< %1, %2: take-off and landing as written
    NoTimeAloft,
    NotACount,       ///< %1: as written, %2: the most
    NotATemperature, ///< %1: as written
    NotAnAmount,     ///< %1: as written
    AmountOutside,   ///< %1: as written, %2, %3: the least and the most, %4: their unit
    NeitherYesNorNo, ///< %1: as written
    EmptyTable,      ///< of fabric tests
    ColumnNotOnce,   ///< %1: the column, %2: all columns
    CouponHasFlown,
    NeitherHeldNorBroke, ///< %1: as written
    NotNamed,            ///< %1: the column
    NoFigureOfAPull,     ///< %1: as written, %2: the column
    LoadFarOff,          ///< %1: how many times
};
[[nodiscard]] FaultRow rowOf(TableFault fault);

}

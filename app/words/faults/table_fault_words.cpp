// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/table_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(TableFault fault) {
    switch (fault) {
    case TableFault::TooLarge:
        return {QT_TRANSLATE_NOOP("Problem", "this file is larger than %1 MiB"),
                QT_TRANSLATE_NOOP("Problem", "divide it into several files")};
    case TableFault::TooManyRows:
        return {QT_TRANSLATE_NOOP("Problem", "this file has more than a million rows"),
                QT_TRANSLATE_NOOP("Problem", "divide it into several files")};
    case TableFault::Utf16:
        return {QT_TRANSLATE_NOOP("Problem", "this text is in UTF-16"),
                QT_TRANSLATE_NOOP("Problem", "save it as UTF-8")};
    case TableFault::NotText:
        return {QT_TRANSLATE_NOOP("Problem", "this is not a text file"),
                QT_TRANSLATE_NOOP("Problem", "save the sheet as CSV, in UTF-8")};
    case TableFault::QuoteNeverCloses:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "the quote that opens on this line never closes; the lines after it are not read"),
                QT_TRANSLATE_NOOP("Problem", "put quotes around the whole field and double those inside it")};
    case TableFault::TextAfterQuote:
        return {QT_TRANSLATE_NOOP("Problem", "there is text after a closing quote"),
                QT_TRANSLATE_NOOP("Problem", "put quotes around the whole field and double those inside it")};
    case TableFault::EmptyLog:
        return {QT_TRANSLATE_NOOP("Problem", "this file is empty"),
                QT_TRANSLATE_NOOP("Problem", "name the columns in one row above the flights; understood are %1")};
    case TableFault::ColumnsMissing:
        return {QT_TRANSLATE_NOOP("Problem", "the header %2 names no column for %3"),
                QT_TRANSLATE_NOOP("Problem", "name the columns in one row above the flights; understood are %1")};
    case TableFault::FieldsNotAsHeader:
        return {QT_TRANSLATE_NOOP("Problem", "this row has %1 fields, the header has %2"),
                QT_TRANSLATE_NOOP("Problem", "put quotes around fields that hold a separator or a decimal comma")};
    case TableFault::NoBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "this row names no balloon"),
                QT_TRANSLATE_NOOP("Problem", "write its registration")};
    case TableFault::NotARegistration:
        return {QT_TRANSLATE_NOOP("Problem", "not a usable registration"),
                QT_TRANSLATE_N_NOOP("Problem", "1 to %n characters on one line")};
    case TableFault::NoDate:
        return {QT_TRANSLATE_NOOP("Problem", "this row has no date"),
                QT_TRANSLATE_NOOP("Problem", "write the day of the flight")};
    case TableFault::NotADate:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date"),
                QT_TRANSLATE_NOOP("Problem", "write it as 2025-12-31")};
    case TableFault::NotADateButDigits:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date"),
                QT_TRANSLATE_NOOP("Problem", "format the column as dates before saving the sheet")};
    case TableFault::NotInTheOrder:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date in this column's order"),
                QT_TRANSLATE_NOOP("Problem", "write it as 2025-12-31")};
    case TableFault::NotInTheOrderButDigits:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date in this column's order"),
                QT_TRANSLATE_NOOP("Problem", "format the column as dates before saving the sheet")};
    case TableFault::LaterThanToday:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is later than today"),
                QT_TRANSLATE_NOOP("Problem", "mend the date")};
    case TableFault::BeforeBalloons:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is before there were modern hot-air balloons"),
                QT_TRANSLATE_NOOP("Problem", "mend the date, the year above all")};
    case TableFault::NotATimeAloft:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a time aloft of at most seven days"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write hours and minutes as 1:35, decimal hours as 1.6 h, or minutes as 95 min")};
    case TableFault::TooShort:
        return {QT_TRANSLATE_NOOP("Problem", "a flight takes at least one minute"),
                QT_TRANSLATE_NOOP("Problem", "mend the duration")};
    case TableFault::UnlikelyLong:
        return {
            QT_TRANSLATE_NOOP("Problem", "'%1' would be a flight of %2 h"),
            QT_TRANSLATE_NOOP("Problem", "say that the column is in minutes, or log the flight by hand if it is so")};
    case TableFault::NotATimeOfDay:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a time of day"),
                QT_TRANSLATE_NOOP("Problem", "write it as 07:34, or leave it empty")};
    case TableFault::TimesGiveNone:
        return {QT_TRANSLATE_NOOP("Problem", "take-off %1 and landing %2 give no time aloft of 1 minute to 12 hours"),
                QT_TRANSLATE_NOOP("Problem", "mend the times, or write the duration")};
    case TableFault::NoTimeAloft:
        return {QT_TRANSLATE_NOOP("Problem", "this row says nothing about the time aloft"),
                QT_TRANSLATE_NOOP("Problem", "write the duration, or both take-off and landing times")};
    case TableFault::NotACount:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a whole number from 0 to %2"),
                QT_TRANSLATE_NOOP("Problem", "write how many")};
    case TableFault::NotATemperature:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a temperature from %2 to %3 °C"),
                QT_TRANSLATE_NOOP("Problem", "write a number, with °C or °F where the heading does not say")};
    case TableFault::NotAnAmount:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not an amount of fuel or a weight"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write a number, with kg, lb, l or US gal where the heading does not say; a "
                                  "load is a weight")};
    case TableFault::AmountOutside:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not from %2 to %3 %4"),
                QT_TRANSLATE_NOOP("Problem", "mend the figure, or leave the cell empty where nobody knows")};
    case TableFault::NeitherYesNorNo:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is neither yes nor no"),
                QT_TRANSLATE_NOOP("Problem", "write yes or no")};
    case TableFault::EmptyTable:
        return {QT_TRANSLATE_NOOP("Problem", "the table is empty"),
                QT_TRANSLATE_NOOP("Problem", "write a first row with the names of the columns")};
    case TableFault::ColumnNotOnce:
        return {QT_TRANSLATE_NOOP("Problem", "there is not one column '%1' in the first row"),
                QT_TRANSLATE_NOOP("Problem", "the columns are %2")};
    case TableFault::CouponHasFlown:
        return {QT_TRANSLATE_NOOP("Problem", "a coupon of new fabric has neither flown nor been overheated"),
                QT_TRANSLATE_NOOP("Problem", "mend the row, or leave it out")};
    case TableFault::NeitherHeldNorBroke:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is neither held nor broke"),
                QT_TRANSLATE_NOOP("Problem", "mend the row, or leave it out")};
    case TableFault::NotNamed:
        return {QT_TRANSLATE_NOOP("Problem", "no %1 is named"),
                QT_TRANSLATE_NOOP("Problem", "mend the row, or leave it out")};
    case TableFault::NoFigureOfAPull:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no %2 that a pull can have"),
                QT_TRANSLATE_NOOP("Problem", "mend the row, or leave it out")};
    case TableFault::LoadFarOff:
        return {QT_TRANSLATE_NOOP("Problem", "this load is more than %1 times off the others of its fabric"),
                QT_TRANSLATE_NOOP("Problem", "look for a slip of the decimal point, or a load in another unit")};
    }
    return {};
}

}

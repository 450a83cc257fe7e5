// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/table_fault.h"

namespace crownring {

FaultRow rowOf(TableFault fault) {
    switch (fault) {
    case TableFault::TooLarge:
        return {"too-large", Code::FileUnreadable};
    case TableFault::TooManyRows:
        return {"too-many-rows", Code::FileUnreadable};
    case TableFault::Utf16:
        return {"utf16", Code::FileUnreadable};
    case TableFault::NotText:
        return {"not-text", Code::FileUnreadable};
    case TableFault::QuoteNeverCloses:
        return {"quote-never-closes", Code::CsvBadRow};
    case TableFault::TextAfterQuote:
        return {"text-after-quote", Code::CsvBadRow};
    case TableFault::EmptyLog:
        return {"empty-log", Code::CsvNoHeader};
    case TableFault::ColumnsMissing:
        return {"columns-missing", Code::CsvNoHeader};
    case TableFault::FieldsNotAsHeader:
        return {"fields-not-as-header", Code::CsvBadRow};
    case TableFault::NoBalloon:
        return {"no-balloon", Code::CsvBadRow};
    case TableFault::NotARegistration:
        return {"not-a-registration", Code::BadValue};
    case TableFault::NoDate:
        return {"no-date", Code::CsvBadRow};
    case TableFault::NotADate:
        return {"not-a-date", Code::BadDate};
    case TableFault::NotADateButDigits:
        return {"not-a-date-but-digits", Code::BadDate};
    case TableFault::NotInTheOrder:
        return {"not-in-the-order", Code::BadDate};
    case TableFault::NotInTheOrderButDigits:
        return {"not-in-the-order-but-digits", Code::BadDate};
    case TableFault::LaterThanToday:
        return {"later-than-today", Code::BadDate};
    case TableFault::BeforeBalloons:
        return {"before-balloons", Code::BadDate};
    case TableFault::NotATimeAloft:
        return {"not-a-time-aloft", Code::BadQuantity};
    case TableFault::TooShort:
        return {"too-short", Code::BadQuantity};
    case TableFault::UnlikelyLong:
        return {"unlikely-long", Code::BadQuantity};
    case TableFault::NotATimeOfDay:
        return {"not-a-time-of-day", Code::BadDate};
    case TableFault::TimesGiveNone:
        return {"times-give-none", Code::CsvBadRow};
    case TableFault::NoTimeAloft:
        return {"no-time-aloft", Code::CsvBadRow};
    case TableFault::NotACount:
        return {"not-a-count", Code::BadQuantity};
    case TableFault::NotATemperature:
        return {"not-a-temperature", Code::BadQuantity};
    case TableFault::NotAnAmount:
        return {"not-an-amount", Code::BadQuantity};
    case TableFault::AmountOutside:
        return {"amount-outside", Code::BadQuantity};
    case TableFault::NeitherYesNorNo:
        return {"neither-yes-nor-no", Code::BadValue};
    case TableFault::EmptyTable:
        return {"empty-table", Code::CsvNoHeader};
    case TableFault::ColumnNotOnce:
        return {"column-not-once", Code::CsvNoHeader};
    case TableFault::CouponHasFlown:
        return {"coupon-has-flown", Code::CsvBadRow};
    case TableFault::NeitherHeldNorBroke:
        return {"neither-held-nor-broke", Code::CsvBadRow};
    case TableFault::NotNamed:
        return {"not-named", Code::CsvBadRow};
    case TableFault::NoFigureOfAPull:
        return {"no-figure-of-a-pull", Code::CsvBadRow};
    case TableFault::LoadFarOff:
        return {"load-far-off", Code::CsvBadRow};
    }
    return {};
}

}

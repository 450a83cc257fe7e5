// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/log/log_phrase.h"
#include "words/phrase_sources.h"

#include <QtGlobal>

namespace crownring::words {

const char* sourceOf(LogPhrase phrase) {
    switch (phrase) {
    case LogPhrase::ADate:
        return QT_TRANSLATE_NOOP("Phrase", "a date");
    case LogPhrase::ABalloon:
        return QT_TRANSLATE_NOOP("Phrase", "a balloon");
    case LogPhrase::ADuration:
        return QT_TRANSLATE_NOOP("Phrase", "a duration, or take-off and landing times");
    case LogPhrase::EitherColumn:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' and '%2' may both be the %3; choose one");
    case LogPhrase::ReadAsWindows1252:
        return QT_TRANSLATE_NOOP("Phrase", "the text was not UTF-8 and has been read as Windows-1252 (Latin-1)");
    case LogPhrase::NoTimesOfDay:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' holds no times of day and is left out");
    case LogPhrase::NumbersNoNames:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' holds numbers, not names of what flew, and is left out");
    case LogPhrase::FuelUnread:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "'%1' does not say whether it was burnt or on board, and is left out; where it "
                                 "was burnt, call it 'fuel used' with its unit, kg or l");
    case LogPhrase::DatesInSeveralOrders:
        return QT_TRANSLATE_NOOP("Phrase", "the dates of this file are not all in one order of day and month");
    case LogPhrase::DatesTellNoOrder:
        return QT_TRANSLATE_NOOP("Phrase", "no date of this file tells whether the day or the month comes first");
    case LogPhrase::ShortYears:
        return QT_TRANSLATE_N_NOOP("Phrase", "%n dates have a year of two digits, read as 1969 to 2068");
    case LogPhrase::DurationUnitOpen:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "'%1' does not say whether its numbers are minutes, hours, or hours and minutes");
    case LogPhrase::TemperatureUnitOpen:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' does not say whether its figures are °C or °F");
    case LogPhrase::AmountUnitOpen:
        return QT_TRANSLATE_NOOP("Phrase", "'%1' does not say in which unit its figures are");
    case LogPhrase::ZoneNotStated:
        return QT_TRANSLATE_NOOP("Phrase", "take-off times whose zone is not stated are kept as the log has them: %1");
    case LogPhrase::DurationTaken:
        return QT_TRANSLATE_NOOP("Phrase",
                                 "the duration differs from the times by more than five minutes and was taken: %1");
    case LogPhrase::Lines:
        return QT_TRANSLATE_N_NOOP("Phrase", "lines %2");
    case LogPhrase::LinesAndMore:
        return QT_TRANSLATE_N_NOOP("Phrase", "lines %2 …");
    }
    return "";
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/written_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(WrittenFault fault) {
    switch (fault) {
    case WrittenFault::NotADate:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date"),
                QT_TRANSLATE_NOOP("Problem", "write it as YYYY-MM-DD, a day that exists")};
    case WrittenFault::NotADateOrMonth:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a date"),
                QT_TRANSLATE_NOOP("Problem", "write it as YYYY-MM or YYYY-MM-DD")};
    case WrittenFault::NotATimeOfDay:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a time of day"),
                QT_TRANSLATE_NOOP("Problem", "write it in UTC as HH:MMZ")};
    case WrittenFault::NotADuration:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not a duration"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write hours and minutes as 1:35, decimal hours as 1.6 h, or minutes as 95 min")};
    case WrittenFault::LaterThanNow:
        return {QT_TRANSLATE_NOOP("Problem", "%1 UTC is later than now: it has not happened yet"),
                QT_TRANSLATE_NOOP("Problem", "write when it happened in UTC, or leave the time empty")};
    }
    return {};
}

}

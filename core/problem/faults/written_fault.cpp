// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/written_fault.h"

namespace crownring {

FaultRow rowOf(WrittenFault fault) {
    switch (fault) {
    case WrittenFault::NotADate:
        return {"not-a-date", Code::BadDate};
    case WrittenFault::NotADateOrMonth:
        return {"not-a-date-or-month", Code::BadDate};
    case WrittenFault::NotATimeOfDay:
        return {"not-a-time-of-day", Code::BadDate};
    case WrittenFault::NotADuration:
        return {"not-a-duration", Code::BadQuantity};
    case WrittenFault::LaterThanNow:
        return {"later-than-now", Code::BadDate};
    }
    return {};
}

}

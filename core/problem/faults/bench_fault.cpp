// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/bench_fault.h"

namespace crownring {

FaultRow rowOf(BenchFault fault) {
    switch (fault) {
    case BenchFault::NoInspection:
        return {"no-inspection", Code::UnknownReference};
    case BenchFault::NotYetOpened:
        return {"not-yet-opened", Code::UnknownReference};
    case BenchFault::NothingToInspect:
        return {"nothing-to-inspect", Code::BadUse};
    case BenchFault::NoItems:
        return {"no-items", Code::BadUse};
    case BenchFault::NotOfTheVisit:
        return {"not-of-the-visit", Code::BadUse};
    case BenchFault::ComponentOfBalloon:
        return {"component-visit-of-balloon", Code::BadUse};
    case BenchFault::NoEventReported:
        return {"no-event-reported", Code::BadUse};
    case BenchFault::ItemNotYetThere:
        return {"item-not-yet-there", Code::UnknownReference};
    case BenchFault::NoVisit:
        return {"no-visit", Code::BadValue};
    case BenchFault::NoCapacity:
        return {"no-capacity", Code::BadValue};
    case BenchFault::NoCapacityToSignIn:
        return {"no-capacity-to-sign-in", Code::BadValue};
    case BenchFault::SignatureIsFixed:
        return {"signature-is-fixed", Code::CannotAmend};
    case BenchFault::SignatureDayIsFixed:
        return {"signature-day-is-fixed", Code::CannotAmend};
    case BenchFault::EntryMissing:
        return {"entry-missing", Code::UnknownReference};
    case BenchFault::NoEntry:
        return {"no-entry", Code::UnknownReference};
    }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/bench_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(BenchFault fault) {
    switch (fault) {
    case BenchFault::NoInspection:
        return {QT_TRANSLATE_NOOP("Problem", "no inspection '%1' is in the record"),
                QT_TRANSLATE_NOOP("Problem", "see crownringctl inspection list for what is")};
    case BenchFault::NotYetOpened:
        return {QT_TRANSLATE_NOOP("Problem", "the inspection '%1' was opened on %2, after the day asked"),
                QT_TRANSLATE_NOOP("Problem", "ask for that day or a later one")};
    case BenchFault::NothingToInspect:
        return {QT_TRANSLATE_NOOP("Problem", "nothing to inspect"),
                QT_TRANSLATE_NOOP("Problem", "name a balloon, or the items that came in")};
    case BenchFault::NoItems:
        return {QT_TRANSLATE_NOOP("Problem", "nothing to inspect"),
                QT_TRANSLATE_NOOP("Problem", "name at least one item")};
    case BenchFault::NotOfTheVisit:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not accomplished by such a visit: %2"),
                QT_TRANSLATE_NOOP("Problem", "leave it out, or open the visit that is there for it")};
    case BenchFault::ComponentOfBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "work on a component is off the aircraft, and this visit is of %1"),
                QT_TRANSLATE_NOOP("Problem", "open a visit of the item alone, or a repair of the balloon")};
    case BenchFault::NoEventReported:
        return {QT_TRANSLATE_NOOP("Problem", "no event is reported that asks for such a visit: %1"),
                QT_TRANSLATE_NOOP("Problem", "report first what happened, of the balloon or of the item: that decides "
                                             "what is looked at")};
    case BenchFault::ItemNotYetThere:
        return {QT_TRANSLATE_NOOP("Problem", "item '%1' is not in the record on %2"),
                QT_TRANSLATE_NOOP("Problem", "open it on a later day, or leave the item out")};
    case BenchFault::NoVisit:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no kind of visit"), QT_TRANSLATE_NOOP("Problem", "one of %2")};
    case BenchFault::NoCapacity:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is nothing that one signs as"),
                QT_TRANSLATE_NOOP("Problem", "write one of: %2")};
    case BenchFault::NoCapacityToSignIn:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is nothing that one signs as"),
                QT_TRANSLATE_NOOP("Problem", "independent-certifying-staff, inspection-authorization …")};
    case BenchFault::SignatureIsFixed:
        return {QT_TRANSLATE_NOOP("Problem", "what was signed is not corrected into something else"),
                QT_TRANSLATE_NOOP("Problem", "withdraw the release, then inspect and sign again")};
    case BenchFault::SignatureDayIsFixed:
        return {QT_TRANSLATE_NOOP("Problem", "the day and time of a signature are not corrected into others"),
                QT_TRANSLATE_NOOP("Problem", "withdraw the release, then inspect and sign again")};
    case BenchFault::EntryMissing:
        return {QT_TRANSLATE_NOOP("Problem", "the record holds no entry '%1'"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case BenchFault::NoEntry:
        return {QT_TRANSLATE_NOOP("Problem", "the record holds no entry '%1'"),
                QT_TRANSLATE_NOOP("Problem", "point at the id of an entry that was posted before this one")};
    }
    return {};
}

}

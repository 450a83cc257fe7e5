// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/fabric_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(FabricFault fault) {
    switch (fault) {
    case FabricFault::NoBoundOnOneSide:
        return {QT_TRANSLATE_NOOP("Problem", "these readings set no bound on one side"),
                QT_TRANSLATE_NOOP("Problem", "add readings that broke")};
    case FabricFault::AgeingOpen:
        return {QT_TRANSLATE_NOOP("Problem", "these readings leave the ageing of the fabric open"),
                QT_TRANSLATE_NOOP("Problem", "add readings that broke, at more than one age")};
    case FabricFault::NotToldApart:
        return {QT_TRANSLATE_NOOP("Problem", "what the readings are compared by does not tell them apart"),
                QT_TRANSLATE_NOOP("Problem", "add readings at another age, or leave a column out")};
    case FabricFault::FleetOpen:
        return {QT_TRANSLATE_NOOP("Problem", "these readings leave the ageing of the fleet open"),
                QT_TRANSLATE_NOOP("Problem", "add readings that broke, of more sets and at more ages")};
    case FabricFault::BelongsToNothing:
        return {QT_TRANSLATE_NOOP("Problem", "a lot or a set belongs to nothing"),
                QT_TRANSLATE_NOOP("Problem", "correct the reading; nothing was fitted")};
    case FabricFault::ReadingOfNoSet:
        return {QT_TRANSLATE_NOOP("Problem", "reading %1 is of no set or out of order"),
                QT_TRANSLATE_NOOP("Problem", "correct the reading; nothing was fitted")};
    case FabricFault::NoReading:
        return {QT_TRANSLATE_NOOP("Problem", "reading %1 is no number that a test can give"),
                QT_TRANSLATE_NOOP("Problem", "correct the reading; nothing was fitted")};
    case FabricFault::NoCoupon:
        return {QT_TRANSLATE_NOOP("Problem", "a test of new fabric is of no lot or no number"),
                QT_TRANSLATE_NOOP("Problem", "correct the reading; nothing was fitted")};
    case FabricFault::HoursUnknown:
        return {QT_TRANSLATE_NOOP("Problem", "the hours of '%1' are not known"),
                QT_TRANSLATE_NOOP("Problem", "state its clock with the next inspection")};
    case FabricFault::HoursUnknownOn:
        return {QT_TRANSLATE_NOOP("Problem", "the hours of '%1' are not known on %2"),
                QT_TRANSLATE_NOOP("Problem", "state its clock with the next inspection")};
    case FabricFault::NoEnvelope:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no envelope in the record on %2"),
                QT_TRANSLATE_NOOP("Problem", "ask for another, or a later day")};
    case FabricFault::TypeUnknown:
        return {QT_TRANSLATE_NOOP("Problem", "the type of '%1' is not known"),
                QT_TRANSLATE_NOOP("Problem", "correct its entry: without a type there is no limit")};
    case FabricFault::NothingStated:
        return {QT_TRANSLATE_NOOP("Problem", "no strength and no permeability is stated that fabric of '%1' must have"),
                QT_TRANSLATE_NOOP("Problem", "enter the limit that its manual states (limit.stated, grab-strength)")};
    case FabricFault::NoManualBoundsIt:
        return {QT_TRANSLATE_NOOP("Problem", "no envelope's manual bounds %1"),
                QT_TRANSLATE_NOOP("Problem", "enter the limit that the manual of its type states (limit.stated)")};
    case FabricFault::NoEnvelopeTested:
        return {QT_TRANSLATE_NOOP("Problem", "no envelope has been tested"),
                QT_TRANSLATE_NOOP("Problem", "add at least one pull of an envelope")};
    case FabricFault::NoLimitToAskFor:
        return {QT_TRANSLATE_NOOP("Problem", "no limit is stated for '%1'"),
                QT_TRANSLATE_NOOP("Problem", "enter the limit that the manual states (limit.stated)")};
    case FabricFault::AskForAnother:
        return {QT_TRANSLATE_NOOP("Problem", "no limit is stated for '%1'"),
                QT_TRANSLATE_NOOP("Problem", "ask for %2")};
    }
    return {};
}

}

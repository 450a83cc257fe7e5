// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/checklist_fault.h"

namespace crownring {

FaultRow rowOf(ChecklistFault fault) {
    switch (fault) {
    case ChecklistFault::TooDeep:
        return {"too-deep", Code::BadJson};
    case ChecklistFault::NotAnObject:
        return {"not-an-object", Code::BadJson};
    case ChecklistFault::KeyTwice:
        return {"key-twice", Code::BadJson};
    case ChecklistFault::ValueNotAllowed:
        return {"value-not-allowed", Code::BadValue};
    case ChecklistFault::KeyMissing:
        return {"key-missing", Code::BadValue};
    case ChecklistFault::KeyNotAllowed:
        return {"key-not-allowed", Code::BadValue};
    case ChecklistFault::NotOfThisKind:
        return {"not-of-this-kind", Code::BadValue};
    case ChecklistFault::CannotBeChecked:
        return {"cannot-be-checked", Code::BadValue};
    case ChecklistFault::VisitWithoutSource:
        return {"visit-without-source", Code::BadValue};
    case ChecklistFault::OwnersTaskWithoutRule:
        return {"owners-task-without-rule", Code::BadValue};
    case ChecklistFault::RuleWithoutOwnersTask:
        return {"rule-without-owners-task", Code::BadValue};
    case ChecklistFault::ReadingOfNothing:
        return {"reading-of-nothing", Code::BadValue};
    case ChecklistFault::AskedTwice:
        return {"asked-twice", Code::BadValue};
    case ChecklistFault::PlacedOnNoEnvelope:
        return {"placed-on-no-envelope", Code::BadValue};
    case ChecklistFault::SectionTwice:
        return {"section-twice", Code::BadValue};
    case ChecklistFault::LineTwice:
        return {"line-twice", Code::BadValue};
    case ChecklistFault::NoSuchSection:
        return {"no-such-section", Code::BadValue};
    case ChecklistFault::OutOfOrder:
        return {"out-of-order", Code::BadValue};
    case ChecklistFault::LineOfTheOther:
        return {"line-of-the-other", Code::BadValue};
    case ChecklistFault::KeptUnreadable:
        return {"kept-unreadable", Code::BadValue};
    case ChecklistFault::NotOnTheShelf:
        return {"not-on-the-shelf", Code::UnknownReference};
    }
    return {};
}

}

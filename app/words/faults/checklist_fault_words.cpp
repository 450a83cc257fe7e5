// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/checklist_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(ChecklistFault fault) {
    switch (fault) {
    case ChecklistFault::TooDeep:
        return {QT_TRANSLATE_NOOP("Problem", "this nests deeper than a checklist does"),
                QT_TRANSLATE_NOOP("Problem", "write a checklist document")};
    case ChecklistFault::NotAnObject:
        return {QT_TRANSLATE_NOOP("Problem", "this is not one JSON object"),
                QT_TRANSLATE_NOOP("Problem", "write a checklist document")};
    case ChecklistFault::KeyTwice:
        return {QT_TRANSLATE_NOOP("Problem", "this key stands twice in one object"),
                QT_TRANSLATE_NOOP("Problem", "keep one of them")};
    case ChecklistFault::ValueNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "this value is not one that a checklist may have here"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ChecklistFault::KeyMissing:
        return {QT_TRANSLATE_NOOP("Problem", "a key that a checklist must have here is missing"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ChecklistFault::KeyNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "no checklist has this key here"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ChecklistFault::NotOfThisKind:
        return {QT_TRANSLATE_NOOP("Problem", "not a checklist"),
                QT_TRANSLATE_NOOP("Problem", "see checklist.schema.json")};
    case ChecklistFault::CannotBeChecked:
        return {QT_TRANSLATE_NOOP("Problem", "this cannot be checked: %1"),
                QT_TRANSLATE_NOOP("Problem", "see checklist.schema.json")};
    case ChecklistFault::VisitWithoutSource:
        return {QT_TRANSLATE_NOOP("Problem", "this line has no source for this visit"),
                QT_TRANSLATE_NOOP("Problem", "add its source, or leave the visit out")};
    case ChecklistFault::OwnersTaskWithoutRule:
        return {QT_TRANSLATE_NOOP("Problem", "an owner's task must say which rule allows it"),
                QT_TRANSLATE_NOOP("Problem", "name the rule that lets the pilot-owner do it")};
    case ChecklistFault::RuleWithoutOwnersTask:
        return {QT_TRANSLATE_NOOP("Problem", "no visit of this line is one of owner's tasks"),
                QT_TRANSLATE_NOOP("Problem", "name such a visit, or leave the rule out")};
    case ChecklistFault::ReadingOfNothing:
        return {QT_TRANSLATE_NOOP("Problem", "a line of no kind of item has nothing to take a reading of"),
                QT_TRANSLATE_NOOP("Problem", "name a kind")};
    case ChecklistFault::AskedTwice:
        return {QT_TRANSLATE_NOOP("Problem", "this line asks for it already"),
                QT_TRANSLATE_NOOP("Problem", "keep one of them")};
    case ChecklistFault::PlacedOnNoEnvelope:
        return {QT_TRANSLATE_NOOP("Problem", "only an envelope has gores and rows"),
                QT_TRANSLATE_NOOP("Problem", "leave it out")};
    case ChecklistFault::SectionTwice:
        return {QT_TRANSLATE_NOOP("Problem", "this section is there already"),
                QT_TRANSLATE_NOOP("Problem", "give each an id of its own")};
    case ChecklistFault::LineTwice:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is the id of two lines"),
                QT_TRANSLATE_NOOP("Problem", "give each an id of its own")};
    case ChecklistFault::NoSuchSection:
        return {QT_TRANSLATE_NOOP("Problem", "there is no such section"),
                QT_TRANSLATE_NOOP("Problem", "add it to the sections")};
    case ChecklistFault::OutOfOrder:
        return {QT_TRANSLATE_NOOP("Problem", "this line stands behind those of a later section"),
                QT_TRANSLATE_NOOP("Problem", "put the lines in the order of their sections")};
    case ChecklistFault::LineOfTheOther:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is a line of %2"),
                QT_TRANSLATE_NOOP("Problem", "give a line of your own an id of its own")};
    case ChecklistFault::KeptUnreadable:
        return {QT_TRANSLATE_NOOP("Problem", "the checklist that was kept cannot be read: %1"),
                QT_TRANSLATE_NOOP("Problem", "verify the record")};
    case ChecklistFault::NotOnTheShelf:
        return {QT_TRANSLATE_NOOP("Problem", "no checklist '%1' is on the shelf"),
                QT_TRANSLATE_NOOP("Problem", "adopt one")};
    }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/programme_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(ProgrammeFault fault) {
    switch (fault) {
    case ProgrammeFault::TooDeep:
        return {QT_TRANSLATE_NOOP("Problem", "this nests deeper than a programme does"),
                QT_TRANSLATE_NOOP("Problem", "write a programme document")};
    case ProgrammeFault::NotAnObject:
        return {QT_TRANSLATE_NOOP("Problem", "this is not one JSON object"),
                QT_TRANSLATE_NOOP("Problem", "write a programme document")};
    case ProgrammeFault::KeyTwice:
        return {QT_TRANSLATE_NOOP("Problem", "this key stands twice in one object"),
                QT_TRANSLATE_NOOP("Problem", "keep one of them")};
    case ProgrammeFault::ValueNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "this value is not one that a programme may have here"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ProgrammeFault::KeyMissing:
        return {QT_TRANSLATE_NOOP("Problem", "a key that a programme must have here is missing"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ProgrammeFault::KeyNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "no programme has this key here"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case ProgrammeFault::NotOfThisKind:
        return {QT_TRANSLATE_NOOP("Problem", "not a programme"),
                QT_TRANSLATE_NOOP("Problem", "see programme.schema.json")};
    case ProgrammeFault::CannotBeChecked:
        return {QT_TRANSLATE_NOOP("Problem", "this cannot be checked: %1"),
                QT_TRANSLATE_NOOP("Problem", "see programme.schema.json")};
    case ProgrammeFault::MethodWithoutMonths:
        return {QT_TRANSLATE_NOOP("Problem", "an interval by method needs a limit on months"),
                QT_TRANSLATE_NOOP("Problem", "add a limit with clock months")};
    case ProgrammeFault::KeptWithoutWindow:
        return {QT_TRANSLATE_NOOP("Problem", "a pattern that is kept needs a window"),
                QT_TRANSLATE_NOOP("Problem", "add window, or leave out kept")};
    case ProgrammeFault::WithItself:
        return {QT_TRANSLATE_NOOP("Problem", "it would be due with itself"),
                QT_TRANSLATE_NOOP("Problem", "name the inspection that it goes with")};
    case ProgrammeFault::WithAndLast:
        return {QT_TRANSLATE_NOOP(
                    "Problem", "what goes with an inspection never lapses, and so would not the last of these limits"),
                QT_TRANSLATE_NOOP("Problem", "let whichever be first, or make two requirements of it")};
    case ProgrammeFault::NeverDue:
        return {QT_TRANSLATE_NOOP("Problem", "nothing would ever make this due"),
                QT_TRANSLATE_NOOP("Problem", "add a limit, or triggered_by")};
    case ProgrammeFault::EmptyRange:
        return {QT_TRANSLATE_NOOP("Problem", "this range of serial numbers is empty"),
                QT_TRANSLATE_NOOP("Problem", "put the lower number at from")};
    case ProgrammeFault::RequirementTwice:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is the id of two requirements"),
                QT_TRANSLATE_NOOP("Problem", "give each an id of its own")};
    case ProgrammeFault::Unknown:
        return {QT_TRANSLATE_NOOP("Problem", "neither the record nor the shelf has a programme '%1'"),
                QT_TRANSLATE_NOOP("Problem", "adopt it with its document: crownringctl adopt PROGRAMME.json")};
    case ProgrammeFault::NoText:
        return {QT_TRANSLATE_NOOP("Problem", "the text of the programme is not known"),
                QT_TRANSLATE_NOOP("Problem", "adopt it with its document")};
    case ProgrammeFault::AnotherProgramme:
        return {QT_TRANSLATE_NOOP("Problem", "the document is the programme '%1'"),
                QT_TRANSLATE_NOOP("Problem", "name the programme as its document does")};
    case ProgrammeFault::AnotherDigest:
        return {
            QT_TRANSLATE_NOOP("Problem", "the digest is not that of the document"),
            QT_TRANSLATE_NOOP("Problem", "leave the digest out; it is computed from the document's canonical text")};
    case ProgrammeFault::EveryBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "every balloon"), QT_TRANSLATE_NOOP("Problem", "name the balloons")};
    case ProgrammeFault::TwoRegimes:
        return {
            QT_TRANSLATE_NOOP("Problem", "%2 and %3 are the aircraft rules of two states of registry, and would both "
                                         "bind %1"),
            QT_TRANSLATE_NOOP("Problem", "a balloon has one state of registry: void the adoption of the other rules; "
                                         "items of the pool may follow both")};
    case ProgrammeFault::DigestNotAmended:
        return {QT_TRANSLATE_NOOP("Problem", "the digest is not that of the document as it now stands"),
                QT_TRANSLATE_NOOP("Problem", "correct the digest with the document: it is %1; or void the adoption and "
                                             "adopt the programme anew")};
    }
    return {};
}

}

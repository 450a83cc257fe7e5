// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/components/part_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(PartFault fault) {
    switch (fault) {
    case PartFault::CarriesItself:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' would be a part of itself, by way of '%2'"),
                QT_TRANSLATE_NOOP("Problem", "see which of them is fitted to which")};
    case PartFault::KeptApart:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is kept apart: %2"),
                QT_TRANSLATE_NOOP("Problem",
                                  "fit another one; it comes back with a release of its own, entered as in-service")};
    case PartFault::StillFitted:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is still fitted to '%2'"),
                QT_TRANSLATE_NOOP("Problem", "enter its removal, too: what is kept apart is on nothing")};
    case PartFault::Condemned:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is condemned for good"),
                QT_TRANSLATE_NOOP(
                    "Problem", "nothing brings it back; where the wrong one was named, void that entry and say why")};
    case PartFault::NotReleased:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' was kept apart, and nothing says by what it is released"),
                QT_TRANSLATE_NOOP("Problem", "state its release: an EASA Form 1, an FAA Form 8130-3, or the visit that "
                                             "released it; a new part's papers are none")};
    case PartFault::NotReleasedBy:
        return {
            QT_TRANSLATE_NOOP("Problem", "'%2' did not release '%1'"),
            QT_TRANSLATE_NOOP("Problem", "name a visit that was opened for it and ended with a release by that day")};
    case PartFault::BackSince:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "'%1' would be kept apart, and is said to be in service since %2 without a "
                                  "release"),
                QT_TRANSLATE_NOOP("Problem", "correct that entry first so that it names its release, or void it")};
    case PartFault::TakenBack:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is kept apart by this: it comes back with a release, and not by "
                                             "taking the word back"),
                QT_TRANSLATE_NOOP("Problem", "enter it as in-service with its release; who wrote it takes back a slip "
                                             "at once, before anything else is written")};
    case PartFault::NoCylinder:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no cylinder"),
                QT_TRANSLATE_NOOP("Problem", "name the cylinder that was filled")};
    case PartFault::FilledOut:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' must not be filled: %2"),
                QT_TRANSLATE_NOOP("Problem", "fill another one, or see whether it is in service again")};
    case PartFault::FilledHot:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' must not be filled: it was overheated on %2"),
                QT_TRANSLATE_NOOP("Problem", "an overheated vessel is condemned; enter that, or correct the event")};
    case PartFault::FilledGrounded:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' must not be filled: it may not fly, by '%2'"),
                QT_TRANSLATE_NOOP("Problem", "settle that first, and fill it then")};
    case PartFault::TestPast:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' must not be filled: '%2' was good until %3"),
                QT_TRANSLATE_NOOP("Problem",
                                  "have it tested first; what was filled before may be flown until it is empty")};
    case PartFault::TestNotShown:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' must not be filled: nothing shows when '%2' is due"),
                QT_TRANSLATE_NOOP("Problem", "enter when it was last done, or when the cylinder was made")};
    case PartFault::NothingReturned:
        return {QT_TRANSLATE_NOOP("Problem", "nothing comes back: no item is named"),
                QT_TRANSLATE_NOOP("Problem", "name the items that came back")};
    case PartFault::NotAway:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not away"),
                QT_TRANSLATE_NOOP("Problem", "name what was sent, or enter what was done by itself")};
    case PartFault::TestedBeforeSent:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' would be tested on %2, and was sent on %3"),
                QT_TRANSLATE_NOOP("Problem", "write the day that its document names, or correct when it was sent")};
    case PartFault::TestedAfterBack:
        return {QT_TRANSLATE_NOOP("Problem", "it would be tested on %1, and came back on %2"),
                QT_TRANSLATE_NOOP("Problem", "write the day that its document names, or that on which it came back")};
    case PartFault::NotFitted:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is fitted to nothing on %2"),
                QT_TRANSLATE_NOOP("Problem", "name what is taken off, or enter the fitting by itself")};
    case PartFault::NamedTwice:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is named twice"),
                QT_TRANSLATE_NOOP("Problem", "name each item once; what comes back is either good or condemned")};
    case PartFault::ReplacesItself:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' would replace itself"),
                QT_TRANSLATE_NOOP("Problem", "name what goes on in its place")};
    case PartFault::FittedElsewhere:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is fitted to '%2'"),
                QT_TRANSLATE_NOOP("Problem", "enter its removal from there first, or name another one")};
    case PartFault::OtherKind:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is a %2, and '%3' a %4"),
                QT_TRANSLATE_NOOP("Problem", "name one of the same kind, or enter removal and fitting by themselves")};
    case PartFault::StampAmbiguous:
        return {QT_TRANSLATE_NOOP("Problem", "the stamp '%1' may mean %2 or %3"),
                QT_TRANSLATE_NOOP("Problem", "year and month stand in this order under ADR, month and year in the "
                                             "United States: see the specification, and write YYYY-MM")};
    case PartFault::StampOfOneMonth:
        return {QT_TRANSLATE_NOOP("Problem", "the stamp '%1' is not written as a date"),
                QT_TRANSLATE_NOOP("Problem", "write %2, if that is what it says")};
    case PartFault::TagNotFound:
        return {QT_TRANSLATE_NOOP("Problem", "no tag can be read on this picture"),
                QT_TRANSLATE_NOOP("Problem", "take the picture again: the whole tag with the white round it, sharp "
                                             "and in even light; or search for the item's name")};
    case PartFault::TagOfAnother:
        return {QT_TRANSLATE_NOOP("Problem", "the code on it is none of our tags: it says '%1'"),
                QT_TRANSLATE_NOOP("Problem", "search for the item by its name or serial number")};
    case PartFault::TagsOfSeveral:
        return {QT_TRANSLATE_NOOP("Problem", "several tags are on it: %1"),
                QT_TRANSLATE_NOOP("Problem", "take a picture of one tag alone")};
    case PartFault::TagOfUnknown:
        return {QT_TRANSLATE_NOOP("Problem", "the tag names '%1', and no item of that name is in this record"),
                QT_TRANSLATE_NOOP("Problem", "see whether it belongs to another record, or enter the item")};
    }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(UseFault fault) {
    switch (fault) {
    case UseFault::NoWork:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' names no work"),
                QT_TRANSLATE_NOOP("Problem", "write it as ITEM=REQUIREMENT, as due has them")};
    case UseFault::EmptyKit:
        return {QT_TRANSLATE_NOOP("Problem", "no items to check"),
                QT_TRANSLATE_NOOP("Problem", "name the items that would fly together")};
    case UseFault::ItemNotYetThere:
        return {QT_TRANSLATE_NOOP("Problem", "item '%1' is not in the record on %2"),
                QT_TRANSLATE_NOOP("Problem", "ask for a later day, or leave it out")};
    case UseFault::NoItemOnThatDay:
        return {QT_TRANSLATE_NOOP("Problem", "item '%1' is not in the record on %2"),
                QT_TRANSLATE_NOOP("Problem", "ask for a later day")};
    case UseFault::BalloonNotYetThere:
        return {QT_TRANSLATE_NOOP("Problem", "no balloon '%1' is in the record on %2"),
                QT_TRANSLATE_NOOP("Problem", "see the register for what is")};
    case UseFault::NoBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "no balloon '%1' is in the record"),
                QT_TRANSLATE_NOOP("Problem", "see the register for what is")};
    case UseFault::NoItem:
        return {QT_TRANSLATE_NOOP("Problem", "no item '%1' is in the record"),
                QT_TRANSLATE_NOOP("Problem", "see the register for what is")};
    case UseFault::NoSubject:
        return {QT_TRANSLATE_NOOP("Problem", "no such item or balloon is in the record"),
                QT_TRANSLATE_NOOP("Problem", "see the register for what is")};
    case UseFault::FlightTakenMeanwhile:
        return {QT_TRANSLATE_NOOP("Problem", "the record has changed: the flight of %1 on %2 is no longer new"),
                QT_TRANSLATE_NOOP("Problem", "look at the preview again")};
    case UseFault::NoRecordNamed:
        return {QT_TRANSLATE_NOOP("Problem", "no record is named"),
                QT_TRANSLATE_NOOP("Problem", "name one with --record FILE or --record postgresql://…")};
    case UseFault::BoundNotOnce:
        return {QT_TRANSLATE_NOOP("Problem", "whom the programme binds is not said exactly once"),
                QT_TRANSLATE_NOOP("Problem", "give --balloon, --item (each may repeat) or --all")};
    case UseFault::NotAnAcknowledgement:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not what post answers: WRITER:SEQUENCE:HASH"),
                QT_TRANSLATE_NOOP("Problem", "write the three as post answered them, the hash in 64 hex digits")};
    case UseFault::NotUtf8:
        return {QT_TRANSLATE_NOOP("Problem", "argument %1 is not UTF-8 from its byte %2 on"),
                QT_TRANSLATE_NOOP("Problem", "write it in UTF-8, and see that the terminal does")};
    case UseFault::SomethingToChoose:
        return {QT_TRANSLATE_NOOP("Problem", "something must be chosen first"),
                QT_TRANSLATE_NOOP("Problem", "see the notes")};
    case UseFault::BadRows:
        return {QT_TRANSLATE_NOOP("Problem", "some rows are bad, so nothing was posted"),
                QT_TRANSLATE_NOOP("Problem", "mend them, or leave them out with --skip-bad")};
    case UseFault::FileUnreadable:
        return {QT_TRANSLATE_NOOP("Problem", "the file cannot be read"),
                QT_TRANSLATE_NOOP("Problem", "check its name and whether it may be read")};
    case UseFault::NotAFile:
        return {QT_TRANSLATE_NOOP("Problem", "this is no file but a folder or a device"),
                QT_TRANSLATE_NOOP("Problem", "name a file")};
    case UseFault::NoPicture:
        return {QT_TRANSLATE_NOOP("Problem", "this is no picture that can be read: %1"),
                QT_TRANSLATE_NOOP("Problem", "choose a JPEG or PNG file")};
    case UseFault::PictureNotKept:
        return {QT_TRANSLATE_NOOP("Problem", "the picture cannot be kept as JPEG"),
                QT_TRANSLATE_NOOP("Problem", "choose another")};
    case UseFault::PictureTooLarge:
        return {QT_TRANSLATE_NOOP("Problem", "the picture is too large: %1 by %2 pixels"),
                QT_TRANSLATE_NOOP("Problem", "choose one as a camera takes it, or make it smaller")};
    case UseFault::NotAWholeNumber:
        return {QT_TRANSLATE_NOOP("Problem", "not a whole number"), QT_TRANSLATE_NOOP("Problem", "write digits only")};
    case UseFault::NotANumber:
        return {QT_TRANSLATE_NOOP("Problem", "not a number"),
                QT_TRANSLATE_NOOP("Problem", "write it as 98.5 or 98,5, without a divider of thousands")};
    case UseFault::OnlyTried:
        return {QT_TRANSLATE_NOOP("Problem", "this was tried out only: nothing was written"),
                QT_TRANSLATE_NOOP("Problem", "post it to write it")};
    case UseFault::DaysNotAhead:
        return {
            QT_TRANSLATE_NOOP("Problem", "the days from %1 to %2 cannot be foretold"),
            QT_TRANSLATE_NOOP("Problem", "name a first day and a later last one, within %3 years of what is known")};
    case UseFault::NotAPlan:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no plan"),
                QT_TRANSLATE_NOOP("Problem", "write it as 2026-12-01..2027-02-28=0 (times the usual pace) or =3/week")};
    case UseFault::NotAFlight:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no flight to suppose"),
                QT_TRANSLATE_NOOP("Problem", "write it as REG:MINUTES:DATE, as QE-ABC:240:2026-12-05")};
    case UseFault::NotALetter:
        return {QT_TRANSLATE_NOOP("Problem", "this is no letter about a visit"),
                QT_TRANSLATE_NOOP("Problem", "take the file that came beside the letter")};
    case UseFault::NoVisitPlanned:
        return {QT_TRANSLATE_NOOP("Problem", "no visit '%1' is planned"),
                QT_TRANSLATE_NOOP("Problem", "see calendar and agenda for those that are")};
    case UseFault::TooLong:
        return {QT_TRANSLATE_NOOP("Problem", "%1 letters are too many, %2 is the most"),
                QT_TRANSLATE_NOOP("Problem", "say it in short; what is longer belongs into the note")};
    case UseFault::PlanFileTooDeep:
        return {QT_TRANSLATE_NOOP("Problem", "this nests deeper than such a file does"),
                QT_TRANSLATE_NOOP("Problem", "write it as its schema says")};
    case UseFault::PlanFileNotAnObject:
        return {QT_TRANSLATE_NOOP("Problem", "this is not one JSON object"),
                QT_TRANSLATE_NOOP("Problem", "write it as its schema says")};
    case UseFault::PlanFileKeyTwice:
        return {QT_TRANSLATE_NOOP("Problem", "this key stands twice in one object"),
                QT_TRANSLATE_NOOP("Problem", "keep one of them")};
    case UseFault::PlanFileValueNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "this value cannot stand here"), QT_TRANSLATE_NOOP("Problem", "give %1")};
    case UseFault::PlanFileKeyMissing:
        return {QT_TRANSLATE_NOOP("Problem", "a key that must stand here is missing"),
                QT_TRANSLATE_NOOP("Problem", "give %1")};
    case UseFault::PlanFileKeyNotAllowed:
        return {QT_TRANSLATE_NOOP("Problem", "no such key can stand here"), QT_TRANSLATE_NOOP("Problem", "give %1")};
    case UseFault::PlanFileNotOfThisKind:
        return {QT_TRANSLATE_NOOP("Problem", "this is no such file"), QT_TRANSLATE_NOOP("Problem", "see its schema")};
    case UseFault::PlanFileCannotBeChecked:
        return {QT_TRANSLATE_NOOP("Problem", "this cannot be checked: %1"),
                QT_TRANSLATE_NOOP("Problem", "see its schema")};
    case UseFault::DaysTurnedRound:
        return {QT_TRANSLATE_NOOP("Problem", "the days end on %2, before they begin on %1"),
                QT_TRANSLATE_NOOP("Problem", "turn them round")};
    case UseFault::StationTwice:
        return {QT_TRANSLATE_NOOP("Problem", "the station '%1' stands here twice"),
                QT_TRANSLATE_NOOP("Problem", "give each a name of its own, or put its open weeks together")};
    case UseFault::NoStationOfThatName:
        return {QT_TRANSLATE_NOOP("Problem", "no station '%1' is in the file of stations"),
                QT_TRANSLATE_NOOP("Problem", "write its name as it stands there")};
    case UseFault::PinOfNoBalloon:
        return {QT_TRANSLATE_NOOP("Problem", "no balloon '%1' is planned for"),
                QT_TRANSLATE_NOOP("Problem", "name one that is in service, with items fitted to it")};
    case UseFault::PinOutsidePlan:
        return {QT_TRANSLATE_NOOP("Problem", "the plan's weeks begin on %1 and the last on %2; this is none of them"),
                QT_TRANSLATE_NOOP("Problem", "name a day within them, or leave the pin out")};
    case UseFault::PinWhereClosed:
        return {
            QT_TRANSLATE_NOOP("Problem", "there is no visit in the week of %1: it is closed, or kept free for flying"),
            QT_TRANSLATE_NOOP("Problem", "name another week or station, or open it in the file of stations")};
    case UseFault::PinTwice:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is pinned to two stations in the week of %2"),
                QT_TRANSLATE_NOOP("Problem", "keep one of the pins")};
    case UseFault::PinsTooMany:
        return {QT_TRANSLATE_NOOP("Problem",
                                  "more balloons are pinned to '%1' in the week of %2 than the %3 that it takes"),
                QT_TRANSLATE_NOOP("Problem", "move one of them")};
    case UseFault::NotARisk:
        return {QT_TRANSLATE_NOOP("Problem", "this is no chance to take"),
                QT_TRANSLATE_NOOP("Problem", "give one above 0 and below 1, as 0.05")};
    }
    return {};
}

}

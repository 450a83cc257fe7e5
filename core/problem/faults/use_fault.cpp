// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"

namespace crownring {

FaultRow rowOf(UseFault fault) {
    switch (fault) {
    case UseFault::NoWork:
        return {"no-work", Code::BadUse};
    case UseFault::EmptyKit:
        return {"empty-kit", Code::BadUse};
    case UseFault::ItemNotYetThere:
        return {"item-not-yet-there", Code::UnknownReference};
    case UseFault::NoItemOnThatDay:
        return {"no-item-on-that-day", Code::UnknownReference};
    case UseFault::BalloonNotYetThere:
        return {"balloon-not-yet-there", Code::UnknownReference};
    case UseFault::NoBalloon:
        return {"no-balloon", Code::UnknownReference};
    case UseFault::NoItem:
        return {"no-item", Code::UnknownReference};
    case UseFault::NoSubject:
        return {"no-subject", Code::UnknownReference};
    case UseFault::FlightTakenMeanwhile:
        return {"flight-taken-meanwhile", Code::AlreadyLogged};
    case UseFault::NoRecordNamed:
        return {"no-record-named", Code::BadUse};
    case UseFault::BoundNotOnce:
        return {"bound-not-once", Code::BadUse};
    case UseFault::NotAnAcknowledgement:
        return {"not-an-acknowledgement", Code::BadUse};
    case UseFault::NotUtf8:
        return {"not-utf8", Code::BadUse};
    case UseFault::SomethingToChoose:
        return {"something-to-choose", Code::BadUse};
    case UseFault::BadRows:
        return {"bad-rows", Code::BadUse};
    case UseFault::FileUnreadable:
        return {"file-unreadable", Code::FileUnreadable};
    case UseFault::NotAFile:
        return {"not-a-file", Code::FileUnreadable};
    case UseFault::NoPicture:
        return {"no-picture", Code::FileUnreadable};
    case UseFault::PictureNotKept:
        return {"picture-not-kept", Code::FileUnreadable};
    case UseFault::PictureTooLarge:
        return {"picture-too-large", Code::FileUnreadable};
    case UseFault::NotAWholeNumber:
        return {"not-a-whole-number", Code::BadQuantity};
    case UseFault::NotANumber:
        return {"not-a-number", Code::BadQuantity};
    case UseFault::OnlyTried:
        return {"only-tried", Code::BadUse};
    case UseFault::DaysNotAhead:
        return {"days-not-ahead", Code::BadUse};
    case UseFault::NotAPlan:
        return {"not-a-plan", Code::BadUse};
    case UseFault::NotAFlight:
        return {"not-a-flight", Code::BadUse};
    case UseFault::NotALetter:
        return {"not-a-letter", Code::BadJson};
    case UseFault::NoVisitPlanned:
        return {"no-visit-planned", Code::UnknownReference};
    case UseFault::TooLong:
        return {"too-long", Code::BadValue};
    case UseFault::PlanFileTooDeep:
        return {"plan-file-too-deep", Code::BadJson};
    case UseFault::PlanFileNotAnObject:
        return {"plan-file-not-an-object", Code::BadJson};
    case UseFault::PlanFileKeyTwice:
        return {"plan-file-key-twice", Code::BadJson};
    case UseFault::PlanFileValueNotAllowed:
        return {"plan-file-value-not-allowed", Code::BadValue};
    case UseFault::PlanFileKeyMissing:
        return {"plan-file-key-missing", Code::MissingKey};
    case UseFault::PlanFileKeyNotAllowed:
        return {"plan-file-key-not-allowed", Code::UnknownKey};
    case UseFault::PlanFileNotOfThisKind:
        return {"plan-file-not-of-this-kind", Code::BadValue};
    case UseFault::PlanFileCannotBeChecked:
        return {"plan-file-cannot-be-checked", Code::BadValue};
    case UseFault::DaysTurnedRound:
        return {"days-turned-round", Code::BadValue};
    case UseFault::StationTwice:
        return {"station-twice", Code::BadValue};
    case UseFault::NoStationOfThatName:
        return {"no-station-of-that-name", Code::UnknownReference};
    case UseFault::PinOfNoBalloon:
        return {"pin-of-no-balloon", Code::UnknownReference};
    case UseFault::PinOutsidePlan:
        return {"pin-outside-plan", Code::BadUse};
    case UseFault::PinWhereClosed:
        return {"pin-where-closed", Code::BadUse};
    case UseFault::PinTwice:
        return {"pin-twice", Code::BadUse};
    case UseFault::PinsTooMany:
        return {"pins-too-many", Code::BadUse};
    case UseFault::NotARisk:
        return {"not-a-risk", Code::BadUse};
    }
    return {};
}

}

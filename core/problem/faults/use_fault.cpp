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
    }
    return {};
}

}

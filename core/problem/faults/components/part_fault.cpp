// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/components/part_fault.h"

namespace crownring {

FaultRow rowOf(PartFault fault) {
    switch (fault) {
    case PartFault::CarriesItself:
        return {"carries-itself", Code::NotReleasable};
    case PartFault::KeptApart:
        return {"kept-apart", Code::NotReleasable};
    case PartFault::StillFitted:
        return {"still-fitted", Code::NotReleasable};
    case PartFault::Condemned:
        return {"condemned", Code::NotReleasable};
    case PartFault::NotReleased:
        return {"not-released", Code::NotReleasable};
    case PartFault::NotReleasedBy:
        return {"not-released-by", Code::NotReleasable};
    case PartFault::BackSince:
        return {"back-since", Code::NotReleasable};
    case PartFault::TakenBack:
        return {"taken-back", Code::NotReleasable};
    case PartFault::NoCylinder:
        return {"no-cylinder", Code::NotReleasable};
    case PartFault::FilledOut:
        return {"filled-out", Code::NotReleasable};
    case PartFault::FilledHot:
        return {"filled-hot", Code::NotReleasable};
    case PartFault::FilledGrounded:
        return {"filled-grounded", Code::NotReleasable};
    case PartFault::TestPast:
        return {"test-past", Code::NotReleasable};
    case PartFault::TestNotShown:
        return {"test-not-shown", Code::NotReleasable};
    case PartFault::NothingReturned:
        return {"nothing-returned", Code::MissingKey};
    case PartFault::NotAway:
        return {"not-away", Code::NotReleasable};
    case PartFault::TestedBeforeSent:
        return {"tested-before-sent", Code::BadValue};
    case PartFault::TestedAfterBack:
        return {"tested-after-back", Code::BadValue};
    case PartFault::NotFitted:
        return {"not-fitted", Code::NotReleasable};
    case PartFault::NamedTwice:
        return {"named-twice", Code::BadValue};
    case PartFault::ReplacesItself:
        return {"replaces-itself", Code::BadValue};
    case PartFault::FittedElsewhere:
        return {"fitted-elsewhere", Code::NotReleasable};
    case PartFault::OtherKind:
        return {"other-kind", Code::BadValue};
    case PartFault::StampAmbiguous:
        return {"stamp-ambiguous", Code::BadDate};
    case PartFault::StampOfOneMonth:
        return {"stamp-of-one-month", Code::BadDate};
    case PartFault::TagNotFound:
        return {"tag-not-found", Code::BadValue};
    case PartFault::TagOfAnother:
        return {"tag-of-another", Code::BadValue};
    case PartFault::TagsOfSeveral:
        return {"tags-of-several", Code::BadValue};
    case PartFault::TagOfUnknown:
        return {"tag-of-unknown", Code::UnknownReference};
    }
    return {};
}

}

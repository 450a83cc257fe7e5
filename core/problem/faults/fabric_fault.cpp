// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/fabric_fault.h"

namespace crownring {

FaultRow rowOf(FabricFault fault) {
    switch (fault) {
    case FabricFault::NoBoundOnOneSide:
        return {"no-bound-on-one-side", Code::BadValue};
    case FabricFault::AgeingOpen:
        return {"ageing-open", Code::BadValue};
    case FabricFault::NotToldApart:
        return {"not-told-apart", Code::BadValue};
    case FabricFault::FleetOpen:
        return {"fleet-open", Code::BadValue};
    case FabricFault::BelongsToNothing:
        return {"belongs-to-nothing", Code::BadValue};
    case FabricFault::ReadingOfNoSet:
        return {"reading-of-no-set", Code::BadValue};
    case FabricFault::NoReading:
        return {"no-reading", Code::BadValue};
    case FabricFault::NoCoupon:
        return {"no-coupon", Code::BadValue};
    case FabricFault::HoursUnknown:
        return {"hours-unknown", Code::MissingKey};
    case FabricFault::HoursUnknownOn:
        return {"hours-unknown-on", Code::MissingKey};
    case FabricFault::NoEnvelope:
        return {"no-envelope", Code::UnknownReference};
    case FabricFault::TypeUnknown:
        return {"type-unknown", Code::MissingKey};
    case FabricFault::NothingStated:
        return {"nothing-stated", Code::UnknownReference};
    case FabricFault::NoManualBoundsIt:
        return {"no-manual-bounds-it", Code::UnknownReference};
    case FabricFault::NoEnvelopeTested:
        return {"no-envelope-tested", Code::BadValue};
    case FabricFault::NoLimitToAskFor:
        return {"no-limit-to-ask-for", Code::BadUse};
    case FabricFault::AskForAnother:
        return {"ask-for-another", Code::BadUse};
    }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/reading_fault.h"

namespace crownring {

FaultRow rowOf(ReadingFault fault) {
    switch (fault) {
    case ReadingFault::NoQuantity:
        return {"no-quantity", Code::BadQuantity};
    case ReadingFault::NoUnit:
        return {"no-unit", Code::BadQuantity};
    case ReadingFault::OtherDimension:
        return {"other-dimension", Code::BadQuantity};
    case ReadingFault::NoPartOfIt:
        return {"no-part-of-it", Code::BadQuantity};
    case ReadingFault::NotAboveZero:
        return {"not-above-zero", Code::BadQuantity};
    case ReadingFault::HasNoDirection:
        return {"has-no-direction", Code::BadQuantity};
    case ReadingFault::NoDirection:
        return {"no-direction", Code::BadQuantity};
    case ReadingFault::NotANumber:
        return {"not-a-number", Code::BadQuantity};
    case ReadingFault::BelowAbsoluteZero:
        return {"below-absolute-zero", Code::BadQuantity};
    case ReadingFault::CannotBeNegative:
        return {"cannot-be-negative", Code::BadQuantity};
    case ReadingFault::CountedWhole:
        return {"counted-whole", Code::BadQuantity};
    case ReadingFault::NextStepNotAbove:
        return {"next-step-not-above", Code::BadQuantity};
    case ReadingFault::CannotBeHeld:
        return {"cannot-be-held", Code::BadQuantity};
    case ReadingFault::NotInSteps:
        return {"not-in-steps", Code::BadQuantity};
    case ReadingFault::DoNotCompare:
        return {"do-not-compare", Code::BadQuantity};
    case ReadingFault::PressureUnstated:
        return {"pressure-unstated", Code::BadQuantity};
    case ReadingFault::LimitNotANumber:
        return {"limit-not-a-number", Code::BadQuantity};
    case ReadingFault::LimitWithoutBound:
        return {"limit-without-bound", Code::BadQuantity};
    case ReadingFault::LimitTurnedRound:
        return {"limit-turned-round", Code::BadQuantity};
    case ReadingFault::LimitCannotBeHeld:
        return {"limit-cannot-be-held", Code::BadQuantity};
    case ReadingFault::HeldForNothing:
        return {"held-for-nothing", Code::BadQuantity};
    case ReadingFault::Unconfirmed:
        return {"unconfirmed", Code::BadQuantity};
    case ReadingFault::NoSuchGore:
        return {"no-such-gore", Code::BadQuantity};
    case ReadingFault::NoSuchRow:
        return {"no-such-row", Code::BadQuantity};
    case ReadingFault::RangeOfNothing:
        return {"range-of-nothing", Code::BadQuantity};
    case ReadingFault::RangeWithoutUnit:
        return {"range-without-unit", Code::BadQuantity};
    case ReadingFault::RangeTurnedRound:
        return {"range-turned-round", Code::BadQuantity};
    case ReadingFault::MeasuresOther:
        return {"measures-other", Code::BadQuantity};
    case ReadingFault::BeyondRange:
        return {"beyond-range", Code::BadQuantity};
    case ReadingFault::OutOfCalibration:
        return {"out-of-calibration", Code::BadQuantity};
    case ReadingFault::NoFraction:
        return {"no-fraction", Code::BadQuantity};
    case ReadingFault::ColderThanLiquid:
        return {"colder-than-liquid", Code::BadQuantity};
    case ReadingFault::HotterThanLiquid:
        return {"hotter-than-liquid", Code::BadQuantity};
    case ReadingFault::NoPlaceOfIt:
        return {"no-place-of-it", Code::BadQuantity};
    case ReadingFault::OtherItem:
        return {"other-item", Code::BadQuantity};
    }
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/reading_fault.h"
#include "words/fault_sources.h"

#include <QtGlobal>

namespace crownring::words {

Sources sourcesOf(ReadingFault fault) {
    switch (fault) {
    case ReadingFault::NoQuantity:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no quantity that the bench can read"),
                QT_TRANSLATE_NOOP("Problem",
                                  "name one of the list of quantities, such as grab-strength or air-permeability")};
    case ReadingFault::NoUnit:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no unit known here"),
                QT_TRANSLATE_NOOP("Problem", "write it in %2")};
    case ReadingFault::OtherDimension:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is a unit of %2, and '%3' is a reading of %4"),
                QT_TRANSLATE_NOOP("Problem", "write it in %5")};
    case ReadingFault::NoPartOfIt:
        return {QT_TRANSLATE_NOOP("Problem", "it is no part of a reading of '%1'"),
                QT_TRANSLATE_NOOP("Problem", "leave it out")};
    case ReadingFault::NotAboveZero:
        return {
            QT_TRANSLATE_NOOP("Problem", "%1 is not above zero"),
            QT_TRANSLATE_NOOP("Problem", "write what the test was done with, or leave it out where it is not known")};
    case ReadingFault::HasNoDirection:
        return {QT_TRANSLATE_NOOP("Problem", "a reading of '%1' has no direction"),
                QT_TRANSLATE_NOOP("Problem", "leave it out")};
    case ReadingFault::NoDirection:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is no direction of fabric"),
                QT_TRANSLATE_NOOP("Problem", "write warp or weft")};
    case ReadingFault::NotANumber:
        return {QT_TRANSLATE_NOOP("Problem", "it is not a number"),
                QT_TRANSLATE_NOOP("Problem", "write the figure that was read")};
    case ReadingFault::BelowAbsoluteZero:
        return {QT_TRANSLATE_NOOP("Problem", "it is below absolute zero"),
                QT_TRANSLATE_NOOP("Problem", "write the figure that was read")};
    case ReadingFault::CannotBeNegative:
        return {QT_TRANSLATE_NOOP("Problem", "%1 cannot be negative"),
                QT_TRANSLATE_NOOP("Problem", "write the figure that was read")};
    case ReadingFault::CountedWhole:
        return {QT_TRANSLATE_NOOP("Problem", "%1 are counted in whole numbers"),
                QT_TRANSLATE_NOOP("Problem", "write the figure that was read")};
    case ReadingFault::NextStepNotAbove:
        return {QT_TRANSLATE_NOOP("Problem", "the next step is not above the one that turned"),
                QT_TRANSLATE_NOOP("Problem", "write the next higher step that did not turn")};
    case ReadingFault::CannotBeHeld:
        return {QT_TRANSLATE_NOOP("Problem", "%1 cannot be held"),
                QT_TRANSLATE_NOOP("Problem", "write the figure as value")};
    case ReadingFault::NotInSteps:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is not read in steps"), QT_TRANSLATE_NOOP("Problem", "leave it out")};
    case ReadingFault::DoNotCompare:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is not comparable with %2"),
                QT_TRANSLATE_NOOP("Problem", "keep them apart: only units are converted, never how a test was done")};
    case ReadingFault::PressureUnstated:
        return {QT_TRANSLATE_NOOP("Problem", "the pressure of the two readings is not stated"),
                QT_TRANSLATE_NOOP("Problem", "correct the readings: state their pressure")};
    case ReadingFault::LimitNotANumber:
        return {QT_TRANSLATE_NOOP("Problem", "it is not a number"),
                QT_TRANSLATE_NOOP("Problem", "write the figure that the manual states")};
    case ReadingFault::LimitWithoutBound:
        return {QT_TRANSLATE_NOOP("Problem", "the limit has no bound"),
                QT_TRANSLATE_NOOP("Problem", "state least, most or proof")};
    case ReadingFault::LimitTurnedRound:
        return {QT_TRANSLATE_NOOP("Problem", "least is above most"),
                QT_TRANSLATE_NOOP("Problem", "look again at the manual")};
    case ReadingFault::LimitCannotBeHeld:
        return {QT_TRANSLATE_NOOP("Problem", "%1 cannot be held"), QT_TRANSLATE_NOOP("Problem", "state least or most")};
    case ReadingFault::HeldForNothing:
        return {QT_TRANSLATE_NOOP("Problem", "held for 0 s is not held"),
                QT_TRANSLATE_NOOP("Problem", "write for how many seconds it was held, or leave that away")};
    case ReadingFault::Unconfirmed:
        return {QT_TRANSLATE_NOOP("Problem", "%1"),
                QT_TRANSLATE_NOOP("Problem",
                                  "write the figure that was read; where somebody looked again and it is so, "
                                  "confirm it (confirmed)")};
    case ReadingFault::NoSuchGore:
        return {QT_TRANSLATE_NOOP("Problem", "gore %1: no envelope has more than %2, and its type is not described"),
                QT_TRANSLATE_NOOP("Problem", "write the gore that was read, or describe the type")};
    case ReadingFault::NoSuchRow:
        return {QT_TRANSLATE_NOOP("Problem", "row %1: no envelope has more than %2, and its type is not described"),
                QT_TRANSLATE_NOOP("Problem", "write the row that was read, or describe the type")};
    case ReadingFault::RangeOfNothing:
        return {QT_TRANSLATE_NOOP("Problem", "a range is stated, and not of what"),
                QT_TRANSLATE_NOOP("Problem", "say what the instrument measures")};
    case ReadingFault::RangeWithoutUnit:
        return {QT_TRANSLATE_NOOP("Problem", "a range is stated without its unit"),
                QT_TRANSLATE_NOOP("Problem", "write the unit of the scale")};
    case ReadingFault::RangeTurnedRound:
        return {QT_TRANSLATE_NOOP("Problem", "the range does not end above where it begins"),
                QT_TRANSLATE_NOOP("Problem", "write the least figure first")};
    case ReadingFault::MeasuresOther:
        return {QT_TRANSLATE_NOOP("Problem", "%1: %2 measures %3"),
                QT_TRANSLATE_NOOP("Problem", "name the instrument with which it was read")};
    case ReadingFault::BeyondRange:
        return {QT_TRANSLATE_NOOP("Problem", "%1 lies beyond the range for which %2 is calibrated"),
                QT_TRANSLATE_NOOP("Problem", "correct the figure, or name the instrument with which it was read")};
    case ReadingFault::OutOfCalibration:
        return {QT_TRANSLATE_NOOP("Problem", "%1: %2 is not in calibration on %3"),
                QT_TRANSLATE_NOOP("Problem", "take it with one that is, or enter the calibration that proves it")};
    case ReadingFault::NoFraction:
        return {QT_TRANSLATE_NOOP("Problem", "%1 is no fraction of the liquid"),
                QT_TRANSLATE_NOOP("Problem", "write the mole fraction of butane, from 0 to 1: 30 % are 0.3")};
    case ReadingFault::ColderThanLiquid:
        return {QT_TRANSLATE_NOOP("Problem", "at %1 it is no liquid: below %2 it is frozen"),
                QT_TRANSLATE_NOOP("Problem", "write the temperature of the liquid in degrees Celsius")};
    case ReadingFault::HotterThanLiquid:
        return {QT_TRANSLATE_NOOP("Problem", "at %1 it is no liquid: above %2 there is none, and no such pressure"),
                QT_TRANSLATE_NOOP("Problem", "write the temperature of the liquid in degrees Celsius")};
    case ReadingFault::NoPlaceOfIt:
        return {QT_TRANSLATE_NOOP("Problem", "a reading of '%1' has no place on a basket"),
                QT_TRANSLATE_NOOP("Problem", "leave the place out")};
    case ReadingFault::OtherItem:
        return {QT_TRANSLATE_NOOP("Problem", "'%1' is not read of this kind of item: %2"),
                QT_TRANSLATE_NOOP("Problem", "name the item that was read; it is read of: %3")};
    }
    return {};
}

}

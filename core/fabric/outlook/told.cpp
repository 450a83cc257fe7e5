// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/told.h"

#include <algorithm>

namespace crownring {

namespace {

ToldBand whole(const Band& band) { return {band.low, band.middle, band.high}; }

LifeEnd endOf(const SetOutlook& outlook) {
    if (!outlook.life.life)
        return LifeEnd::Over;
    if (outlook.grounds.ground != Ground::Enough)
        return LifeEnd::NotKnown;
    return outlook.grounds.isOpenEnded ? LifeEnd::OutOfSight : LifeEnd::InSight;
}

ToldBand lifeOf(const SetOutlook& outlook, LifeEnd end) {
    switch (end) {
    case LifeEnd::Over:
        break;
    case LifeEnd::NotKnown:
    case LifeEnd::OutOfSight:
        return {outlook.life.life->low, {}, {}};
    case LifeEnd::InSight:
        return whole(*outlook.life.life);
    }
    return {};
}

ToldBand worseEnd(const Band& band, bool rises) {
    return rises ? ToldBand{{}, {}, band.high} : ToldBand{band.low, {}, {}};
}

double hoursLeft(const SetOutlook& outlook) {
    return outlook.life.life ? outlook.life.life->low - outlook.use.hours : 0;
}

}

ToldOutlook toldOf(const SetOutlook& outlook, bool rises) {
    ToldOutlook told;
    told.use = outlook.use;
    told.grounds = outlook.grounds;
    told.byReadings = outlook.grounds.ground == Ground::Enough;
    told.end = endOf(outlook);
    told.life = lifeOf(outlook, told.end);
    told.strength = told.byReadings ? whole(outlook.strength) : worseEnd(outlook.strength, rises);
    if (told.byReadings) {
        told.failsNext = outlook.failsNext;
        told.belowByNext = outlook.belowByNext;
        told.reachedAlready = outlook.life.reachedAlready;
    }
    return told;
}

std::size_t weakestOf(std::span<const SetOutlook> sets) {
    return static_cast<std::size_t>(std::ranges::min_element(sets, {}, hoursLeft) - sets.begin());
}

}

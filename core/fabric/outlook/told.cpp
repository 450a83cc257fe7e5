// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/told.h"

#include <algorithm>

namespace crownring {

namespace {

template <class At>
ToldBand<At> whole(const Band& band) {
    return {At(band.low), At(band.middle), At(band.high)};
}

LifeEnd endOf(const SetOutlook& outlook) {
    if (!outlook.life.life)
        return LifeEnd::Over;
    if (outlook.grounds.ground != Ground::Enough)
        return LifeEnd::NotKnown;
    return outlook.grounds.isOpenEnded ? LifeEnd::OutOfSight : LifeEnd::InSight;
}

ToldBand<Hours> lifeOf(const SetOutlook& outlook, LifeEnd end) {
    switch (end) {
    case LifeEnd::Over:
        break;
    case LifeEnd::NotKnown:
    case LifeEnd::OutOfSight:
        return {Hours(outlook.life.life->low), {}, {}};
    case LifeEnd::InSight:
        return whole<Hours>(*outlook.life.life);
    }
    return {};
}

ToldBand<double> worseEnd(const Band& band, bool rises) {
    return rises ? ToldBand<double>{{}, {}, band.high} : ToldBand<double>{band.low, {}, {}};
}

double hoursLeft(const SetOutlook& outlook) {
    return outlook.life.life ? outlook.life.life->low - outlook.use.hours : 0;
}

}

ToldOutlook toldOf(const SetOutlook& outlook, bool rises) {
    ToldOutlook told;
    told.flown = Hours(outlook.use.hours);
    told.dose = Hours(outlook.use.dose);
    told.grounds = outlook.grounds;
    told.byReadings = outlook.grounds.ground == Ground::Enough;
    told.end = endOf(outlook);
    told.life = lifeOf(outlook, told.end);
    told.strength = told.byReadings ? whole<double>(outlook.strength) : worseEnd(outlook.strength, rises);
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

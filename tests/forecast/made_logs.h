// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Made-up fleets and what they flew, day by day, to hold forecasts against. They are not drawn by the law that the
/// forecast assumes: days have weather that lasts, people fly on days that they like, take weeks off, go to festivals.
/// All figures are our own choice; no record of real flights was used.

#include "fabric/numeric/draws.h"
#include "registry/use_log.h"

#include <string>
#include <vector>

namespace crownring::made {

enum class Character {
    Private,    ///< weekends, March to October, some weeks off, a festival a year
    Commercial, ///< every day that the weather allows, once or twice; little in winter
    Seasonal,   ///< May to September and never else
    New,        ///< two to eleven months old, in a fleet that has flown for years
    Changed,    ///< flies a third to three times as much since the middle of its log
};
inline constexpr std::array allCharacters{Character::Private, Character::Commercial, Character::Seasonal,
                                          Character::New, Character::Changed};
[[nodiscard]] std::string nameOf(Character character);

struct MadeBalloon {
    UseLog known;
    UseLog hidden;        ///< the year after
    bool isAsked = false; ///< else it is only one of the fleet
};

/// What of a log is known, up to a day, and what is hidden.
[[nodiscard]] MadeBalloon cutAt(const UseLog& log, CivilDate known);

/// Twelve balloons that are asked for, after three to six years; the last known day is any day of a year.
[[nodiscard]] std::vector<MadeBalloon> madeFleet(Character character, std::uint64_t seed);

}

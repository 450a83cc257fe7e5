// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a balloon burns, by its flight log. That it burns more than it did is a proposal to report it
/// ("increased-fuel-use") and nothing follows from it by itself.

#include "parts/fuel_use.h"
#include "registry/books.h"

#include <optional>
#include <variant>

namespace crownring {

struct FuelTold {
    enum class Unit { Kilograms, Litres };
    Unit unit = Unit::Kilograms;   ///< in which the latest flight that says it does
    std::size_t flights = 0;       ///< that say what they burnt in that unit, of two years
    std::optional<FuelRise> rise;  ///< of the latest three
    std::optional<NoFuelRise> why; ///< nothing can be said
    std::optional<Stamp> since;    ///< the first of the latest three
    bool isReported = false;       ///< raised fuel use was reported since then

    /// It is raised and nobody reported it.
    [[nodiscard]] bool isProposed() const { return rise && rise->isRaised() && !isReported; }
};

/// Of free flights that were logged for the balloon; a tethered one burns otherwise. Empty where no flight says it.
[[nodiscard]] Result<std::optional<FuelTold>> fuelTold(Books& books, const Registration& balloon, CivilDate on);

}

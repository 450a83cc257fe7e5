// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What an item has been through: minutes, landings and inflations, known (`Usage`) or partly unknown (`Figures`).

#include "measure/count.h"

#include <optional>

namespace crownring {

/// A known amount of use, e.g. that of one flight or of all flights between two moments.
struct Usage {
    Minutes minutes;
    Landings landings;
    Inflations inflations;

    constexpr Usage& operator+=(const Usage& other) {
        minutes += other.minutes;
        landings += other.landings;
        inflations += other.inflations;
        return *this;
    }
    friend constexpr Usage operator+(Usage a, const Usage& b) { return a += b; }
    friend constexpr Usage operator-(const Usage& a, const Usage& b) {
        return {a.minutes - b.minutes, a.landings - b.landings, a.inflations - b.inflations};
    }
    bool operator==(const Usage&) const = default;
};

/// The figures of a clock, each known or not. What "not known" means is said where one is used: not stated on a paper,
/// or unknown at the time when an item was entered.
struct Figures {
    std::optional<Minutes> minutes;
    std::optional<Landings> landings;
    std::optional<Inflations> inflations;

    bool operator==(const Figures&) const = default;
};

/// Figures of an item that is new: all known, all zero.
inline constexpr Figures newFigures{Minutes{0}, Landings{0}, Inflations{0}};

/// Adds use to what is known; what is unknown stays unknown.
[[nodiscard]] constexpr Figures operator+(Figures figures, const Usage& usage) {
    if (figures.minutes)
        *figures.minutes += usage.minutes;
    if (figures.landings)
        *figures.landings += usage.landings;
    if (figures.inflations)
        *figures.inflations += usage.inflations;
    return figures;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a balloon's recorder was doing: standing, flying, or being driven to the field and home again.
///
/// Time in service runs "from the moment an aircraft leaves the surface of the earth until it touches it at the next
/// point of landing" (14 CFR 1.1). A balloon has no airspeed: standing inflated and hanging level in calm air look
/// alike for a while, and a car moves faster than most winds. So no single threshold decides. Each step of the motion
/// is more or less likely for each phase, a change of phase is unlikely, and the likeliest course of phases as a whole
/// is taken (Viterbi's algorithm over three states, flying and driving each only next to standing).
///
/// What tells the phases apart (all figures: common practice, no source; tried on made tracks):
///   - standing: neither moves nor climbs, 0.3 m/s being what noise is;
///   - flying: moves with the wind, mostly below 10 m/s, climbs and sinks by 1 m/s and more, and hardly changes its
///     velocity within a minute (it is carried; there is nothing to brake or steer with);
///   - driving: up to motorway speed, stops, brakes and turns, climbs only as roads do (about 3 in 100).

#include "exchange/track/motion.h"

#include <vector>

namespace crownring {

enum class Phase { Standing, Flying, Driving };

/// One phase for each step.
[[nodiscard]] std::vector<Phase> phasesOf(const std::vector<Motion>& motion);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/track_phases.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>

namespace crownring {

namespace {

constexpr std::size_t phaseCount = 3;
using Likelihoods = std::array<double, phaseCount>; // logarithms, by Phase

/// What is looked at in one step.
struct Look {
    double speed = 0;         ///< over the ground, m/s
    double climb = 0;         ///< mean over a minute, m/s
    double change = 0;        ///< of the horizontal velocity from half a minute before to half a minute after, m/s
    bool aboveGround = false; ///< the track was well below at nearly the same spot
};

/// Within a quarter of an hour the recorder was 12 m lower not 50 m from here: no ground is as steep.
bool aboveGround(const std::vector<Motion>& motion, std::size_t at) {
    constexpr std::size_t reach = 900 / motionStep;
    constexpr double near = 50;
    constexpr double below = 12;
    const auto& here = motion[at];
    const auto first = at < reach ? 0 : at - reach;
    const auto last = std::min(at + reach, motion.size() - 1);
    for (auto step = first; step <= last; ++step)
        if (motion[step].altitude < here.altitude - below &&
            std::hypot(motion[step].east - here.east, motion[step].north - here.north) < near)
            return true;
    return false;
}

Look lookAt(const std::vector<Motion>& motion, std::size_t at) {
    constexpr std::size_t reach = 30 / motionStep;
    const auto& before = motion[at < reach ? 0 : at - reach];
    const auto& after = motion[std::min(at + reach, motion.size() - 1)];
    const auto& now = motion[at];
    const auto seconds = static_cast<double>(std::max<std::int64_t>(after.second - before.second, motionStep));
    return {std::hypot(now.eastward, now.northward), (after.altitude - before.altitude) / seconds,
            std::hypot(after.eastward - before.eastward, after.northward - before.northward), aboveGround(motion, at)};
}

/// Densities of a speed in the plane: Gaussian, and one with an exponential tail.
double gaussianInPlane(double speed, double spread) {
    return std::exp(-speed * speed / (2 * spread * spread)) / (2 * std::numbers::pi * spread * spread);
}
double exponentialInPlane(double speed, double spread) {
    return std::exp(-speed / spread) / (2 * std::numbers::pi * spread * spread);
}
double gaussian(double value, double spread) {
    return std::exp(-value * value / (2 * spread * spread)) / (spread * std::sqrt(2 * std::numbers::pi));
}
double exponential(double value, double spread) { return std::exp(-std::abs(value) / spread) / (2 * spread); }

/// Bounded, so that one wild step does not decide.
double logarithm(double density) { return std::log(density + 1e-6); }

Likelihoods likelihoods(const Look& look) {
    const double noGround = look.aboveGround ? logarithm(0) : 0;
    const double standing = logarithm(gaussianInPlane(look.speed, 0.3)) + logarithm(gaussian(look.climb, 0.12)) +
                            logarithm(exponentialInPlane(look.change, 0.3)) + noGround;
    const double flying = logarithm(0.2 * gaussianInPlane(look.speed, 0.7) + 0.6 * gaussianInPlane(look.speed, 5) +
                                    0.2 * gaussianInPlane(look.speed, 12)) +
                          logarithm(exponential(look.climb, 0.9)) + logarithm(exponentialInPlane(look.change, 0.8));
    const double driving = logarithm(0.2 * gaussianInPlane(look.speed, 0.3) + 0.8 * gaussianInPlane(look.speed, 15)) +
                           logarithm(gaussian(look.climb, std::hypot(0.15, 0.03 * look.speed))) +
                           logarithm(gaussianInPlane(look.change, 7)) + noGround;
    return {standing, flying, driving};
}

/// Steps ten seconds apart are no independent witnesses.
constexpr double witness = 0.3;
constexpr double changeCost = 4;
constexpr Likelihoods atFirst = {0, -2, -2};

constexpr std::size_t standing = static_cast<std::size_t>(Phase::Standing);

}

std::vector<Phase> phasesOf(const std::vector<Motion>& motion) {
    std::vector<std::array<std::uint8_t, phaseCount>> cameFrom(motion.size());
    auto best = atFirst;
    for (std::size_t step = 0; step < motion.size(); ++step) {
        auto next = best;
        for (std::size_t phase = 0; phase < phaseCount; ++phase) {
            cameFrom[step][phase] = static_cast<std::uint8_t>(phase);
            for (std::size_t from = 0; from < phaseCount; ++from)
                if (step > 0 && (from == standing || phase == standing) && best[from] - changeCost > next[phase]) {
                    next[phase] = best[from] - changeCost;
                    cameFrom[step][phase] = static_cast<std::uint8_t>(from);
                }
        }
        best = next;
        if (!motion[step].known)
            continue;
        const auto seen = likelihoods(lookAt(motion, step));
        for (std::size_t phase = 0; phase < phaseCount; ++phase)
            best[phase] += witness * seen[phase];
    }
    std::vector<Phase> phases(motion.size());
    auto phase = static_cast<std::size_t>(std::max_element(best.begin(), best.end()) - best.begin());
    for (auto step = motion.size(); step-- > 0;) {
        phases[step] = static_cast<Phase>(phase);
        phase = cameFrom[step][phase];
    }
    return phases;
}

}

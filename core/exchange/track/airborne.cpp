// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/airborne.h"

#include "exchange/track/track_phases.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>

namespace crownring {

namespace {

constexpr double clearlyUp = 15;          // m
constexpr double fasterThanWalking = 2.5; // m/s

/// Steps first to last, both inclusive, of one phase.
struct Run {
    Phase phase = Phase::Standing;
    std::size_t first = 0;
    std::size_t last = 0;
};

using Course = std::vector<Run>;

Course runsOf(const std::vector<Phase>& phases) {
    Course runs;
    for (std::size_t step = 0; step < phases.size(); ++step) {
        if (runs.empty() || runs.back().phase != phases[step])
            runs.push_back({phases[step], step, step});
        runs.back().last = step;
    }
    return runs;
}

class Track {
public:
    explicit Track(const std::vector<Motion>& motion) : m_motion(motion) {}

    [[nodiscard]] double highest(std::size_t first, std::size_t last) const {
        double high = m_motion[first].altitude;
        for (auto step = first; step <= last; ++step)
            high = std::max(high, m_motion[step].altitude);
        return high;
    }
    /// The altitude below which the lowest fifth of a run lies.
    [[nodiscard]] double ground(const Run& run) const {
        std::vector<double> altitudes;
        for (auto step = run.first; step <= run.last; ++step)
            altitudes.push_back(m_motion[step].altitude);
        const auto fifth = altitudes.begin() + static_cast<std::ptrdiff_t>(altitudes.size() / 5);
        std::nth_element(altitudes.begin(), fifth, altitudes.end());
        return *fifth;
    }
    /// The middle half of a run stays where it is; air that carries a balloon by less is hardly ever met.
    [[nodiscard]] bool atRest(const Run& run) const {
        constexpr double slowest = 0.2; // m/s
        const auto quarter = (run.last - run.first) / 4;
        const auto& from = m_motion[run.first + quarter];
        const auto& to = m_motion[run.last - quarter];
        const auto seconds = static_cast<double>(to.second - from.second);
        return std::hypot(to.east - from.east, to.north - from.north) <= slowest * seconds;
    }
    [[nodiscard]] double altitude(std::size_t step) const { return m_motion[step].altitude; }
    [[nodiscard]] bool fast(std::size_t step) const {
        return std::hypot(m_motion[step].eastward, m_motion[step].northward) > fasterThanWalking;
    }
    [[nodiscard]] std::int64_t second(std::size_t step) const { return m_motion[step].second; }
    [[nodiscard]] std::size_t size() const { return m_motion.size(); }

private:
    const std::vector<Motion>& m_motion;
};

/// At rest for a minute, below what was flown in the minute and a half before and after.
bool isLanding(const Track& track, const Run& standing) {
    constexpr std::size_t reach = 90 / motionStep;
    constexpr std::size_t shortest = 60 / motionStep;
    constexpr double below = 6;
    const double ground = track.ground(standing);
    const auto before = standing.first < reach ? 0 : standing.first - reach;
    const auto after = std::min(standing.last + reach, track.size() - 1);
    return standing.last - standing.first >= shortest && track.atRest(standing) &&
           track.highest(before, standing.first) > ground + below &&
           track.highest(standing.last, after) > ground + below;
}

/// Hangs level in the air become part of the flight around them.
Course withoutHovers(const Track& track, const Course& course) {
    Course result;
    for (std::size_t i = 0; i < course.size(); ++i) {
        const bool between = i > 0 && i + 1 < course.size() && course[i].phase == Phase::Standing &&
                             course[i - 1].phase == Phase::Flying && course[i + 1].phase == Phase::Flying;
        const bool hover = between && !isLanding(track, course[i]);
        const auto phase = hover ? Phase::Flying : course[i].phase;
        if (!result.empty() && result.back().phase == phase)
            result.back().last = course[i].last;
        else
            result.push_back({phase, course[i].first, course[i].last});
    }
    return result;
}

std::size_t takeOffStep(const Track& track, const Run& standing, const Run& flying, double nearGround) {
    const double ground = track.ground(standing);
    auto up = standing.first;
    for (auto step = flying.last; step > standing.first; --step)
        if (track.altitude(step) > ground + clearlyUp)
            up = step;
    for (auto step = standing.first; step < up; ++step)
        if (track.fast(step))
            up = step;
    while (up > standing.first && track.altitude(up) > ground + nearGround)
        --up;
    return up;
}

std::size_t landingStep(const Track& track, const Run& flying, const Run& standing, double nearGround) {
    const double ground = track.ground(standing);
    auto down = standing.last;
    for (auto step = flying.first; step < standing.last; ++step)
        if (track.altitude(step) > ground + clearlyUp || track.fast(step))
            down = step;
    while (down < standing.last && track.altitude(down) > ground + nearGround)
        ++down;
    return down;
}

/// Seconds for the rest of the way to the ground, from a step near it, at the speed of the half minute on its far side.
std::int64_t restOfWay(const Track& track, std::size_t near, std::size_t far, double ground) {
    constexpr double slowest = 0.1; // m/s
    constexpr double longest = 30;
    const double seconds = std::abs(static_cast<double>(track.second(far) - track.second(near)));
    const double height = track.altitude(near) - ground;
    if (seconds == 0 || height <= 0)
        return 0;
    const double speed = std::max((track.altitude(far) - track.altitude(near)) / seconds, slowest);
    return std::llround(std::min(height / speed, longest));
}

/// The span of the flying run `at` of the course; nothing when it never rises above its ends.
std::optional<AirborneSpan> spanOf(const Track& track, const Course& course, std::size_t at, double nearGround) {
    const auto& flying = course[at];
    const bool beganAloft = at == 0;
    const bool endedAloft = at + 1 == course.size();
    const auto first = beganAloft ? flying.first : takeOffStep(track, course[at - 1], flying, nearGround);
    const auto last = endedAloft ? flying.last : landingStep(track, flying, course[at + 1], nearGround);
    if (first >= last)
        return std::nullopt;
    double ends = -1e9;
    if (!beganAloft)
        ends = track.altitude(first);
    if (!endedAloft)
        ends = std::max(ends, track.altitude(last));
    if (beganAloft && endedAloft)
        ends = track.ground(flying);
    if (track.highest(first, last) < ends + clearlyUp)
        return std::nullopt;
    AirborneSpan span{track.second(first), track.second(last), beganAloft, endedAloft, false};
    constexpr std::size_t halfMinute = 30 / motionStep;
    if (!beganAloft && first > course[at - 1].first)
        span.takeOff -= restOfWay(track, first, std::min(first + halfMinute, last), track.ground(course[at - 1]));
    if (!endedAloft && last < course[at + 1].last)
        span.landing +=
            restOfWay(track, last, std::max(last - std::min(last, halfMinute), first), track.ground(course[at + 1]));
    return span;
}

}

std::vector<AirborneSpan> airborneSpans(const std::vector<Motion>& motion, double nearGround) {
    const Track track(motion);
    const auto course = withoutHovers(track, runsOf(phasesOf(motion)));
    std::vector<AirborneSpan> spans;
    for (std::size_t i = 0; i < course.size(); ++i) {
        if (course[i].phase == Phase::Driving && !spans.empty())
            spans.back().drivenAfter = true;
        if (course[i].phase != Phase::Flying)
            continue;
        if (const auto span = spanOf(track, course, i, nearGround))
            spans.push_back(*span);
    }
    return spans;
}

}

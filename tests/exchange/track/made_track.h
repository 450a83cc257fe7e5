// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tracks made for tests: what a recorder in a basket, and in the car before and after, would write. The true take-offs
/// and landings are known. Places are in open ocean, people and recorders invented.

#include <cstdint>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace crownring {

struct MadeNoise {
    double position = 3;  ///< metres, one sigma, each fix anew
    double altitude = 1;  ///< metres, likewise
    double wander = 0;    ///< metres, one sigma, of a slow wandering of the altitude over two minutes
    bool pressure = true; ///< there is a pressure sensor
    int step = 5;         ///< seconds between fixes
    std::uint32_t seed = 1;
};

/// Height above the ground of the take-off in metres at minutes aloft.
using Profile = std::vector<std::pair<double, double>>;

class MadeTrack {
public:
    explicit MadeTrack(std::int64_t startSecondOfDay, std::uint32_t seed) : m_start(startSecondOfDay), m_random(seed) {}

    void stand(double minutes);
    /// Aloft after the profile, landing at its last height. @param wind m/s at the ground; half as much again at 300 m
    void fly(const Profile& profile, double wind);
    /// By road: stops at junctions, turns, hills of so many metres in 2 km; ends at the altitude where it began.
    void drive(double minutes, double fastest, double hills);
    void walk(double minutes);
    /// Up a straight motorway without a stop.
    void motorway(double minutes, double speed, double hills);
    /// Nothing is recorded between these, counted from now.
    void silence(double fromMinutes, double toMinutes);

    [[nodiscard]] const std::vector<std::int64_t>& takeOffs() const { return m_takeOffs; } ///< seconds of the first day
    [[nodiscard]] const std::vector<std::int64_t>& landings() const { return m_landings; }

    /// The whole file; `extra` lines stand behind the header.
    [[nodiscard]] std::string igc(const MadeNoise& noise, const std::string& date = "010725",
                                  const std::string& extra = {}) const;
    /// Only what lies between two seconds of the first day.
    void cut(std::int64_t from, std::int64_t to);

private:
    struct Place {
        std::int64_t second = 0;
        double east = 0;
        double north = 0;
        double altitude = 0;
    };
    void go(double east, double north, double altitude);
    double chance() { return std::uniform_real_distribution<>(0, 1)(m_random); }

    std::int64_t m_start;
    std::mt19937 m_random;
    std::vector<Place> m_places; ///< one a second
    Place m_now{0, 0, 0, 412};
    std::vector<std::pair<std::int64_t, std::int64_t>> m_silences;
    std::vector<std::int64_t> m_takeOffs;
    std::vector<std::int64_t> m_landings;
};

}

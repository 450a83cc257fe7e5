// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/made_track.h"

#include "civil/padded.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace crownring {

namespace {

constexpr double metresPerDegree = 111'195;
constexpr double latitude = 46.4;
constexpr double longitude = -12.5;

double heightAt(const Profile& profile, double minute) {
    for (std::size_t i = 1; i < profile.size(); ++i)
        if (minute <= profile[i].first) {
            const double share = (minute - profile[i - 1].first) / (profile[i].first - profile[i - 1].first);
            const double smooth = (1 - std::cos(std::numbers::pi * share)) / 2;
            return profile[i - 1].second + (profile[i].second - profile[i - 1].second) * smooth;
        }
    return profile.back().second;
}

/// DDMMmmm or DDDMMmmm with its letter.
std::string angle(double degrees, std::size_t width, const char* letters) {
    const auto thousandths = static_cast<int>(std::lround(std::abs(degrees) * 60'000));
    return padded(thousandths / 60'000, width) + padded(thousandths % 60'000, 5) + letters[degrees < 0 ? 1 : 0];
}

std::string altitude(double metres) {
    const auto whole = static_cast<int>(std::lround(metres));
    return whole < 0 ? "-" + padded(-whole, 4) : padded(whole, 5);
}

std::string clock(std::int64_t second) {
    const auto ofDay = static_cast<int>(second % 86'400);
    return padded(ofDay / 3600, 2) + padded(ofDay / 60 % 60, 2) + padded(ofDay % 60, 2);
}

}

void MadeTrack::go(double east, double north, double altitude) {
    m_now.second += 1;
    m_now.east += east;
    m_now.north += north;
    m_now.altitude = altitude;
    auto place = m_now;
    place.second += m_start;
    m_places.push_back(place);
}

void MadeTrack::stand(double minutes) {
    for (int i = 0; i < minutes * 60; ++i)
        go(0, 0, m_now.altitude);
}

void MadeTrack::walk(double minutes) {
    const double heading = chance() * 6;
    for (int i = 0; i < minutes * 60; ++i)
        go(1.3 * std::cos(heading), 1.3 * std::sin(heading), m_now.altitude);
}

void MadeTrack::fly(const Profile& profile, double wind) {
    m_takeOffs.push_back(m_start + m_now.second);
    const double ground = m_now.altitude;
    const double heading = chance() * 6;
    const double seconds = profile.back().first * 60;
    for (int i = 1; i <= seconds; ++i) {
        const double height = heightAt(profile, i / 60.0);
        const double gathered =
            std::min({1.0, i / 20.0, (seconds - i) / 5.0}); // carried off, and stopped by the ground
        const double speed = wind * (1 + std::clamp(height, 0.0, 600.0) / 600) * gathered;
        const double turned = heading + std::min(height, 600.0) / 600 * 0.6;
        go(speed * std::cos(turned), speed * std::sin(turned), ground + height);
    }
    m_landings.push_back(m_start + m_now.second);
}

void MadeTrack::drive(double minutes, double fastest, double hills) {
    const double base = m_now.altitude;
    const double total = minutes * 60;
    double heading = chance() * 6;
    double speed = 0;
    double aim = fastest;
    double along = 0;
    int until = 40;
    for (int i = 0; i < total; ++i) {
        if (i >= until) { // a junction: stop, or slow down and turn
            aim = aim == 0 ? fastest * (0.4 + 0.6 * chance()) : chance() < 0.4 ? 0 : 4 + chance() * 4;
            heading += aim > 0 && speed < 9 ? (chance() - 0.5) * 3 : 0;
            until = i + (aim == 0  ? 15 + static_cast<int>(chance() * 20)
                         : aim < 9 ? 8
                                   : 30 + static_cast<int>(chance() * 60));
            if (aim > 0 && aim < 9 && chance() < 0.6)
                aim = fastest * (0.4 + 0.6 * chance());
        }
        heading += speed > 3 ? 0.02 * std::sin(along / 150) : 0;
        if (total - i < 15)
            aim = 0;
        speed += std::clamp(aim - speed, -2.5, 1.5);
        along += speed;
        const double level = base + hills * (1 - std::cos(along * std::numbers::pi / 1000)) / 2;
        go(speed * std::cos(heading), speed * std::sin(heading), level);
    }
}

void MadeTrack::motorway(double minutes, double speed, double hills) {
    const double base = m_now.altitude;
    const double total = minutes * 60;
    double along = 0;
    for (int i = 0; i < total; ++i) {
        const double now = speed * std::min({1.0, i / 20.0, (total - i) / 15.0});
        along += now;
        go(now, 0, base + hills * (1 - std::cos(along * std::numbers::pi / 2000)) / 2);
    }
}

void MadeTrack::silence(double fromMinutes, double toMinutes) {
    const auto at = [&](double minutes) { return m_start + m_now.second + static_cast<std::int64_t>(minutes * 60); };
    m_silences.emplace_back(at(fromMinutes), at(toMinutes));
}

void MadeTrack::cut(std::int64_t from, std::int64_t to) {
    std::erase_if(m_places, [&](const Place& place) { return place.second < from || place.second > to; });
}

std::string MadeTrack::igc(const MadeNoise& noise, const std::string& date, const std::string& extra) const {
    std::mt19937 random(noise.seed);
    std::normal_distribution<> normal;
    std::string text = "AXCRMAD made for a test\r\nHFDTE" + date +
                       "\r\nHFPLTPILOTINCHARGE:pilot 22\r\nHFGIDGLIDERID:QE-HFC\r\n" + extra;
    double wander = 0;
    for (const auto& place : m_places) {
        const double keep = std::exp(-1 / 120.0);
        wander = keep * wander + noise.wander * std::sqrt(1 - keep * keep) * normal(random);
        const bool silent = std::any_of(m_silences.begin(), m_silences.end(), [&](const auto& silence) {
            return place.second >= silence.first && place.second < silence.second;
        });
        if (place.second % noise.step != 0 || silent)
            continue;
        const double north = latitude + (place.north + noise.position * normal(random)) / metresPerDegree;
        const double across = metresPerDegree * std::cos(latitude * std::numbers::pi / 180);
        const double east = longitude + (place.east + noise.position * normal(random)) / across;
        const double level = place.altitude + noise.altitude * normal(random) + wander;
        text += "B" + clock(place.second) + angle(north, 2, "NS") + angle(east, 3, "EW") + "A" +
                altitude(noise.pressure ? level - 47 : 0) + altitude(level) + "\r\n";
    }
    return text;
}

}

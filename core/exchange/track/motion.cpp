// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/track/motion.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>

namespace crownring {

namespace {

constexpr double earthRadius = 6'371'000;
constexpr double radians = std::numbers::pi / 180;
constexpr std::int64_t longestPause = 300;

struct Point {
    double second = 0; ///< since the first fix of the piece
    double east = 0;
    double north = 0;
    double altitude = 0;
};

double turned(double degrees) { return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees; }

/// On a plane around `origin`.
Point onPlane(const Fix& fix, const Fix& origin) {
    const double across = std::cos(origin.latitude * radians);
    return {static_cast<double>(fix.second - origin.second),
            turned(fix.longitude - origin.longitude) * radians * earthRadius * across,
            (fix.latitude - origin.latitude) * radians * earthRadius, fix.altitude};
}

double medianAround(std::span<const Point> points, std::size_t at, double Point::*what) {
    constexpr std::size_t reach = 2;
    std::array<double, 2 * reach + 1> values{};
    const auto from = std::min(at < reach ? 0 : at - reach, points.size() - std::min(points.size(), values.size()));
    const auto count = std::min(values.size(), points.size());
    for (std::size_t i = 0; i < count; ++i)
        values[i] = points[from + i].*what;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(values.begin(), middle, values.begin() + static_cast<std::ptrdiff_t>(count));
    return *middle;
}

std::vector<Point> withoutOutliers(std::span<const Point> points, int& thrownOut) {
    constexpr double mostAside = 150;
    constexpr double mostAbove = 60;
    std::vector<Point> kept;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double aside = std::hypot(points[i].east - medianAround(points, i, &Point::east),
                                        points[i].north - medianAround(points, i, &Point::north));
        const double above = std::abs(points[i].altitude - medianAround(points, i, &Point::altitude));
        if (aside <= mostAside && above <= mostAbove)
            kept.push_back(points[i]);
    }
    thrownOut += static_cast<int>(points.size() - kept.size());
    return kept;
}

/// Value and slope at `second` of the straight line through some points.
struct Line {
    double value = 0;
    double slope = 0;
};

Line lineThrough(std::span<const Point> points, double second, double Point::*what) {
    double meanTime = 0;
    double meanValue = 0;
    for (const auto& point : points) {
        meanTime += (point.second - second) / static_cast<double>(points.size());
        meanValue += point.*what / static_cast<double>(points.size());
    }
    double spread = 0;
    double along = 0;
    for (const auto& point : points) {
        const double time = point.second - second - meanTime;
        spread += time * time;
        along += time * (point.*what - meanValue);
    }
    const double slope = spread > 0 ? along / spread : 0;
    return {meanValue - slope * meanTime, slope};
}

/// Half of the width of the window: one and a half times the usual distance of fixes, at least fifteen seconds.
double windowOf(std::span<const Point> points) {
    std::vector<double> distances;
    for (std::size_t i = 1; i < points.size(); ++i)
        distances.push_back(points[i].second - points[i - 1].second);
    const auto middle = distances.begin() + static_cast<std::ptrdiff_t>(distances.size() / 2);
    std::nth_element(distances.begin(), middle, distances.end());
    return std::max(15.0, 1.5 * *middle);
}

std::vector<Motion> evenly(std::span<const Point> points, std::int64_t start) {
    const double window = windowOf(points);
    std::vector<Motion> motion;
    std::size_t from = 0;
    std::size_t to = 0;
    for (double second = points.front().second; second <= points.back().second; second += motionStep) {
        while (points[from].second < second - window)
            ++from;
        while (to < points.size() && points[to].second <= second + window)
            ++to;
        auto near = points.subspan(from, to - from);
        const bool known = near.size() >= 3;
        if (!known) {
            const auto first = from == 0 ? 0 : from - 1;
            near = points.subspan(first, std::min(to + 1, points.size()) - first);
        }
        const auto east = lineThrough(near, second, &Point::east);
        const auto north = lineThrough(near, second, &Point::north);
        const auto up = lineThrough(near, second, &Point::altitude);
        motion.push_back({start + static_cast<std::int64_t>(second), east.value, north.value, up.value, east.slope,
                          north.slope, up.slope, known});
    }
    return motion;
}

}

MotionPieces motionOf(const IgcTrack& track) {
    MotionPieces result;
    const auto& fixes = track.fixes;
    for (std::size_t from = 0; from < fixes.size();) {
        auto to = from + 1;
        while (to < fixes.size() && fixes[to].second - fixes[to - 1].second <= longestPause)
            ++to;
        std::vector<Point> points;
        for (auto i = from; i < to; ++i)
            points.push_back(onPlane(fixes[i], fixes[from]));
        const auto kept = withoutOutliers(points, result.thrownOut);
        constexpr std::size_t fewestPoints = 5;
        if (kept.size() >= fewestPoints)
            result.pieces.push_back(evenly(kept, fixes[from].second));
        from = to;
    }
    return result;
}

double metresBetween(const Fix& a, const Fix& b) {
    const double north = std::sin((b.latitude - a.latitude) * radians / 2);
    const double east = std::sin((b.longitude - a.longitude) * radians / 2);
    const double chord = north * north + std::cos(a.latitude * radians) * std::cos(b.latitude * radians) * east * east;
    return 2 * earthRadius * std::asin(std::min(1.0, std::sqrt(chord)));
}

}

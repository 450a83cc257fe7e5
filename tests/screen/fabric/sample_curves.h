// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Invented curves of ageing, for the tests and pictures of the chart.

#include "screen/fabric/ageing_curve.h"

#include <QObject>

#include <cmath>

namespace crownring::screen::sample {

inline AgeingReading reading(ageing::Kind kind, double hours, double value, bool fails = false, bool other = false) {
    AgeingReading made;
    made.kind = kind;
    made.hours = hours;
    made.value = value;
    made.upper = kind == ageing::Kind::Between ? value + 40 : 0;
    made.fails = fails;
    made.ofThisPlace = !other;
    made.day = QStringLiteral("2026-05-%1").arg(1 + static_cast<int>(hours) % 28, 2, 10, QLatin1Char('0'));
    made.place = QStringLiteral("gore %1, panel 4").arg(1 + static_cast<int>(value) % 24);
    made.lot = QStringLiteral("L-2019-07");
    made.says = QStringLiteral("%1 N").arg(value);
    made.judgement = fails ? QStringLiteral("fails") : QStringLiteral("passes");
    return made;
}

/// Strength that falls, with every sort of reading.
inline AgeingCurve strength() {
    using ageing::Kind;
    AgeingCurve curve;
    curve.title = QStringLiteral("Tear strength of the upper panels, warp");
    curve.unit = QStringLiteral("N");
    curve.quantity = QStringLiteral("Tear strength");
    curve.limit = 133;
    curve.limitSays = QStringLiteral("limit: at least 133 N");
    curve.hoursNow = 412;
    curve.caution = QStringLiteral("The forecast holds as long as the balloon is flown as it has been until now.");
    for (double hours = 0; hours <= 700; hours += 50) {
        const double middle = 340 * std::exp(-hours / 620);
        const double spread = 30 + hours / 12;
        curve.band.push_back({hours, std::max(0.0, middle - spread), middle, middle + spread});
    }
    curve.readings = {reading(Kind::Value, 20, 330),
                      reading(Kind::Value, 110, 290),
                      reading(Kind::Between, 200, 225),
                      reading(Kind::AtLeast, 250, 180),
                      reading(Kind::AtLeast, 305, 133),
                      reading(Kind::Value, 305, 190),
                      reading(Kind::Value, 360, 240, false, true),
                      reading(Kind::AtLeast, 380, 150, false, true),
                      reading(Kind::AtMost, 390, 205),
                      reading(Kind::AtMost, 405, 120, true),
                      reading(Kind::Value, 412, 126, true),
                      reading(Kind::Value, 412, 168)};
    return curve;
}

/// Permeability whose forecast runs away.
inline AgeingCurve runaway() {
    AgeingCurve curve;
    curve.title = QStringLiteral("Permeability of the crown ring");
    curve.unit = QStringLiteral("l/m²/s");
    curve.quantity = QStringLiteral("Permeability");
    curve.limit = 30;
    curve.limitIsLeast = false;
    curve.limitSays = QStringLiteral("limit: at most 30 l/m²/s at 100 Pa");
    curve.hoursNow = 200;
    for (double hours = 0; hours <= 400; hours += 20)
        curve.band.push_back({hours, 1 + hours / 40, 2 + hours / 25, 3 * std::exp(hours / 24)});
    curve.readings = {reading(ageing::Kind::Value, 60, 4), reading(ageing::Kind::Value, 140, 9),
                      reading(ageing::Kind::AtMost, 190, 14)};
    return curve;
}

/// Two readings and nothing warranted.
inline AgeingCurve bare() {
    auto curve = strength();
    curve.band.clear();
    curve.readings = {reading(ageing::Kind::Value, 20, 330), reading(ageing::Kind::AtLeast, 305, 133)};
    return curve;
}

/// A long life and large figures.
inline AgeingCurve longLived() {
    auto curve = strength();
    curve.title =
        QStringLiteral("Tensile strength of the main panels of an envelope whose name does not end soon, weft");
    curve.quantity = QStringLiteral("Tensile strength of a strip 50 mm wide");
    curve.limit = 560;
    curve.limitSays = QStringLiteral("limit: at least 560 N on a strip 50 mm wide, after the type's own manual");
    curve.hoursNow = 1180;
    for (auto& point : curve.band)
        point = {point.hours * 2, point.low * 3.5, point.middle * 3.5, point.high * 3.5};
    for (auto& reading : curve.readings) {
        reading.hours *= 2.8;
        reading.value *= 3.5;
        reading.upper *= 3.5;
    }
    return curve;
}

}

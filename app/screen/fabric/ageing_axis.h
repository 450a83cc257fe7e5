// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The axes of the ageing chart: from where to where, with how many ticks.

#include "screen/fabric/ageing_curve.h"

namespace crownring::screen {

/// Ticks at 1, 2 or 5 times a power of ten, the two ends among them.
struct AgeingAxis {
    Q_GADGET
    QML_VALUE_TYPE(ageingAxis)
    Q_PROPERTY(double minimum MEMBER minimum FINAL)
    Q_PROPERTY(double maximum MEMBER maximum FINAL)
    Q_PROPERTY(double interval MEMBER interval FINAL)
    Q_PROPERTY(int ticks MEMBER ticks FINAL)
    Q_PROPERTY(QString format MEMBER format FINAL)

public:
    double minimum = 0;
    double maximum = 1;
    double interval = 1;
    int ticks = 2;                           ///< both ends counted
    QString format = QStringLiteral("%.0f"); ///< of the figures, as printf has it

    /// The shortest axis that holds both, with at most `most` intervals between its ends.
    [[nodiscard]] static AgeingAxis around(double low, double high, int most);
    [[nodiscard]] double span() const { return maximum - minimum; }
    /// How far along the axis it lies, 0 to 1 between the ends.
    [[nodiscard]] double share(double at) const { return (at - minimum) / span(); }
    bool operator==(const AgeingAxis&) const = default;
};

[[nodiscard]] AgeingAxis hoursAxis(const AgeingCurve& curve);
/// Holds nought, the limit and all readings. The band is followed to at most twice what is known, so that a forecast
/// that runs away does not squash the readings.
[[nodiscard]] AgeingAxis valueAxis(const AgeingCurve& curve);

}

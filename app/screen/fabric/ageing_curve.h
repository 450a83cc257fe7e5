// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How a fabric ages, as the chart shows it: a band over hours flown and the readings beside it. Plain values, already
/// in the units that are displayed; who makes them has computed and judged.

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace crownring::screen {

namespace ageing {
Q_NAMESPACE
QML_NAMED_ELEMENT(Ageing)

enum class Kind {
    Value,   ///< it was read
    AtLeast, ///< it held this much; how much more is not known
    AtMost,  ///< it gave way below this, or reached no further
    Between, ///< it lies between two figures
};
Q_ENUM_NS(Kind)
}

/// The band at hours flown: 5 %, 50 % and 95 %.
struct AgeingPoint {
    double hours = 0;
    double low = 0;
    double middle = 0;
    double high = 0;
};

struct AgeingReading {
    using Kind = ageing::Kind;

    double hours = 0;
    double value = 0;
    double upper = 0; ///< only of Between: it lies in value..upper
    Kind kind = Kind::Value;
    bool fails = false;
    bool ofThisPlace = true; ///< of the same set of fabric as the curve
    QString day;
    QString place;
    QString lot;
    QString says; ///< the reading in words, with its unit
    QString judgement;
    bool operator==(const AgeingReading&) const = default;
};

struct AgeingCurve {
    QString title;
    QString unit;
    QString quantity;
    double limit = 0;         ///< NaN where there is none
    bool limitIsLeast = true; ///< else a most, as of permeability
    double hoursNow = 0;
    QString limitSays;
    std::vector<AgeingPoint> band; ///< from 0 to beyond now, hours rising; empty when nothing is warranted
    std::vector<AgeingReading> readings;
    QString caution;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the envelope map shows at one panel. Who makes a mark has judged the reading; the map only draws it.

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

namespace panel {
Q_NAMESPACE
QML_NAMED_ELEMENT(Panel)

enum class Reading {
    None,     ///< never read
    Held,     ///< a bound: it held this much, and its strength is not known
    Value,    ///< a value, within its limit
    Fails,    ///< beyond its limit, whether a value or a bound
    Forecast, ///< expected, not read; within its limit or, with a share below 1, beyond it
};
Q_ENUM_NS(Reading)
}

struct PanelMark {
    int gore = 0; ///< as on the data plate, from 1
    int row = 0;  ///< from 1 at the mouth upward
    panel::Reading reading = panel::Reading::None;
    /// How the figure stands to its limit, 1 at the limit: value over limit where the limit is a least, limit over
    /// value where it is a most. Below 1 is beyond the limit; unused without a figure.
    double share = 0;
    QString text;          ///< a few characters for the panel: "133", "98"
    QString says;          ///< the same in words, with its unit: "held at 133 N"; of a forecast the amount: "121 N"
    int count = 0;         ///< readings taken there, the latest included
    int lot = 0;           ///< number of the fabric's lot on this envelope, from 1; 0 when not known
    QString lotName;       ///< as it is called: "A-17"
    bool asked = false;    ///< the plan still asks for a reading here
    bool repaired = false; ///< a repair was made here
    bool defect = false;   ///< an open defect is here

    /// A forecast that the limit is not kept.
    [[nodiscard]] bool expectedBelow() const { return reading == panel::Reading::Forecast && share < 1; }
    [[nodiscard]] bool sameAs(const PanelMark& other) const { return gore == other.gore && row == other.row; }
    bool operator==(const PanelMark&) const = default;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The envelope map's geometry: gores across from the left, panel rows from the mouth (bottom) to the crown, the vent
/// above. All panels are drawn equal in size: the map is the envelope unrolled, not its shape. Logical pixels.

#include <QPointF>
#include <QRectF>

#include <optional>

namespace crownring::screen {

/// Where on the envelope: both from 1, the row at the mouth.
struct Panel {
    int gore = 0;
    int row = 0;
    bool operator==(const Panel&) const = default;
};

enum class PanelStep { Left, Right, ToCrown, ToMouth, FirstGore, LastGore, Crown, Mouth };

struct PanelGrid {
    int gores = 0;
    int rows = 0;
    QSizeF panel;    ///< size of one
    double vent = 0; ///< height of the vent above the crown row

    [[nodiscard]] bool empty() const { return gores < 1 || rows < 1; }
    [[nodiscard]] bool holds(Panel at) const;
    /// The size of the whole, vent included.
    [[nodiscard]] QSizeF size() const;
    /// The area of all panels, without the vent.
    [[nodiscard]] QRectF field() const;
    [[nodiscard]] QRectF area(Panel at) const;
    /// Panels are numbered from 0 at the mouth, gore by gore. @param at a panel of the grid
    [[nodiscard]] std::size_t number(Panel at) const {
        return static_cast<std::size_t>((at.row - 1) * gores + at.gore - 1);
    }
    /// The panel at a point, or the nearest one when the point lies at most `slop` outside the field.
    [[nodiscard]] std::optional<Panel> at(QPointF point, double slop = 0) const;
    /// One step over the map. Sideways it goes round, as the envelope does; up and down it ends at crown and mouth.
    /// @param from a panel of the grid
    [[nodiscard]] Panel moved(Panel from, PanelStep step) const;
};

/// How long a panel is along one direction: what `count` of them may take of `room`, whole pixels, within [least,
/// most]. When even `least` does not fit, the map is longer than its room and scrolls.
[[nodiscard]] double panelLength(double room, int count, double least, double most);

}

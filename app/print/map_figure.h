// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The unrolled envelope as wide as the page: gores across, numbered; rows from the mouth at the bottom. A panel that
/// was not read stays as paper. A failed one is struck by two diagonals in a heavy frame, a load that was held has ≥
/// before it: a copy in black and white says the same.

#include "paper/document.h"
#include "print/text_line.h"

#include <QtCore/QRectF>

namespace crownring::print {

class MapFigure final : public Piece {
public:
    /// @param most height that a page gives, in dots
    MapFigure(paper::EnvelopeMapFigure map, double width, double most);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    [[nodiscard]] QRectF cell(const QRectF& grid, int gore, int row) const;
    /// The size of type, in points, in which every reading fits; `m_upright` when that is up the panel.
    void fitReadings(double panelWidth);

    void drawGrid(QPainter& painter, const QRectF& grid) const;
    void drawNumbers(QPainter& painter, const QRectF& grid) const;
    void drawPanel(QPainter& painter, const QRectF& place, const paper::Panel& panel, bool upright) const;
    void drawSigns(QPainter& painter, QPointF place) const;

    paper::EnvelopeMapFigure m_map;
    double m_width;
    TextLines m_caption, m_foot;
    double m_rowHeight = 0;
    double m_readingSize = 0;
    bool m_upright = false;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on a page in one piece: a line of text, a row of a table, a map, the block of a signature.

#include <QtCore/QPointF>

#include <memory>
#include <vector>

class QPainter;

namespace crownring::print {

class Piece {
public:
    virtual ~Piece() = default;
    [[nodiscard]] virtual double height() const = 0; ///< in dots of the sheet
    virtual void draw(QPainter& painter, QPointF topLeft) const = 0;
};

using PiecePtr = std::shared_ptr<const Piece>;

/// A piece in the flow of the text.
struct Slab {
    PiecePtr piece;
    double before = 0;        ///< space above, which falls away at the top of a page
    bool keepsToNext = false; ///< stands on one page with the piece that follows
    PiecePtr head = {};       ///< drawn above it where it begins a page: the head of its table
};

using Flow = std::vector<Slab>;

}

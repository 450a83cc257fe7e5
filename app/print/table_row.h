// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One row of a table.

#include "print/text_line.h"

namespace crownring::print {

struct Rule {
    double weight = 0; ///< dots; 0: none
    QColor colour;
};

/// Where the columns of a table stand, in dots from its left.
struct ColumnPlace {
    double left = 0, width = 0; ///< of the text
};

/// Columns by their shares of the width, with a gap between them.
[[nodiscard]] std::vector<ColumnPlace> columnPlaces(const std::vector<double>& shares, double width);

class TableRow final : public Piece {
public:
    TableRow(std::vector<TextLines> cells, std::vector<ColumnPlace> places, Rule under);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

    /// In parts that are no higher than `most` (but a line each); only the last has the rule.
    [[nodiscard]] std::vector<TableRow> split(double most) const;

private:
    [[nodiscard]] double textHeight() const;

    std::vector<TextLines> m_cells;
    std::vector<ColumnPlace> m_places;
    Rule m_under;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The wording that a rule prescribes, in a frame, with the rule under it. Only what is too long for a page is split.

#include "paper/document.h"
#include "print/text_line.h"

namespace crownring::print {

class StatementBox final : public Piece {
public:
    StatementBox(TextLines lines, double width);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    double m_width;
    TextLines m_lines;
};

/// @param most height of one, in dots
[[nodiscard]] std::vector<StatementBox> statementBoxes(const paper::Statement& statement, double width, double most);

}

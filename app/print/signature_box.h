// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The block in which a person signs, in one piece: labels at the left, what is known on the line, an empty line where
/// a hand writes.

#include "paper/document.h"
#include "print/text_line.h"

namespace crownring::print {

class SignatureBox final : public Piece {
public:
    SignatureBox(const paper::Signature& signature, double width);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    struct Line {
        TextLines label, value;
        double height = 0;
        bool known = false;
    };

    double m_width;
    double m_valueLeft;
    TextLines m_title;
    std::vector<Line> m_lines;
};

}

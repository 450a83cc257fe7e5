// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The block in which a person signs, in one piece: two answers abreast, each on its line with the label above it; what
/// a hand writes has the whole width.

#include "paper/document.h"
#include "print/text_line.h"

namespace crownring::print {

class SignatureBox final : public Piece {
public:
    SignatureBox(const paper::Signature& signature, double width);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    struct Answer {
        TextLines label, value;
        double left = 0, width = 0;
        bool known = false;
    };
    struct Row {
        std::vector<Answer> answers;
        double height = 0;
    };
    void add(const paper::SignatureLine& line);

    double m_width;
    TextLines m_title;
    std::vector<Row> m_rows;
};

}

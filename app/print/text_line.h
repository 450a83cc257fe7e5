// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Text broken into lines by Qt's text layout.

#include "print/piece.h"

#include <QtGui/QColor>
#include <QtGui/QFont>
#include <QtGui/QTextLayout>

#include <string>

namespace crownring::print {

/// One line; the layout that broke it is shared with its neighbours.
class TextLine final : public Piece {
public:
    TextLine(std::shared_ptr<const QTextLayout> layout, int number, QColor colour, double leading);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    std::shared_ptr<const QTextLayout> m_layout;
    int m_number;
    QColor m_colour;
    double m_leading;
};

using TextLines = std::vector<TextLine>;

struct TextStyle {
    QFont font;
    QColor colour;
    Qt::Alignment align = Qt::AlignLeft;
    double leading = 1.15; ///< from line to line, against the height of the font
};

/// Breaks at words, inside a word that is longer than a line, and at "\n". At least one line.
/// @param text UTF-8
[[nodiscard]] TextLines setText(const std::string& text, double width, const TextStyle& style);

[[nodiscard]] double heightOf(const TextLines& lines);

/// One below the other.
void draw(QPainter& painter, QPointF topLeft, const TextLines& lines);

}

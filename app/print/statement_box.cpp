// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/statement_box.h"

#include "print/sheet.h"
#include "print/typeface.h"

#include <QtGui/QPainter>

#include <utility>

namespace crownring::print {

StatementBox::StatementBox(TextLines lines, double width) : m_width(width), m_lines(std::move(lines)) {}

double StatementBox::height() const { return heightOf(m_lines) + 2 * boxPad; }

void StatementBox::draw(QPainter& painter, QPointF topLeft) const {
    const double half = points(0.5);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 2 * half, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(topLeft, QSizeF(m_width, height())).adjusted(half, half, -half, -half));
    print::draw(painter, topLeft + QPointF(boxPad, boxPad), m_lines);
}

std::vector<StatementBox> statementBoxes(const paper::Statement& statement, double width, double most) {
    TextLines lines = setText(statement.text, width - 2 * boxPad, {typeFont(bodySize), ink, Qt::AlignLeft, 1.2});
    const auto addSmall = [&](const std::string& words, double leading) {
        if (words.empty())
            return;
        for (const TextLine& line :
             setText(words, width - 2 * boxPad, {typeFont(smallSize), softInk, Qt::AlignLeft, leading}))
            lines.push_back(line);
    };
    addSmall(statement.source, 1.4);
    addSmall(statement.note, 1.15);
    std::vector<StatementBox> boxes;
    TextLines rest;
    for (const TextLine& line : lines) {
        if (!rest.empty() && heightOf(rest) + line.height() + 2 * boxPad > most)
            boxes.emplace_back(std::exchange(rest, {}), width);
        rest.push_back(line);
    }
    boxes.emplace_back(std::move(rest), width);
    return boxes;
}

}

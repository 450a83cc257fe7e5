// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/text_line.h"

#include "text/shown.h"

#include <QtGui/QPainter>

#include <algorithm>

namespace crownring::print {

TextLine::TextLine(std::shared_ptr<const QTextLayout> layout, int number, QColor colour, double leading)
    : m_layout(std::move(layout)), m_number(number), m_colour(colour), m_leading(leading) {}

double TextLine::height() const { return m_layout->lineAt(m_number).height() * m_leading; }

void TextLine::draw(QPainter& painter, QPointF topLeft) const {
    const QTextLine line = m_layout->lineAt(m_number);
    painter.setPen(m_colour);
    line.draw(&painter, topLeft + QPointF(0, line.height() * (m_leading - 1) / 2));
}

TextLines setText(const std::string& text, double width, const TextStyle& style) {
    const auto layout = std::make_shared<QTextLayout>(
        QString::fromStdString(shown(text)).replace(u'\n', QChar::LineSeparator), style.font);
    QTextOption option(style.align);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    layout->setTextOption(option);
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
        line.setLineWidth(std::max(width, 1.0));
        line.setPosition({});
    }
    layout->endLayout();
    TextLines lines;
    for (int number = 0; number < layout->lineCount(); ++number)
        lines.emplace_back(layout, number, style.colour, style.leading);
    return lines;
}

double heightOf(const TextLines& lines) {
    double height = 0;
    for (const TextLine& line : lines)
        height += line.height();
    return height;
}

void draw(QPainter& painter, QPointF topLeft, const TextLines& lines) {
    for (const TextLine& line : lines) {
        line.draw(painter, topLeft);
        topLeft.ry() += line.height();
    }
}

}

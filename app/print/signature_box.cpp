// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/signature_box.h"

#include "print/sheet.h"
#include "print/typeface.h"

#include <QtGui/QFontMetricsF>
#include <QtGui/QPainter>

#include <algorithm>

namespace crownring::print {

namespace {

constexpr double besideLabel = millimetres(4);
constexpr double answerHeight = millimetres(8), roomToSign = millimetres(15);
constexpr double underText = millimetres(0.7); ///< from the text to the line under it
constexpr double underTitle = millimetres(1.5);

double labelWidth(const paper::Signature& signature, double width) {
    const QFontMetricsF metrics(typeFont(tableSize));
    double widest = 0;
    for (const paper::SignatureLine& line : signature.lines)
        widest = std::max(widest, metrics.horizontalAdvance(QString::fromStdString(line.label)));
    return std::min(widest + 1, width * 0.45);
}

}

SignatureBox::SignatureBox(const paper::Signature& signature, double width) : m_width(width) {
    const double label = labelWidth(signature, width);
    m_valueLeft = boxPad + label + besideLabel;
    const double room = std::max(width - boxPad - m_valueLeft, 1.0);
    if (!signature.title.empty())
        m_title = setText(signature.title, width - 2 * boxPad, {typeFont(bodySize + 0.5, Face::Bold), ink});
    for (const paper::SignatureLine& line : signature.lines) {
        Line set{setText(line.label, label, {typeFont(tableSize), softInk}),
                 setText(line.value, room, {typeFont(bodySize, Face::Bold), ink}), 0, !line.value.empty()};
        set.height = std::max(line.byHand ? roomToSign : answerHeight,
                              std::max(heightOf(set.label), heightOf(set.value)) + underText + millimetres(1.5));
        m_lines.push_back(std::move(set));
    }
}

double SignatureBox::height() const {
    double height = 2 * boxPad + (m_title.empty() ? 0 : heightOf(m_title) + underTitle);
    for (const Line& line : m_lines)
        height += line.height;
    return height;
}

void SignatureBox::draw(QPainter& painter, QPointF topLeft) const {
    const double half = points(0.5);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 2 * half, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(topLeft, QSizeF(m_width, height())).adjusted(half, half, -half, -half));
    QPointF at = topLeft + QPointF(boxPad, boxPad);
    if (!m_title.empty()) {
        print::draw(painter, at, m_title);
        at.ry() += heightOf(m_title) + underTitle;
    }
    const double left = topLeft.x() + m_valueLeft, right = topLeft.x() + m_width - boxPad;
    for (const Line& line : m_lines) {
        at.ry() += line.height;
        const double rule = at.y() - millimetres(0.4), foot = rule - underText;
        print::draw(painter, {at.x(), foot - heightOf(line.label)}, line.label);
        print::draw(painter, {left, foot - heightOf(line.value)}, line.value);
        painter.setPen(QPen(line.known ? hairline : ink, points(line.known ? 0.35 : 0.6)));
        painter.drawLine(QPointF(left, rule), QPointF(right, rule));
    }
}

}

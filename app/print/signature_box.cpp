// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/signature_box.h"

#include "print/sheet.h"
#include "print/typeface.h"

#include <QtGui/QPainter>

#include <algorithm>

namespace crownring::print {

namespace {

constexpr std::size_t abreast = 2;
constexpr double betweenAnswers = millimetres(5);
constexpr double roomToSign = millimetres(11);
constexpr double aboveLabel = millimetres(1.2), underText = millimetres(0.7); ///< to the line
constexpr double underTitle = millimetres(0.5);
constexpr double labelSize = 7.5;

}

SignatureBox::SignatureBox(const paper::Signature& signature, double width) : m_width(width) {
    if (!signature.title.empty())
        m_title = setText(signature.title, width - 2 * boxPad, {typeFont(bodySize + 0.5, Face::Bold), ink});
    for (const paper::SignatureLine& line : signature.lines)
        add(line);
}

void SignatureBox::add(const paper::SignatureLine& line) {
    const double room = m_width - 2 * boxPad;
    const double half = (room - betweenAnswers) / abreast;
    const bool begins = line.byHand || m_rows.empty() || m_rows.back().answers.size() == abreast ||
                        m_rows.back().answers.front().width > half;
    if (begins)
        m_rows.emplace_back();
    auto& row = m_rows.back();
    const double left = boxPad + static_cast<double>(row.answers.size()) * (half + betweenAnswers);
    const double width = line.byHand ? room : half;
    row.answers.push_back({setText(line.label, width, {typeFont(labelSize), softInk}),
                           setText(line.value, width, {typeFont(bodySize, Face::Bold), ink}), left, width,
                           !line.value.empty()});
    const Answer& answer = row.answers.back();
    row.height = std::max({row.height, line.byHand ? roomToSign : 0.0,
                           aboveLabel + heightOf(answer.label) + heightOf(answer.value) + underText});
}

double SignatureBox::height() const {
    double height = 2 * boxPad + (m_title.empty() ? 0 : heightOf(m_title) + underTitle);
    for (const Row& row : m_rows)
        height += row.height;
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
    for (const Row& row : m_rows) {
        for (const Answer& answer : row.answers) {
            const double left = topLeft.x() + answer.left, foot = at.y() + row.height;
            print::draw(painter, {left, at.y() + aboveLabel}, answer.label);
            print::draw(painter, {left, foot - underText - heightOf(answer.value)}, answer.value);
            painter.setPen(QPen(answer.known ? hairline : ink, points(answer.known ? 0.35 : 0.6)));
            painter.drawLine(QPointF(left, foot), QPointF(left + answer.width, foot));
        }
        at.ry() += row.height;
    }
}

}

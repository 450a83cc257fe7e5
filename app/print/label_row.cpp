// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/label_row.h"

#include "print/sheet.h"
#include "print/typeface.h"

#include <QtGui/QPainter>

#include <algorithm>

namespace crownring::print {

namespace {

constexpr double betweenLabels = millimetres(4), labelPad = millimetres(3), betweenFacts = millimetres(0.6);
constexpr double aroundStatus = millimetres(1.5);
constexpr double codeSide = millimetres(30); ///< read from an arm's length (common practice, no source)
constexpr double hole = millimetres(5);      ///< to be punched
constexpr double labelsShare = 0.34;         ///< of the text's width

double textWidth(double width) { return width - 2 * labelPad; }

double rowHeight(const std::pair<TextLines, TextLines>& fact) {
    return std::max(heightOf(fact.first), heightOf(fact.second)) + betweenFacts;
}

}

LabelRow::LabelRow(std::span<const paper::Label> labels, double width)
    : m_width((width - betweenLabels * (abreast - 1)) / abreast) {
    for (const paper::Label& label : labels) {
        Set set;
        set.code = QrCode::of(label.code);
        const double room = textWidth(m_width) - (set.code ? codeSide : 0);
        set.title = setText(label.title, room - (set.code ? 0 : hole), {typeFont(14, Face::Bold), ink});
        set.subtitle = setText(label.subtitle, room - (set.code ? 0 : hole), {typeFont(tableSize), softInk});
        for (const paper::Fact& fact : label.facts)
            set.facts.emplace_back(setText(fact.label, room * labelsShare - millimetres(2), {typeFont(7.5), softInk}),
                                   setText(fact.value, room * (1 - labelsShare), {typeFont(smallSize), ink}));
        if (!label.status.empty())
            set.status =
                setText(label.status, room - 2 * aroundStatus, {typeFont(12, Face::Bold), ink, Qt::AlignHCenter});
        if (!label.note.empty())
            set.note = setText(label.note, room, {typeFont(7), softInk});
        set.bars = label.bars;
        m_labels.push_back(std::move(set));
    }
}

double LabelRow::Set::height() const {
    double height = 2 * labelPad + heightOf(title) + heightOf(subtitle) + millimetres(1.5);
    for (const auto& fact : facts)
        height += rowHeight(fact);
    if (!status.empty())
        height += 2 * aroundStatus + heightOf(status) + millimetres(1);
    if (!note.empty())
        height += millimetres(1) + heightOf(note);
    return code ? std::max(height, 2 * labelPad + hole + codeSide) : height;
}

double LabelRow::height() const {
    double height = 0;
    for (const Set& label : m_labels)
        height = std::max(height, label.height());
    return height;
}

void LabelRow::draw(QPainter& painter, QPointF topLeft) const {
    for (const Set& label : m_labels) {
        draw(painter, topLeft, label);
        topLeft.rx() += m_width + betweenLabels;
    }
}

void LabelRow::draw(QPainter& painter, QPointF topLeft, const Set& label) const {
    const double line = points(0.6);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, line, Qt::DashLine));
    painter.drawRect(QRectF(topLeft, QSizeF(m_width, height())).adjusted(line, line, -line, -line));
    painter.setPen(QPen(hairline, line));
    painter.drawEllipse(QRectF(topLeft + QPointF(m_width - labelPad - hole, labelPad), QSizeF(hole, hole)));
    const double left = topLeft.x() + labelPad, room = textWidth(m_width) - (label.code ? codeSide : 0);
    if (label.code)
        label.code->draw(painter, QRectF(left + room, topLeft.y() + labelPad + hole, codeSide, codeSide));
    double y = topLeft.y() + labelPad;
    const auto put = [&](const TextLines& lines) {
        print::draw(painter, {left, y}, lines);
        y += heightOf(lines);
    };
    put(label.title);
    put(label.subtitle);
    y += millimetres(1.5);
    for (const auto& fact : label.facts) {
        print::draw(painter, {left, y}, fact.first);
        print::draw(painter, {left + room * labelsShare, y}, fact.second);
        y += rowHeight(fact);
    }
    y += millimetres(1);
    if (!label.status.empty()) {
        const QRectF frame(left, y, room, heightOf(label.status) + 2 * aroundStatus);
        painter.setPen(QPen(ink, points(label.bars ? 2.2 : 0.6)));
        painter.drawRect(frame);
        print::draw(painter, frame.topLeft() + QPointF(aroundStatus, aroundStatus), label.status);
        y = frame.bottom() + millimetres(1);
    }
    if (!label.note.empty())
        put(label.note);
}

}

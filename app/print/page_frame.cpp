// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/page_frame.h"

#include "print/typeface.h"
#include "text/shown.h"

#include <QtCore/QCoreApplication>
#include <QtGui/QFontMetricsF>
#include <QtGui/QPainter>

namespace crownring::print {

namespace {

constexpr double headHeight = millimetres(6), underHead = millimetres(6), aboveFoot = millimetres(5);
constexpr double lineHeight = millimetres(5);
constexpr double cautionSize = 7.5;

/// The font in which the words take no more than the room.
QFont fitting(const QString& words, double room) {
    const QFont font = typeFont(smallSize);
    const double width = QFontMetricsF(font).horizontalAdvance(words);
    return width <= room ? font : typeFont(smallSize * room / width);
}

}

PageFrame::PageFrame(const paper::Document& document, QRectF area)
    : m_title(QString::fromStdString(shownOnOneLine(document.title))),
      m_record(QString::fromStdString(shownOnOneLine(document.recordId))),
      m_caution(setText(document.caution, area.width(), {typeFont(cautionSize), softInk, Qt::AlignLeft, 1.05})),
      m_area(area) {}

QRectF PageFrame::body() const {
    return m_area.adjusted(0, headHeight + underHead, 0,
                           -(aboveFoot + millimetres(1.5) + heightOf(m_caution) + lineHeight));
}

void PageFrame::drawHead(QPainter& painter) const {
    const QRectF head(m_area.topLeft(), QSizeF(m_area.width(), headHeight - millimetres(1.5)));
    painter.setPen(softInk);
    painter.setFont(fitting(m_record, m_area.width()));
    painter.drawText(head, Qt::AlignRight | Qt::AlignBottom, m_record);
    const double left = head.width() - QFontMetricsF(painter.font()).horizontalAdvance(m_record) - millimetres(6);
    painter.setPen(ink);
    painter.setFont(typeFont(smallSize, Face::Bold));
    const QString title = QFontMetricsF(painter.font()).elidedText(m_title, Qt::ElideRight, std::max(left, 0.0));
    painter.drawText(head, Qt::AlignLeft | Qt::AlignBottom, title);
    painter.setPen(QPen(accent, points(1.2)));
    const double y = m_area.top() + headHeight;
    painter.drawLine(QPointF(m_area.left(), y), QPointF(m_area.right(), y));
}

void PageFrame::draw(QPainter& painter, int page, int pages) const {
    painter.save();
    drawHead(painter);
    double y = body().bottom() + aboveFoot;
    painter.setPen(QPen(hairline, points(0.5)));
    painter.drawLine(QPointF(m_area.left(), y), QPointF(m_area.right(), y));
    y += millimetres(1.5);
    print::draw(painter, {m_area.left(), y}, m_caution);
    const QString number = QCoreApplication::translate("print", "page %1 of %2").arg(page).arg(pages);
    painter.setFont(typeFont(smallSize));
    const double room = m_area.width() - QFontMetricsF(painter.font()).horizontalAdvance(number) - millimetres(6);
    const QRectF last(m_area.left(), m_area.bottom() - lineHeight, m_area.width(), lineHeight);
    painter.setPen(ink);
    painter.drawText(last, Qt::AlignRight | Qt::AlignBottom, number);
    painter.setFont(fitting(m_record, room));
    painter.drawText(last, Qt::AlignLeft | Qt::AlignBottom, m_record);
    painter.restore();
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/parts/gore_sign.h"

#include <QFont>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace crownring::screen {

namespace {

/// Above the crown there is always room for a cap, so that gores of one row stand level.
constexpr double capShare = 0.14;

QRectF lensArea(const QRectF& area, double line) {
    const double cap = area.height() * capShare;
    return area.adjusted(line, cap + line, -line, -line);
}

void fill(QPainter& painter, const QPainterPath& lens, const QRectF& box, double used, const QColor& tone) {
    const double height = box.height() * std::clamp(used, 0.0, 1.0);
    painter.save();
    painter.setClipPath(lens);
    painter.fillRect(QRectF(box.left(), box.bottom() - height, box.width(), height), tone);
    painter.restore();
}

void hatchCrown(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    const QRectF crown(box.left(), box.top(), box.width(), box.height() * 0.36);
    painter.save();
    painter.setClipPath(lens);
    painter.setClipRect(crown, Qt::IntersectClip);
    painter.setPen(QPen(tone, line * 0.9));
    const double step = line * 2.4;
    for (double x = crown.left() - crown.height(); x < crown.right(); x += step)
        painter.drawLine(QPointF(x, crown.bottom()), QPointF(x + crown.height(), crown.top()));
    painter.restore();
}

void drawNearing(QPainter& painter, const QPainterPath& lens, const QRectF& box, double used, const QColor& tone,
                 double line) {
    // The hatching needs empty cloth under it: the solid part ends below the crown.
    fill(painter, lens, box, std::min(used < 0 ? 0.64 : used, 0.64), tone);
    hatchCrown(painter, lens, box, tone, line);
    painter.strokePath(lens, QPen(tone, line));
}

void drawTolerance(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    painter.fillPath(lens, tone);
    QPen pen(tone, line * 1.2, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({1.6, 1.1});
    QPainterPath cap;
    const double half = box.width() * 0.46;
    const double crown = box.top() - line * 1.4;
    cap.moveTo(box.center().x() - half, crown + box.height() * 0.13);
    cap.quadTo(QPointF(box.center().x(), crown - box.height() * 0.17),
               QPointF(box.center().x() + half, crown + box.height() * 0.13));
    painter.strokePath(cap, pen);
}

void drawLapsed(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    const double gap = std::max(line * 1.5, box.height() * 0.13);
    QPainterPath cut;
    const double y = box.center().y();
    const double rise = box.width() * 0.42;
    cut.moveTo(box.left() - 2, y + rise);
    cut.lineTo(box.right() + 2, y - rise - gap * 0.5);
    cut.lineTo(box.right() + 2, y - rise + gap * 0.5);
    cut.lineTo(box.left() - 2, y + rise + gap);
    cut.closeSubpath();
    painter.fillPath(lens.subtracted(cut), tone);
}

void drawSpent(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    painter.fillPath(lens, tone);
    const double high = std::max(line * 1.6, box.height() * 0.09);
    painter.fillRect(QRectF(box.left() - line, box.top() - line, box.width() + 2 * line, high), tone);
}

void drawUnproven(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    QPen pen(tone, line * 1.15, Qt::CustomDashLine, Qt::RoundCap);
    pen.setDashPattern({0.1, 2.0});
    painter.strokePath(lens, pen);
    if (box.width() < 9)
        return;
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(std::max(7, static_cast<int>(box.width() * 0.78)));
    painter.setFont(font);
    painter.setPen(tone);
    painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
}

void drawClosed(QPainter& painter, const QRectF& box, const QColor& tone, double line) {
    const QRectF small(box.center().x() - box.width() * 0.34, box.center().y() - box.height() * 0.2, box.width() * 0.68,
                       box.height() * 0.62);
    painter.strokePath(goreOutline(small), QPen(tone, line));
    QPainterPath tick;
    tick.moveTo(small.left() + small.width() * 0.30, small.center().y());
    tick.lineTo(small.left() + small.width() * 0.48, small.center().y() + small.width() * 0.2);
    tick.lineTo(small.right() + small.width() * 0.2, small.top() + small.height() * 0.06);
    painter.strokePath(tick, QPen(tone, line * 1.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

/// Two bars: it waits.
void drawDeferred(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    painter.strokePath(lens, QPen(tone, line));
    const double high = box.height() * 0.44;
    const double wide = std::max(line * 1.4, box.width() * 0.13);
    for (const double at : {-1.0, 1.0})
        painter.fillRect(
            QRectF(box.center().x() + at * box.width() * 0.15 - wide / 2, box.center().y() - high * 0.55, wide, high),
            tone);
}

void drawNotRequired(QPainter& painter, const QPainterPath& lens, const QRectF& box, const QColor& tone, double line) {
    QPen pen(tone, line, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({3.0, 2.0});
    painter.strokePath(lens, pen);
    painter.fillRect(
        QRectF(box.center().x() - box.width() * 0.24, box.center().y() - line, box.width() * 0.48, line * 2), tone);
}

}

QPainterPath goreOutline(const QRectF& area) {
    // Widest a little above the middle, as a gore is; pointed at crown and mouth.
    const double x = area.center().x();
    const double reach = area.width() * 0.66;
    QPainterPath path;
    path.moveTo(x, area.top());
    path.cubicTo(QPointF(x + reach, area.top() + area.height() * 0.26),
                 QPointF(x + reach, area.top() + area.height() * 0.64), QPointF(x, area.bottom()));
    path.cubicTo(QPointF(x - reach, area.top() + area.height() * 0.64),
                 QPointF(x - reach, area.top() + area.height() * 0.26), QPointF(x, area.top()));
    path.closeSubpath();
    return path;
}

void drawGore(QPainter& painter, const QRectF& area, Reckoned reckoned, double used, const QColor& tone) {
    const double line = std::clamp(area.width() / 14, 1.0, 3.0);
    const auto box = lensArea(area, line);
    const auto lens = goreOutline(box);
    painter.setBrush(Qt::NoBrush);
    switch (reckoned) {
    case Reckoned::Clear:
        fill(painter, lens, box, used < 0 ? 0 : used, tone);
        painter.strokePath(lens, QPen(tone, line));
        break;
    case Reckoned::Nearing:
        drawNearing(painter, lens, box, used, tone, line);
        break;
    case Reckoned::Tolerance:
        drawTolerance(painter, lens, box, tone, line);
        break;
    case Reckoned::Lapsed:
        drawLapsed(painter, lens, box, tone, line);
        break;
    case Reckoned::Spent:
        drawSpent(painter, lens, box, tone, line);
        break;
    case Reckoned::Unproven:
        drawUnproven(painter, lens, box, tone, line);
        break;
    case Reckoned::Closed:
        drawClosed(painter, box, tone, line);
        break;
    case Reckoned::Deferred:
        drawDeferred(painter, lens, box, tone, line);
        break;
    case Reckoned::NotRequired:
        drawNotRequired(painter, lens, box, tone, line);
        break;
    }
}

GoreSign::GoreSign(QQuickItem* parent) : QQuickPaintedItem(parent) { setAntialiasing(true); }

void GoreSign::paint(QPainter* painter) {
    if (m_standing < 0 || m_standing >= reckonedCount)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    drawGore(*painter, QRectF(0, 0, width(), height()), static_cast<Reckoned>(m_standing), m_used, m_tone);
}

void GoreSign::setStanding(int standing) {
    if (standing == m_standing)
        return;
    m_standing = standing;
    emit standingChanged();
    update();
}

void GoreSign::setUsed(double used) {
    if (used == m_used)
        return;
    m_used = used;
    emit usedChanged();
    update();
}

void GoreSign::setTone(const QColor& tone) {
    if (tone == m_tone)
        return;
    m_tone = tone;
    emit toneChanged();
    update();
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "panel_sign.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

constexpr int mostDots = 4;

/// Thickness of the lines at this size.
double lineOf(const QRectF& area) { return std::clamp(std::min(area.width(), area.height()) / 18, 1.2, 2.5); }

QColor between(const QColor& from, const QColor& to, double part) {
    const auto mix = [part](int a, int b) { return static_cast<int>(std::lround(a + (b - a) * part)); };
    return QColor(mix(from.red(), to.red()), mix(from.green(), to.green()), mix(from.blue(), to.blue()));
}

/// Where the figure stands: below the arrow of a bound, else in the middle.
QRectF figureArea(const QRectF& area, panel::Reading reading) {
    return reading == panel::Reading::Held ? area.adjusted(0, area.height() * 0.26, 0, 0) : area;
}

/// The largest size at which the text fits into the panel, between 8 and 15 pixels.
QFont figureFont(const QString& text, const QRectF& area) {
    QFont font = QGuiApplication::font();
    int size = static_cast<int>(std::clamp(area.height() * 0.42, 8.0, 15.0));
    for (; size > 8; --size) {
        font.setPixelSize(size);
        if (QFontMetricsF(font).horizontalAdvance(text) <= area.width() - 4)
            break;
    }
    font.setPixelSize(size);
    return font;
}

void drawDiagonal(QPainter& painter, const QRectF& area, const MapTones& tones) {
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setPen(QPen(tones.fails, lineOf(area) * 1.8, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(area.bottomLeft(), area.topRight());
    painter.restore();
}

void drawFigure(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    if (mark.text.isEmpty())
        return;
    const auto font = figureFont(mark.text, area);
    const QFontMetricsF metrics(font);
    const auto text = metrics.elidedText(mark.text, Qt::ElideRight, area.width() - 2);
    if (mark.reading == panel::Reading::Fails) {
        // The diagonal keeps clear of the figure.
        QPainterPath outline;
        outline.addText(area.center().x() - metrics.horizontalAdvance(text) / 2,
                        area.center().y() + metrics.capHeight() / 2, font, text);
        painter.strokePath(outline, QPen(panelGround(mark, tones), 3.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.fillPath(outline, tones.ink);
        return;
    }
    painter.setFont(font);
    painter.setPen(tones.ink);
    painter.drawText(area, Qt::AlignCenter, text);
}

void drawArrowUp(QPainter& painter, const QRectF& area, const MapTones& tones) {
    const double x = area.center().x();
    const double top = area.top() + area.height() * 0.13;
    const double foot = area.top() + area.height() * 0.40;
    const double reach = (foot - top) * 0.6;
    painter.setPen(QPen(tones.ink, lineOf(area), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawLine(QPointF(x, foot), QPointF(x, top));
    painter.drawPolyline(QPolygonF({{x - reach, top + reach}, {x, top}, {x + reach, top + reach}}));
}

void drawStitches(QPainter& painter, const QRectF& area, const MapTones& tones) {
    QPen pen(tones.ink, lineOf(area), Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({2.6, 1.8});
    painter.setPen(pen);
    const double inset = lineOf(area) + 1;
    painter.drawRect(area.adjusted(inset, inset, -inset, -inset));
}

void drawRing(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    const bool alone = mark.reading == panel::Reading::None;
    const double shorter = std::min(area.width(), area.height());
    const double radius = shorter * (alone ? 0.2 : 0.09);
    const QPointF middle = alone ? area.center() : area.topRight() + QPointF(-shorter * 0.2, shorter * 0.2);
    painter.setPen(QPen(tones.ink, lineOf(area)));
    painter.drawEllipse(middle, radius, radius);
}

void drawDefect(QPainter& painter, const QRectF& area, const MapTones& tones) {
    const double side = std::min(area.width(), area.height()) * 0.32;
    painter.setPen(Qt::NoPen);
    painter.setBrush(tones.fails);
    painter.drawPolygon(
        QPolygonF({area.topLeft(), area.topLeft() + QPointF(side, 0), area.topLeft() + QPointF(0, side)}));
    painter.setBrush(Qt::NoBrush);
}

void drawDots(QPainter& painter, const QRectF& area, int earlier, const MapTones& tones) {
    const double radius = lineOf(area);
    const int dots = std::min(earlier, mostDots);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tones.ink);
    for (int dot = 0; dot < dots; ++dot)
        painter.drawEllipse(
            QPointF(area.center().x() + (dot - (dots - 1) / 2.0) * radius * 3, area.bottom() - area.height() * 0.12),
            radius, radius);
    painter.setBrush(Qt::NoBrush);
}

}

MapTones MapTones::of(const QList<QColor>& tones) {
    MapTones map;
    QColor* const order[] = {&map.paper, &map.weak, &map.strong, &map.ink, &map.fails, &map.seam};
    qsizetype at = 0;
    for (auto* tone : order) {
        if (at == tones.size())
            break;
        *tone = tones[at++];
    }
    return map;
}

QColor panelGround(const PanelMark& mark, const MapTones& tones) {
    if (mark.reading == panel::Reading::None)
        return tones.paper;
    if (mark.reading == panel::Reading::Fails || !std::isfinite(mark.share))
        return tones.weak;
    return between(tones.weak, tones.strong, std::clamp(mark.share - 1, 0.0, 1.0));
}

void drawPanelSigns(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (mark.reading == panel::Reading::Fails)
        drawDiagonal(painter, area, tones);
    if (mark.defect)
        drawDefect(painter, area, tones);
    if (mark.repaired)
        drawStitches(painter, area, tones);
    if (mark.reading == panel::Reading::Held)
        drawArrowUp(painter, area, tones);
    drawFigure(painter, figureArea(area, mark.reading), mark, tones);
    if (mark.asked)
        drawRing(painter, area, mark, tones);
    if (mark.count > 1)
        drawDots(painter, area, mark.count - 1, tones);
    painter.restore();
}

void drawVent(QPainter& painter, const QRectF& area, const MapTones& tones) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF cap = area.adjusted(1, 3, -1, 0);
    const double bend = cap.height();
    QPainterPath vent;
    vent.moveTo(cap.bottomLeft());
    vent.quadTo(cap.topLeft(), QPointF(cap.left() + bend, cap.top()));
    vent.lineTo(cap.right() - bend, cap.top());
    vent.quadTo(cap.topRight(), cap.bottomRight());
    painter.setPen(QPen(tones.ink, 1.5));
    painter.drawPath(vent);
    painter.restore();
}

void drawChosenFrame(QPainter& painter, const QRectF& area, bool held, const MapTones& tones) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (held) {
        painter.setPen(QPen(tones.paper, 6));
        painter.drawRect(area);
        painter.setPen(QPen(tones.ink, 3));
        painter.drawRect(area.adjusted(-1.5, -1.5, 1.5, 1.5));
        painter.setPen(QPen(tones.ink, 1));
        painter.drawRect(area.adjusted(2, 2, -2, -2));
    } else {
        painter.setPen(QPen(tones.ink, 2));
        painter.drawRect(area.adjusted(1, 1, -1, -1));
    }
    painter.restore();
}

void PanelSign::paint(QPainter* painter) {
    const auto tones = MapTones::of(m_tones);
    const QRectF area(0, 0, width(), height());
    painter->fillRect(area, panelGround(m_mark, tones));
    drawPanelSigns(*painter, area, m_mark, tones);
    painter->setPen(tones.seam);
    painter->drawRect(area.adjusted(0.5, 0.5, -0.5, -0.5));
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/envelope/panel_sign.h"

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

/// The strip of a panel that shows its lot, beside the seam.
QRectF lotStrip(const QRectF& area) {
    const double width = std::clamp(std::round(area.width() / 7), 5.0, 6.0);
    return {area.left() + 1, area.top() + 1, width, area.height() - 1};
}

/// Where the other signs stand: beside the strip.
QRectF signArea(const QRectF& area, const PanelMark& mark) {
    return mark.lot > 0 ? area.adjusted(lotStrip(area).right() - area.left(), 0, 0, 0) : area;
}

/// Where the figure stands: below the arrow of a bound, else in the middle.
QRectF figureArea(const QRectF& area, const PanelMark& mark) {
    const auto signs = signArea(area, mark);
    return mark.reading == panel::Reading::Held ? signs.adjusted(0, signs.height() * 0.26, 0, 0) : signs;
}

/// How wide a text is drawn: slanted letters reach over their advance.
double drawnWidth(const QFontMetricsF& metrics, const QString& text) {
    return std::max(metrics.horizontalAdvance(text), metrics.tightBoundingRect(text).right());
}

/// The largest size at which the text fits into the panel, between 8 and 15 pixels; one size for all up to three
/// digits.
QFont figureFont(const PanelMark& mark, const QRectF& area) {
    QFont font = QGuiApplication::font();
    font.setItalic(mark.reading == panel::Reading::Forecast);
    const auto widest = mark.text.size() < 3 ? QStringLiteral("888") : mark.text;
    int size = static_cast<int>(std::clamp(area.height() * 0.42, 8.0, 15.0));
    for (; size > 8; --size) {
        font.setPixelSize(size);
        if (drawnWidth(QFontMetricsF(font), widest) <= area.width() - 3)
            break;
    }
    font.setPixelSize(size);
    return font;
}

void drawDiagonal(QPainter& painter, const QRectF& area, bool dashed, const MapTones& tones) {
    QPen pen(tones.fails, lineOf(area) * 1.8, Qt::SolidLine, Qt::FlatCap);
    if (dashed)
        pen.setDashPattern({1.5, 1.1});
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setPen(pen);
    painter.drawLine(area.bottomLeft(), area.topRight());
    painter.restore();
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

void drawDots(QPainter& painter, const QRectF& area, int dots, const MapTones& tones) {
    const double radius = lineOf(area);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tones.ink);
    for (int dot = 0; dot < dots; ++dot)
        painter.drawEllipse(
            QPointF(area.center().x() + (dot - (dots - 1) / 2.0) * radius * 3, area.bottom() - area.height() * 0.12),
            radius, radius);
    painter.setBrush(Qt::NoBrush);
}

/// Readings that the figure has behind it, as far as they are dotted.
int dotsOf(const PanelMark& mark) {
    const int behind = mark.reading == panel::Reading::Forecast ? mark.count : mark.count - 1;
    return std::clamp(behind, 0, mostDots);
}

/// Lines over the strip that step down by `step` and fall by `fall` from its left to its right.
void drawHatching(QPainter& painter, const QRectF& strip, double step, double fall) {
    for (double y = strip.top() + 1.5 - std::abs(fall); y < strip.bottom() + std::abs(fall); y += step)
        painter.drawLine(QPointF(strip.left(), y), QPointF(strip.right(), y + fall));
}

void drawBlocks(QPainter& painter, const QRectF& strip, double length, double gap, const QColor& ink) {
    for (double y = strip.top() + 1; y < strip.bottom(); y += length + gap)
        painter.fillRect(QRectF(strip.left(), y, strip.width(), length), ink);
}

void drawPoints(QPainter& painter, const QRectF& strip, const QColor& ink) {
    painter.setBrush(ink);
    painter.setPen(Qt::NoPen);
    for (double y = strip.top() + 3; y < strip.bottom() - 1; y += 5)
        painter.drawEllipse(QPointF(strip.center().x(), y), 1.5, 1.5);
}

void drawTexture(QPainter& painter, const QRectF& strip, int texture, const QColor& ink) {
    const double slope = strip.width();
    painter.setPen(QPen(ink, 1.2, Qt::SolidLine, Qt::FlatCap));
    switch (texture) {
    case 1:
        return drawHatching(painter, strip, 4, -slope);
    case 2:
        return painter.fillRect(QRectF(std::round(strip.center().x()) - 1, strip.top(), 2, strip.height()), ink);
    case 3:
        return drawPoints(painter, strip, ink);
    case 4:
        return drawBlocks(painter, strip, 1, 3, ink);
    case 5:
        return drawHatching(painter, strip, 4, slope);
    case 6:
        return painter.fillRect(strip, ink);
    case 7:
        drawHatching(painter, strip, slope + 2, -slope);
        return drawHatching(painter, strip, slope + 2, slope);
    default:
        return drawBlocks(painter, strip, 6, 4, ink);
    }
}

void drawLot(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    const auto strip = lotStrip(area);
    painter.save();
    painter.setClipRect(strip, Qt::IntersectClip);
    painter.fillRect(strip, tones.paper);
    drawTexture(painter, strip.adjusted(0, 0, -1, 0), lotTexture(mark.lot), tones.ink);
    painter.fillRect(QRectF(strip.right() - 1, strip.top(), 1, strip.height()), tones.seam);
    painter.restore();
}

}

int lotTexture(int lot) { return lot > 0 ? (lot - 1) % lotTextures + 1 : 0; }

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

void drawPanelShapes(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    const auto signs = signArea(area, mark);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    if (mark.reading == panel::Reading::Fails || mark.expectedBelow())
        drawDiagonal(painter, signs, mark.expectedBelow(), tones);
    if (mark.defect)
        drawDefect(painter, signs, tones);
    if (mark.repaired)
        drawStitches(painter, signs, tones);
    if (mark.reading == panel::Reading::Held)
        drawArrowUp(painter, signs, tones);
    if (mark.asked)
        drawRing(painter, signs, mark, tones);
    drawDots(painter, signs, dotsOf(mark), tones);
    if (mark.lot > 0)
        drawLot(painter, area, mark, tones);
    painter.restore();
}

void drawPanelFigure(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    constexpr double leastToRead = 18;
    const auto field = figureArea(area, mark);
    if (mark.text.isEmpty() || field.width() < leastToRead)
        return;
    const auto font = figureFont(mark, field);
    const QFontMetricsF metrics(font);
    const auto text = metrics.elidedText(mark.text, Qt::ElideRight, field.width() - 2);
    const QPointF foot(field.center().x() - drawnWidth(metrics, text) / 2,
                       field.center().y() + metrics.capHeight() / 2);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (mark.reading == panel::Reading::Fails || mark.expectedBelow()) {
        // The diagonal keeps clear of the figure.
        QPainterPath outline;
        outline.addText(foot, font, text);
        painter.strokePath(outline, QPen(panelGround(mark, tones), 3.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    }
    painter.setFont(font);
    painter.setPen(tones.ink);
    painter.drawText(foot, text);
    painter.restore();
}

void drawPanelSigns(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones) {
    drawPanelShapes(painter, area, mark, tones);
    drawPanelFigure(painter, area, mark, tones);
}

std::uint32_t shapesOf(const PanelMark& mark) {
    const auto flag = [](bool on, int at) { return std::uint32_t{on} << at; };
    const bool fails = mark.reading == panel::Reading::Fails;
    return static_cast<std::uint32_t>(lotTexture(mark.lot)) | static_cast<std::uint32_t>(dotsOf(mark)) << 4U |
           flag(mark.asked, 8) | flag(mark.asked && mark.reading == panel::Reading::None, 9) | flag(mark.repaired, 10) |
           flag(mark.defect, 11) | flag(mark.reading == panel::Reading::Held, 12) | flag(fails, 13) |
           flag(mark.expectedBelow(), 14);
}

PanelFigure figureOf(const PanelMark& mark) {
    return {mark.text, mark.reading == panel::Reading::Forecast, mark.reading == panel::Reading::Held,
            mark.reading == panel::Reading::Fails || mark.expectedBelow(), mark.lot > 0};
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

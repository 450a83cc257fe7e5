// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/parts/line_sign.h"

#include "screen/parts/gore_sign.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <numbers>

namespace crownring::screen {

namespace {

/// All shapes are drawn on a field of 24 by 24.
void polyline(QPainterPath& path, std::initializer_list<QPointF> points) {
    bool first = true;
    for (const auto& point : points) {
        if (first)
            path.moveTo(point);
        else
            path.lineTo(point);
        first = false;
    }
}

QPainterPath balloonShape() {
    QPainterPath path;
    path.moveTo(9.5, 17);
    path.cubicTo(3, 12, 2.5, 2.5, 12, 2.5);
    path.cubicTo(21.5, 2.5, 21, 12, 14.5, 17);
    path.closeSubpath();
    path.addPath(goreOutline(QRectF(8.6, 2.5, 6.8, 15)));
    path.addRect(QRectF(10, 19, 4, 3));
    return path;
}

QPainterPath sunShape() {
    QPainterPath path;
    path.addEllipse(QPointF(12, 12), 4.2, 4.2);
    for (int ray = 0; ray < 8; ++ray) {
        const double angle = ray * std::numbers::pi / 4;
        const QPointF way(std::cos(angle), std::sin(angle));
        path.moveTo(QPointF(12, 12) + way * 7);
        path.lineTo(QPointF(12, 12) + way * 9.6);
    }
    return path;
}

QPainterPath horizonShape() {
    QPainterPath path;
    polyline(path, {{2, 19}, {22, 19}});
    path.addPath(goreOutline(QRectF(3.5, 9, 5, 8.5)));
    path.addPath(goreOutline(QRectF(9.5, 5, 5, 12.5)));
    path.addPath(goreOutline(QRectF(15.5, 10.5, 5, 7)));
    return path;
}

QPainterPath moonShape() {
    QPainterPath full;
    full.addEllipse(QPointF(11.5, 12.5), 8.5, 8.5);
    QPainterPath bite;
    bite.addEllipse(QPointF(16, 9), 7.2, 7.2);
    return full.subtracted(bite);
}

QPainterPath pathOf(LineSign::Shape shape) {
    QPainterPath path;
    switch (shape) {
    case LineSign::None:
        break;
    case LineSign::Next:
        return horizonShape();
    case LineSign::Balloons:
        return balloonShape();
    case LineSign::Bench: // a clipboard with a tick
        polyline(path, {{9, 4}, {5, 4}, {5, 21}, {19, 21}, {19, 4}, {15, 4}});
        path.addRoundedRect(QRectF(9, 2.5, 6, 4), 1, 1);
        polyline(path, {{8.5, 13.5}, {11, 16.5}, {15.5, 10.5}});
        break;
    case LineSign::Rules:
        polyline(path, {{5, 3}, {15, 3}, {19, 7}, {19, 21}, {5, 21}, {5, 3}});
        polyline(path, {{8, 9}, {16, 9}});
        polyline(path, {{8, 13}, {16, 13}});
        polyline(path, {{8, 17}, {13, 17}});
        break;
    case LineSign::Record:
        path.addRoundedRect(QRectF(4, 3, 16, 5), 1.5, 1.5);
        path.addRoundedRect(QRectF(4, 16, 16, 5), 1.5, 1.5);
        polyline(path, {{8, 8}, {8, 16}});
        polyline(path, {{16, 8}, {16, 16}});
        break;
    case LineSign::Glass:
        path.addEllipse(QPointF(10, 10), 6.5, 6.5);
        polyline(path, {{15, 15}, {21, 21}});
        break;
    case LineSign::Sun:
        return sunShape();
    case LineSign::Moon:
        return moonShape();
    case LineSign::Back:
        polyline(path, {{14.5, 5}, {7.5, 12}, {14.5, 19}});
        break;
    case LineSign::Forward:
        polyline(path, {{9.5, 5}, {16.5, 12}, {9.5, 19}});
        break;
    case LineSign::Close:
        polyline(path, {{6, 6}, {18, 18}});
        polyline(path, {{18, 6}, {6, 18}});
        break;
    case LineSign::Tick:
        polyline(path, {{5, 12.5}, {10, 17.5}, {19.5, 6.5}});
        break;
    case LineSign::Plus:
        polyline(path, {{12, 5}, {12, 19}});
        polyline(path, {{5, 12}, {19, 12}});
        break;
    case LineSign::Minus:
        polyline(path, {{5, 12}, {19, 12}});
        break;
    case LineSign::Month:
        path.addRoundedRect(QRectF(3.5, 5, 17, 16), 1.5, 1.5);
        polyline(path, {{3.5, 10}, {20.5, 10}});
        polyline(path, {{8, 2.5}, {8, 6.5}});
        polyline(path, {{16, 2.5}, {16, 6.5}});
        path.addRect(QRectF(14, 14, 3, 3));
        break;
    }
    return path;
}

}

LineSign::LineSign(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    setImplicitSize(24, 24);
}

void LineSign::paint(QPainter* painter) {
    painter->setRenderHint(QPainter::Antialiasing);
    painter->scale(width() / 24, height() / 24);
    painter->strokePath(pathOf(m_shape), QPen(m_tone, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

void LineSign::setShape(Shape shape) {
    if (shape == m_shape)
        return;
    m_shape = shape;
    emit shapeChanged();
    update();
}

void LineSign::setTone(const QColor& tone) {
    if (tone == m_tone)
        return;
    m_tone = tone;
    emit toneChanged();
    update();
}

}

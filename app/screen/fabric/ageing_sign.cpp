// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/fabric/ageing_sign.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

constexpr double crossReach = 0.36; ///< of a sign's size

/// One mark being drawn: its middle line, its measures, its tone.
struct Stroke {
    QPainter& painter;
    AgeingMark mark;
    QPointF at;
    double size;
    QColor tone;
    QColor ground;

    /// In whole pixels: at whole pixels too, its edges are sharp.
    [[nodiscard]] double line() const { return std::max(1.0, std::round(size / 8)); }
    [[nodiscard]] QBrush fill() const { return mark.hollow ? ground : tone; }
    [[nodiscard]] QPen pen() const { return {tone, line(), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin}; }
    void bar(double y, double reach) const {
        painter.setPen(pen());
        painter.drawLine(QPointF(at.x() - reach, y), QPointF(at.x() + reach, y));
    }
};

void drawDisc(const Stroke& stroke) {
    // What fails is a ring round its cross.
    const double radius = stroke.mark.fails ? stroke.size * 0.46 : stroke.size / 4;
    stroke.painter.setPen(stroke.pen());
    stroke.painter.setBrush(stroke.fill());
    stroke.painter.drawEllipse(stroke.at, radius, radius);
}

/// @param way -1 up, 1 down
void drawArrow(const Stroke& stroke, double way) {
    const double reach = stroke.size / 3.5;
    const double neck = stroke.at.y() + way * stroke.size * 0.45;
    stroke.bar(stroke.at.y(), reach);
    stroke.painter.drawLine(stroke.at, QPointF(stroke.at.x(), neck));
    stroke.painter.setBrush(stroke.fill());
    stroke.painter.drawPolygon(QPolygonF({{stroke.at.x() - reach, neck},
                                          {stroke.at.x(), stroke.at.y() + way * stroke.size},
                                          {stroke.at.x() + reach, neck}}));
}

/// Never so short that its two ends are one.
void drawBetween(const Stroke& stroke, double upper) {
    const double half = std::max((stroke.at.y() - upper) / 2, stroke.size / 4);
    const double middle = (stroke.at.y() + upper) / 2;
    const double width = stroke.size / 4;
    stroke.painter.setPen(stroke.pen());
    stroke.painter.setBrush(stroke.fill());
    stroke.painter.drawRect(QRectF(stroke.at.x() - width / 2, middle - half, width, 2 * half));
    stroke.bar(middle - half, width * 1.3);
    stroke.bar(middle + half, width * 1.3);
}

/// On a ground of its own, so that it is read over what it crosses out.
void drawCross(const Stroke& stroke, QPointF at) {
    const double reach = stroke.size * crossReach;
    const QPointF rising(reach, -reach);
    const QPointF falling(reach, reach);
    for (const auto& pen : {QPen(stroke.ground, stroke.line() * 3), QPen(stroke.tone, stroke.line() * 1.5)}) {
        stroke.painter.setPen(pen);
        stroke.painter.drawLine(at - rising, at + rising);
        stroke.painter.drawLine(at - falling, at + falling);
    }
}

}

AgeingTones AgeingTones::of(const QList<QColor>& tones) {
    AgeingTones of;
    QColor* const order[] = {&of.ink, &of.fails, &of.paper};
    qsizetype at = 0;
    for (auto* tone : order) {
        if (at == tones.size())
            break;
        *tone = tones[at++];
    }
    return of;
}

void drawAgeingMark(QPainter& painter, const AgeingMark& mark, QPointF at, double upper, double size,
                    const AgeingTones& tones) {
    const Stroke stroke{painter, mark, at, size, mark.fails ? tones.fails : tones.ink, tones.paper};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    switch (mark.kind) {
    case ageing::Kind::Value:
        // A cross alone says where the value lies; the disc below it would only blur it.
        if (!mark.fails || mark.hollow)
            drawDisc(stroke);
        break;
    case ageing::Kind::AtLeast:
        drawArrow(stroke, -1);
        break;
    case ageing::Kind::AtMost:
        drawArrow(stroke, 1);
        break;
    case ageing::Kind::Between:
        drawBetween(stroke, upper);
        break;
    }
    if (mark.fails)
        drawCross(stroke, mark.kind == ageing::Kind::Between ? QPointF(at.x(), (at.y() + upper) / 2) : at);
    painter.restore();
}

void AgeingSign::paint(QPainter* painter) {
    const bool arrow = m_mark.kind == ageing::Kind::AtLeast || m_mark.kind == ageing::Kind::AtMost;
    const double size = std::min(width(), height()) * (arrow && m_mark.fails ? 0.66 : 0.8);
    const QPointF middle(width() / 2, height() / 2);
    // The cross of an arrow stands out beyond its foot.
    const double foot = (size - (arrow && m_mark.fails ? size * crossReach : 0)) / 2;
    const double way = m_mark.kind == ageing::Kind::Value ? 0 : m_mark.kind == ageing::Kind::AtMost ? -1 : 1;
    drawAgeingMark(*painter, m_mark, middle + QPointF(0, way * foot), middle.y() - foot, size,
                   AgeingTones::of(m_tones));
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The gore gauge's drawing: one gore, pointed at crown and mouth, filled from the mouth as the interval is used. Every
/// standing has a shape of its own, so that it can be told without colour.

#include "rules/due/reckoned.h"

#include <QColor>
#include <QQuickPaintedItem>

class QPainterPath;

namespace crownring::screen {

/// Draws one sign into a rectangle. @param used share of the interval used, 0 to 1; negative when unknown
void drawGore(QPainter& painter, const QRectF& area, Reckoned reckoned, double used, const QColor& tone);
/// The outline of the gore itself.
[[nodiscard]] QPainterPath goreOutline(const QRectF& area);

class GoreSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// As what it is reckoned, 0 worst; -1 draws nothing.
    Q_PROPERTY(int standing READ standing WRITE setStanding NOTIFY standingChanged FINAL)
    Q_PROPERTY(double used READ used WRITE setUsed NOTIFY usedChanged FINAL)
    Q_PROPERTY(QColor tone READ tone WRITE setTone NOTIFY toneChanged FINAL)

public:
    explicit GoreSign(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] int standing() const { return m_standing; }
    void setStanding(int standing);
    [[nodiscard]] double used() const { return m_used; }
    void setUsed(double used);
    [[nodiscard]] QColor tone() const { return m_tone; }
    void setTone(const QColor& tone);

signals:
    void standingChanged();
    void usedChanged();
    void toneChanged();

private:
    int m_standing = -1;
    double m_used = -1;
    QColor m_tone{Qt::black};
};

}

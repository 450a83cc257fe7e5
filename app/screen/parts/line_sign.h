// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The few line drawings of the frame: the places, search, the day, a month's leaf and arrows. Drawn, so that they take
/// any tone and size.

#include <QColor>
#include <QQuickPaintedItem>

namespace crownring::screen {

class LineSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(Shape shape READ shape WRITE setShape NOTIFY shapeChanged FINAL)
    Q_PROPERTY(QColor tone READ tone WRITE setTone NOTIFY toneChanged FINAL)

public:
    enum Shape {
        None,
        Next,
        Balloons,
        Bench,
        Rules,
        Record,
        Glass,
        Sun,
        Back,
        Forward,
        Close,
        Tick,
        Plus,
        Minus,
        Moon,
        Month
    };
    Q_ENUM(Shape)

    explicit LineSign(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] Shape shape() const { return m_shape; }
    void setShape(Shape shape);
    [[nodiscard]] QColor tone() const { return m_tone; }
    void setTone(const QColor& tone);

signals:
    void shapeChanged();
    void toneChanged();

private:
    Shape m_shape = None;
    QColor m_tone{Qt::black};
};

}

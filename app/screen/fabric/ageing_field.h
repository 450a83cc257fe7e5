// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The readings, laid over the plot of the ageing chart: each where its hours and its figure lie, of the same size
/// however large the plot. Failures are drawn last, so that nothing hides them.

#include "screen/fabric/ageing_chart.h"
#include "screen/fabric/ageing_sign.h"

namespace crownring::screen {

class AgeingField : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::AgeingChart* chart READ chart WRITE setChart NOTIFY chartChanged FINAL)
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY tonesChanged FINAL)
    /// Height of an arrow.
    Q_PROPERTY(double size READ size WRITE setSize NOTIFY sizeChanged FINAL)
    /// How far signs may reach over the edges of the plot, which this item is larger by.
    Q_PROPERTY(double overhang READ overhang WRITE setOverhang NOTIFY overhangChanged FINAL)

public:
    using QQuickPaintedItem::QQuickPaintedItem;
    void paint(QPainter* painter) override;

    [[nodiscard]] AgeingChart* chart() const { return m_chart; }
    void setChart(AgeingChart* chart);
    [[nodiscard]] QList<QColor> tones() const { return m_tones; }
    void setTones(const QList<QColor>& tones);
    [[nodiscard]] double size() const { return m_size; }
    void setSize(double size);
    [[nodiscard]] double overhang() const { return m_overhang; }
    void setOverhang(double overhang);

signals:
    void chartChanged();
    void tonesChanged();
    void sizeChanged();
    void overhangChanged();

private:
    void draw(QPainter& painter, const AgeingReading& reading, const AgeingTones& tones) const;
    [[nodiscard]] double heightOf(double value) const;

    AgeingChart* m_chart = nullptr;
    QList<QColor> m_tones;
    double m_size = 0;
    double m_overhang = 0;
};

}

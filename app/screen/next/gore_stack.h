// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One bin of the horizon: small gores side by side and upward from the ground line, worst lowest. Where the fullest
/// bin of the lane has not room for all of its rows, each sign stands for several, by the same measure in every bin, so
/// that heights compare; the number itself is written above.

#include <QColor>
#include <QList>
#include <QQuickPaintedItem>

namespace crownring::screen {

class GoreStack : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// How many of each sort (`Reckoned`), in its order.
    Q_PROPERTY(QList<int> tally READ tally WRITE setTally NOTIFY tallyChanged FINAL)
    /// The fullest bin of the lane and the width that it has: they give the measure.
    Q_PROPERTY(int tallest READ tallest WRITE setTallest NOTIFY tallestChanged FINAL)
    Q_PROPERTY(double measureWidth READ measureWidth WRITE setMeasureWidth NOTIFY measureWidthChanged FINAL)
    /// How high the stack is drawn.
    Q_PROPERTY(double stacked READ stacked NOTIFY stackedChanged FINAL)
    /// Of the sorts, in the same order.
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY tonesChanged FINAL)

public:
    explicit GoreStack(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] QList<int> tally() const { return m_tally; }
    void setTally(const QList<int>& tally);
    [[nodiscard]] QList<QColor> tones() const { return m_tones; }
    void setTones(const QList<QColor>& tones);

    [[nodiscard]] int tallest() const { return m_tallest; }
    void setTallest(int tallest);
    [[nodiscard]] double measureWidth() const { return m_measureWidth; }
    void setMeasureWidth(double width);
    [[nodiscard]] double stacked() const;

    /// How many signs stand for each standing when only `room` fit: at least one for each that occurs, worst first.
    [[nodiscard]] static QList<int> thinned(const QList<int>& tally, int room);

signals:
    void tallyChanged();
    void tallestChanged();
    void measureWidthChanged();
    void stackedChanged();
    void tonesChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    [[nodiscard]] double signWidth() const;
    [[nodiscard]] double signHeight() const;
    [[nodiscard]] QList<int> signs() const;
    void restack();

    int m_tallest = 1;
    double m_measureWidth = 0;
    QList<int> m_tally;
    QList<QColor> m_tones;
};

}

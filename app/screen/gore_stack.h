// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One bin of the horizon: small gores side by side and upward from the ground line, worst lowest, as many as there is
/// room for; where there is not room for all, each stands for several and the bin's number is written above.

#include <QColor>
#include <QList>
#include <QQuickPaintedItem>

namespace crownring::screen {

class GoreStack : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// How many of each standing, worst first.
    Q_PROPERTY(QList<int> tally READ tally WRITE setTally NOTIFY tallyChanged FINAL)
    /// The tones of the standings, worst first.
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY tonesChanged FINAL)

public:
    explicit GoreStack(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] QList<int> tally() const { return m_tally; }
    void setTally(const QList<int>& tally);
    [[nodiscard]] QList<QColor> tones() const { return m_tones; }
    void setTones(const QList<QColor>& tones);

    /// How many signs stand for each standing when only `room` fit: at least one for each that occurs, worst first.
    [[nodiscard]] static QList<int> thinned(const QList<int>& tally, int room);

signals:
    void tallyChanged();
    void tonesChanged();

private:
    QList<int> m_tally;
    QList<QColor> m_tones;
};

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How one reading is drawn on the ageing chart. A value is a disc; "at least" is a bar at the figure with an arrow up
/// from it, "at most" with an arrow down; "between" is an upright bar from one figure to the other. What fails is
/// crossed out, and only then in the tone of failures; what is of other fabric is hollow.

#include "screen/fabric/ageing_curve.h"

#include <QColor>
#include <QPointF>
#include <QQuickPaintedItem>

namespace crownring::screen {

/// The tones of the signs, in the order in which QML hands them over.
struct AgeingTones {
    QColor ink{Qt::black};
    QColor fails{Qt::red};
    QColor paper{Qt::white}; ///< fills what is hollow

    [[nodiscard]] static AgeingTones of(const QList<QColor>& tones);
};

struct AgeingMark {
    ageing::Kind kind = ageing::Kind::Value;
    bool fails = false;
    bool hollow = false;
    bool operator==(const AgeingMark&) const = default;
};

/// @param at where the figure lies @param upper where the other figure of Between lies, above it
/// @param size height of an arrow, and about the double width of a disc
void drawAgeingMark(QPainter& painter, const AgeingMark& mark, QPointF at, double upper, double size,
                    const AgeingTones& tones);

/// One sign on its own, for the legend and the table.
class AgeingSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::ageing::Kind kind READ kind WRITE setKind NOTIFY changed FINAL)
    Q_PROPERTY(bool fails READ fails WRITE setFails NOTIFY changed FINAL)
    Q_PROPERTY(bool hollow READ hollow WRITE setHollow NOTIFY changed FINAL)
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY changed FINAL)

public:
    using QQuickPaintedItem::QQuickPaintedItem;
    void paint(QPainter* painter) override;
    [[nodiscard]] ageing::Kind kind() const { return m_mark.kind; }
    void setKind(ageing::Kind kind) { take(m_mark.kind, kind); }
    [[nodiscard]] bool fails() const { return m_mark.fails; }
    void setFails(bool fails) { take(m_mark.fails, fails); }
    [[nodiscard]] bool hollow() const { return m_mark.hollow; }
    void setHollow(bool hollow) { take(m_mark.hollow, hollow); }
    [[nodiscard]] QList<QColor> tones() const { return m_tones; }
    void setTones(const QList<QColor>& tones) { take(m_tones, tones); }

signals:
    void changed();

private:
    template <class T>
    void take(T& have, const T& next) {
        if (have == next)
            return;
        have = next;
        emit changed();
        update();
    }

    AgeingMark m_mark;
    QList<QColor> m_tones;
};

}

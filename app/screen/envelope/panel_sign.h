// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How one panel of the envelope map is drawn. The ground is one hue that fades as the figure nears its limit; all else
/// is told by shape: an arrow up for a bound, a diagonal for a failure, dashed where it is expected, a slanted figure
/// for a forecast, a stitched edge for a repair, a ring where a reading is asked for, a filled corner for an open
/// defect, dots for earlier readings, a textured strip at the left edge for the fabric's lot.

#include "screen/envelope/panel_mark.h"

#include <QColor>
#include <QQuickPaintedItem>

#include <cstdint>

namespace crownring::screen {

/// The tones of the map, in the order in which QML hands them over.
struct MapTones {
    QColor paper{Qt::white};    ///< panels never read
    QColor weak{Qt::lightGray}; ///< at the limit
    QColor strong{Qt::gray};    ///< at twice the limit and above
    QColor ink{Qt::black};
    QColor fails{Qt::red};
    QColor seam{Qt::gray};

    [[nodiscard]] static MapTones of(const QList<QColor>& tones);
};

/// The ground of a panel.
[[nodiscard]] QColor panelGround(const PanelMark& mark, const MapTones& tones);
/// Everything of a panel but its ground.
void drawPanelSigns(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones);
/// The same in two parts: shapes and the lot's strip; over them the figure.
void drawPanelShapes(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones);
void drawPanelFigure(QPainter& painter, const QRectF& area, const PanelMark& mark, const MapTones& tones);

/// Marks of equal number have the same shapes; 0 without any.
[[nodiscard]] std::uint32_t shapesOf(const PanelMark& mark);

/// Marks of equal figure have it drawn alike.
struct PanelFigure {
    QString text;
    bool slanted = false;
    bool lowered = false;
    bool onDiagonal = false;
    bool besideStrip = false;
    bool operator==(const PanelFigure&) const = default;
};
[[nodiscard]] PanelFigure figureOf(const PanelMark& mark);

/// As many lots as can be told apart; further ones begin anew.
inline constexpr int lotTextures = 8;
/// From 1; 0 for no lot.
[[nodiscard]] int lotTexture(int lot);

/// The parachute vent above the crown.
void drawVent(QPainter& painter, const QRectF& area, const MapTones& tones);
/// The frame of the chosen panel. @param held whether the keyboard is there
void drawChosenFrame(QPainter& painter, const QRectF& area, bool held, const MapTones& tones);

/// One panel on its own, for the legend.
class PanelSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::panel::Reading reading READ reading WRITE setReading NOTIFY changed FINAL)
    Q_PROPERTY(double share READ share WRITE setShare NOTIFY changed FINAL)
    Q_PROPERTY(QString figure READ figure WRITE setFigure NOTIFY changed FINAL)
    Q_PROPERTY(int lot READ lot WRITE setLot NOTIFY changed FINAL)
    Q_PROPERTY(int readings READ readings WRITE setReadings NOTIFY changed FINAL)
    Q_PROPERTY(bool asked READ asked WRITE setAsked NOTIFY changed FINAL)
    Q_PROPERTY(bool repaired READ repaired WRITE setRepaired NOTIFY changed FINAL)
    Q_PROPERTY(bool defect READ defect WRITE setDefect NOTIFY changed FINAL)
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY changed FINAL)

public:
    using QQuickPaintedItem::QQuickPaintedItem;
    void paint(QPainter* painter) override;
    [[nodiscard]] panel::Reading reading() const { return m_mark.reading; }
    void setReading(panel::Reading reading) { take(m_mark.reading, reading); }
    [[nodiscard]] double share() const { return m_mark.share; }
    void setShare(double share) { take(m_mark.share, share); }
    [[nodiscard]] QString figure() const { return m_mark.text; }
    void setFigure(const QString& figure) { take(m_mark.text, figure); }
    [[nodiscard]] int lot() const { return m_mark.lot; }
    void setLot(int lot) { take(m_mark.lot, lot); }
    [[nodiscard]] int readings() const { return m_mark.count; }
    void setReadings(int readings) { take(m_mark.count, readings); }
    [[nodiscard]] bool asked() const { return m_mark.asked; }
    void setAsked(bool asked) { take(m_mark.asked, asked); }
    [[nodiscard]] bool repaired() const { return m_mark.repaired; }
    void setRepaired(bool repaired) { take(m_mark.repaired, repaired); }
    [[nodiscard]] bool defect() const { return m_mark.defect; }
    void setDefect(bool defect) { take(m_mark.defect, defect); }
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

    PanelMark m_mark;
    QList<QColor> m_tones;
};

}

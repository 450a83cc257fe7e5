// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The envelope map's drawing and its handling: gores across, panel rows up from the mouth, the vent on top. It draws
/// what the marks say and tells which panel was tapped or chosen; it judges nothing.
///
/// It takes the room that it is given as long as panels stay as large as `leastPanel`; else it is larger than the room,
/// and whoever holds it scrolls. Drawn with images of the scene graph, so that it works without a graphics card, and
/// only rows that changed are drawn anew.

#include "screen/envelope/panel_grid.h"
#include "screen/envelope/panel_model.h"
#include "screen/envelope/panel_sign.h"

#include <QPointer>
#include <QQuickItem>

namespace crownring::screen {

class UnrolledEnvelope : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    /// As on the data plate; 0 when not known, then nothing is drawn.
    Q_PROPERTY(int gores READ gores WRITE setGores NOTIFY gridChanged FINAL)
    Q_PROPERTY(int rows READ rows WRITE setRows NOTIFY gridChanged FINAL)
    Q_PROPERTY(crownring::screen::PanelModel* panels READ panels WRITE setPanels NOTIFY panelsChanged FINAL)
    /// In the order of MapTones.
    Q_PROPERTY(QList<QColor> tones READ tones WRITE setTones NOTIFY tonesChanged FINAL)
    Q_PROPERTY(double roomWidth READ roomWidth WRITE setRoomWidth NOTIFY gridChanged FINAL)
    Q_PROPERTY(double roomHeight READ roomHeight WRITE setRoomHeight NOTIFY gridChanged FINAL)
    /// The least width and height of a panel, and the most.
    Q_PROPERTY(double leastPanel READ leastPanel WRITE setLeastPanel NOTIFY gridChanged FINAL)
    Q_PROPERTY(double mostPanel READ mostPanel WRITE setMostPanel NOTIFY gridChanged FINAL)
    Q_PROPERTY(double ventHeight READ ventHeight WRITE setVentHeight NOTIFY gridChanged FINAL)
    Q_PROPERTY(double panelWidth READ panelWidth NOTIFY gridChanged FINAL)
    Q_PROPERTY(double panelHeight READ panelHeight NOTIFY gridChanged FINAL)
    /// The chosen panel; 0 and 0 when none is.
    Q_PROPERTY(int chosenGore READ chosenGore NOTIFY chosenChanged FINAL)
    Q_PROPERTY(int chosenRow READ chosenRow NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QRectF chosenArea READ chosenArea NOTIFY chosenAreaChanged FINAL)
    /// "gore 3, row 12: held at 133 N"; empty when none is chosen.
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY chosenTextChanged FINAL)
    /// How many panels the plan still asks for.
    Q_PROPERTY(int asked READ asked NOTIFY marksChanged FINAL)
    /// How many marks lie outside the gores and rows given, and so are not drawn.
    Q_PROPERTY(int outside READ outside NOTIFY marksChanged FINAL)

public:
    /// More than any envelope has; what is above is a slip of the keyboard.
    static constexpr int mostGores = 120;
    static constexpr int mostRows = 80;

    explicit UnrolledEnvelope(QQuickItem* parent = nullptr);
    ~UnrolledEnvelope() override;

    [[nodiscard]] int gores() const { return m_grid.gores; }
    void setGores(int gores);
    [[nodiscard]] int rows() const { return m_grid.rows; }
    void setRows(int rows);
    [[nodiscard]] PanelModel* panels() const { return m_panels; }
    void setPanels(PanelModel* panels);
    [[nodiscard]] QList<QColor> tones() const { return m_toneList; }
    void setTones(const QList<QColor>& tones);
    [[nodiscard]] double roomWidth() const { return m_room.width(); }
    void setRoomWidth(double width);
    [[nodiscard]] double roomHeight() const { return m_room.height(); }
    void setRoomHeight(double height);
    [[nodiscard]] double leastPanel() const { return m_least; }
    void setLeastPanel(double least);
    [[nodiscard]] double mostPanel() const { return m_most; }
    void setMostPanel(double most);
    [[nodiscard]] double ventHeight() const { return m_grid.vent; }
    void setVentHeight(double height);
    [[nodiscard]] double panelWidth() const { return m_grid.panel.width(); }
    [[nodiscard]] double panelHeight() const { return m_grid.panel.height(); }
    [[nodiscard]] int chosenGore() const { return m_chosen.gore; }
    [[nodiscard]] int chosenRow() const { return m_chosen.row; }
    [[nodiscard]] QRectF chosenArea() const;
    [[nodiscard]] QString chosenText() const;
    [[nodiscard]] int asked() const { return m_asked; }
    [[nodiscard]] int outside() const { return m_outside; }

    /// Chooses a panel without telling that it was tapped; nothing is chosen when the envelope has no such panel.
    Q_INVOKABLE void choose(int gore, int row);
    /// Chooses the next panel that is still asked for, in the order of the plan and round. False when there is none.
    Q_INVOKABLE bool chooseNextAsked();
    /// What a panel says in words.
    [[nodiscard]] QString textOf(Panel at) const;

signals:
    void gridChanged();
    void panelsChanged();
    void tonesChanged();
    void marksChanged();
    void chosenChanged();
    void chosenAreaChanged();
    void chosenTextChanged();
    /// A panel was tapped, or chosen with Return or Space.
    void tapped(int gore, int row);

protected:
    QSGNode* updatePaintNode(QSGNode* old, UpdatePaintNodeData*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;

private:
    [[nodiscard]] const PanelMark* markAt(Panel at) const;
    template <class T>
    void shape(T& have, T next);
    void fit();
    void readMarks();
    [[nodiscard]] static QStringList sayings(const PanelMark& mark);
    [[nodiscard]] static QStringList figureSayings(const PanelMark& mark);
    void redrawAll();
    void choose(Panel at);
    void step(PanelStep step);

    PanelGrid m_grid;
    QSizeF m_room;
    double m_least = 44;
    double m_most = 96;
    QPointer<PanelModel> m_panels;
    std::vector<int> m_markOf; ///< number of each panel's mark, -1 without one; by row from the mouth, then gore
    QList<QColor> m_toneList;
    MapTones m_tones;
    Panel m_chosen;
    std::optional<Panel> m_pressed;
    int m_asked = 0;
    int m_outside = 0;
    bool m_anew = true; ///< everything is drawn anew
};

}

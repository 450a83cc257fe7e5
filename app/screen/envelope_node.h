// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The envelope map in the scene graph: one rectangle a panel for its ground, one image for its signs. Panels with
/// equal signs share an image. Lives on the thread that renders. Only rectangles and images, which are drawn in
/// software too; and every layer is a transform, since the software renderer of Qt 6.4 forgets where it is when
/// something is added below a plain node.

#include "panel_grid.h"
#include "panel_sign.h"

#include <QHash>
#include <QSGNode>
#include <QSGTexture>

#include <functional>
#include <memory>
#include <vector>

class QQuickWindow;
class QSGImageNode;
class QSGRectangleNode;

namespace crownring::screen {

class EnvelopeNode : public QSGTransformNode {
public:
    /// Images kept beyond those that are shown: a forecast that is slid to and fro asks for the same figures again.
    static constexpr qsizetype imagesSpare = 600;

    EnvelopeNode(QQuickWindow& window, const PanelGrid& grid, const MapTones& tones);
    ~EnvelopeNode() override;

    /// Shows a panel of the grid; touches nothing when it is shown so already. @param mark null: never read
    void show(Panel at, const PanelMark* mark);
    /// The frame around the chosen panel.
    void frame(std::optional<Panel> at, bool held);
    /// Lets go of images that no panel shows any more, once there are many.
    void forgetUnused();
    [[nodiscard]] qsizetype imagesKept() const { return m_sheets.size(); }

private:
    struct Shown {
        QSGRectangleNode* ground = nullptr;
        QSGImageNode* signs = nullptr;
        QString look;
    };
    struct Sheet {
        std::unique_ptr<QSGTexture> texture;
        int users = 0;
    };

    [[nodiscard]] std::unique_ptr<QSGTexture> paint(QSizeF size, const std::function<void(QPainter&)>& draw) const;
    [[nodiscard]] QSGImageNode* image(QSGTexture& texture, const QRectF& area) const;
    void showGround(Shown& shown, const QRectF& area, const PanelMark* mark);
    void showSigns(Shown& shown, const QRectF& area, const PanelMark* mark);
    void drawSeams();
    void drawVentSheet();

    QQuickWindow& m_window;
    PanelGrid m_grid;
    MapTones m_tones;
    std::vector<Shown> m_panels;
    QHash<QString, std::shared_ptr<Sheet>> m_sheets; ///< by the look of the signs
    std::unique_ptr<QSGTexture> m_vent;
    std::unique_ptr<QSGTexture> m_frames[2]; ///< chosen, and with the keyboard there
    QSGNode* m_grounds;
    QSGNode* m_seams;
    QSGNode* m_signs;
    QSGImageNode* m_frame = nullptr;
};

}

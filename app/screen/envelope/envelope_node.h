// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The envelope map in the scene graph: one image a row of panels, put together from images that panels of equal signs
/// share. Lives on the thread that renders.
///
/// A row is one image since the software renderer of Qt works out for each node what of it is covered and what has
/// changed: with a node a panel, that alone took longer than a frame. It is drawn anew as a whole and not kept here, so
/// that an envelope costs the memory of its textures only. Every layer is a transform, since that renderer also forgets
/// where it is when something is added below a plain node.

#include "screen/envelope/panel_grid.h"
#include "screen/envelope/panel_sign.h"

#include <QHash>
#include <QImage>
#include <QSGNode>
#include <QSGTexture>

#include <functional>
#include <memory>
#include <vector>

class QQuickWindow;
class QSGImageNode;

namespace crownring::screen {

[[nodiscard]] inline std::size_t qHash(const PanelFigure& figure, std::size_t seed = 0) {
    return qHashMulti(seed, figure.text, figure.slanted, figure.lowered, figure.onDiagonal, figure.besideStrip);
}

class EnvelopeNode : public QSGTransformNode {
public:
    /// Images kept beyond those that are shown: a forecast that is slid to and fro asks for the same figures again.
    static constexpr qsizetype imagesSpare = 600;

    EnvelopeNode(QQuickWindow& window, const PanelGrid& grid, const MapTones& tones);
    ~EnvelopeNode() override;

    /// Takes what a panel of the grid is to show. @param mark null: never read
    void show(Panel at, const PanelMark* mark);
    /// Draws the rows that show something else now.
    void draw();
    /// The frame around the chosen panel.
    void frame(std::optional<Panel> at, bool held);
    [[nodiscard]] qsizetype imagesKept() const { return m_shapes.size() + m_figures.size(); }

private:
    struct Shown {
        QRgb ground = 0;
        QImage shapes; ///< null: none
        QImage figure;
        [[nodiscard]] bool operator==(const Shown& other) const;
    };
    struct Row {
        std::shared_ptr<QSGTexture> texture;
        QSGImageNode* node = nullptr;
        bool drawn = false;
    };

    [[nodiscard]] QImage sheet(QSizeF size, QImage::Format format) const;
    [[nodiscard]] QImage paint(QSizeF size, const std::function<void(QPainter&)>& draw) const;
    [[nodiscard]] std::unique_ptr<QSGTexture> texture(const QImage& image) const;
    [[nodiscard]] QSGImageNode* placed(QSGTexture& texture, QPointF at) const;
    [[nodiscard]] QImage shapes(const PanelMark& mark);
    [[nodiscard]] QImage figure(const PanelMark& mark);
    [[nodiscard]] QImage rowImage(int row) const;
    [[nodiscard]] std::shared_ptr<QSGTexture> rowTexture(int row);
    void drawPanel(QPainter& painter, const QRectF& area, const Shown& shown) const;
    void drawVentSheet();
    void forgetUnused();

    QQuickWindow& m_window;
    PanelGrid m_grid;
    MapTones m_tones;
    std::vector<Shown> m_panels;
    std::vector<Row> m_rows; ///< from the mouth
    QHash<std::uint32_t, QImage> m_shapes;
    QHash<PanelFigure, QImage> m_figures;
    std::shared_ptr<QSGTexture> m_bareRow; ///< shared by the rows that show nothing
    std::unique_ptr<QSGTexture> m_vent;
    std::unique_ptr<QSGTexture> m_frames[2]; ///< chosen, and with the keyboard there
    QSGNode* m_field;
    QSGImageNode* m_frame = nullptr;
};

}

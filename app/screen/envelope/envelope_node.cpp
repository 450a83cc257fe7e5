// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/envelope/envelope_node.h"

#include <QPainter>
#include <QQuickWindow>
#include <QSGImageNode>

#include <algorithm>
#include <cmath>
#include <utility>

namespace crownring::screen {

namespace {

/// How far the frame of the chosen panel reaches over its edges.
constexpr double frameReach = 4;

QSGNode* layerIn(QSGNode& parent) {
    auto* layer = new QSGTransformNode;
    parent.appendChildNode(layer);
    return layer;
}

}

bool EnvelopeNode::Shown::operator==(const Shown& other) const {
    return ground == other.ground && shapes.cacheKey() == other.shapes.cacheKey() &&
           figure.cacheKey() == other.figure.cacheKey();
}

EnvelopeNode::EnvelopeNode(QQuickWindow& window, const PanelGrid& grid, const MapTones& tones)
    : m_window(window), m_grid(grid), m_tones(tones),
      m_panels(static_cast<std::size_t>(grid.gores * grid.rows), Shown{tones.paper.rgb(), {}, {}}),
      m_rows(static_cast<std::size_t>(grid.rows)), m_field(layerIn(*this)) {
    if (grid.vent > 0)
        drawVentSheet();
}

EnvelopeNode::~EnvelopeNode() = default;

// --- images

QImage EnvelopeNode::sheet(QSizeF size, QImage::Format format) const {
    const double density = m_window.effectiveDevicePixelRatio();
    QImage image(static_cast<int>(std::ceil(size.width() * density)),
                 static_cast<int>(std::ceil(size.height() * density)), format);
    image.setDevicePixelRatio(density);
    return image;
}

QImage EnvelopeNode::paint(QSizeF size, const std::function<void(QPainter&)>& draw) const {
    auto image = sheet(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    draw(painter);
    return image;
}

std::unique_ptr<QSGTexture> EnvelopeNode::texture(const QImage& image) const {
    return std::unique_ptr<QSGTexture>(m_window.createTextureFromImage(
        image, image.hasAlphaChannel() ? QQuickWindow::TextureHasAlphaChannel : QQuickWindow::TextureIsOpaque));
}

QSGImageNode* EnvelopeNode::placed(QSGTexture& texture, QPointF at) const {
    const QSizeF points(texture.textureSize());
    auto* node = m_window.createImageNode();
    node->setOwnsTexture(false);
    node->setTexture(&texture);
    node->setSourceRect(QRectF(QPointF(0, 0), points));
    node->setRect(QRectF(at, points / m_window.effectiveDevicePixelRatio()));
    return node;
}

QImage EnvelopeNode::shapes(const PanelMark& mark) {
    const auto look = shapesOf(mark);
    if (look == 0)
        return {};
    auto& image = m_shapes[look];
    if (image.isNull())
        image = paint(m_grid.panel, [&](QPainter& painter) {
            drawPanelShapes(painter, QRectF(QPointF(0, 0), m_grid.panel), mark, m_tones);
        });
    return image;
}

QImage EnvelopeNode::figure(const PanelMark& mark) {
    if (mark.text.isEmpty())
        return {};
    auto& image = m_figures[figureOf(mark)];
    if (image.isNull())
        image = paint(m_grid.panel, [&](QPainter& painter) {
            drawPanelFigure(painter, QRectF(QPointF(0, 0), m_grid.panel), mark, m_tones);
        });
    return image;
}

void EnvelopeNode::forgetUnused() {
    if (imagesKept() <= imagesSpare + std::ssize(m_panels))
        return;
    // What a panel shows is held by it as well.
    m_shapes.removeIf([](const auto& kept) { return kept.value().isDetached(); });
    m_figures.removeIf([](const auto& kept) { return kept.value().isDetached(); });
}

// --- what is shown

void EnvelopeNode::show(Panel at, const PanelMark* mark) {
    Shown next{m_tones.paper.rgb(), {}, {}};
    if (mark != nullptr)
        next = {panelGround(*mark, m_tones).rgb(), shapes(*mark), figure(*mark)};
    auto& shown = m_panels[m_grid.number(at)];
    if (next == shown)
        return;
    shown = std::move(next);
    m_rows[static_cast<std::size_t>(at.row - 1)].drawn = false;
}

void EnvelopeNode::drawPanel(QPainter& painter, const QRectF& area, const Shown& shown) const {
    painter.fillRect(area, shown.ground);
    if (!shown.shapes.isNull())
        painter.drawImage(area.topLeft(), shown.shapes);
    if (!shown.figure.isNull())
        painter.drawImage(area.topLeft(), shown.figure);
}

QImage EnvelopeNode::rowImage(int row) const {
    const QSizeF size(m_grid.field().width(), m_grid.panel.height());
    auto image = sheet(size, QImage::Format_RGB32);
    QPainter painter(&image);
    const auto seam = [&](const QRectF& area) { painter.fillRect(area, m_tones.seam); };
    for (int gore = 1; gore <= m_grid.gores; ++gore) {
        const QRectF area(QPointF((gore - 1) * m_grid.panel.width(), 0), m_grid.panel);
        drawPanel(painter, area, m_panels[m_grid.number({gore, row})]);
        seam(QRectF(area.left(), 0, 1, size.height()));
    }
    seam(QRectF(size.width() - 1, 0, 1, size.height()));
    seam(QRectF(0, 0, size.width(), 1));
    if (row == 1)
        seam(QRectF(0, size.height() - 1, size.width(), 1));
    return image;
}

std::shared_ptr<QSGTexture> EnvelopeNode::rowTexture(int row) {
    const auto first = m_panels.begin() + (row - 1) * m_grid.gores;
    const Shown bare{m_tones.paper.rgb(), {}, {}};
    // The row at the mouth has a seam more.
    if (row == 1 || std::any_of(first, first + m_grid.gores, [&](const Shown& shown) { return !(shown == bare); }))
        return texture(rowImage(row));
    if (m_bareRow == nullptr)
        m_bareRow = texture(rowImage(row));
    return m_bareRow;
}

void EnvelopeNode::draw() {
    for (int row = 1; row <= m_grid.rows; ++row) {
        auto& [kept, node, drawn] = m_rows[static_cast<std::size_t>(row - 1)];
        if (std::exchange(drawn, true))
            continue;
        auto next = rowTexture(row);
        if (node == nullptr) {
            node = placed(*next, m_grid.area({1, row}).topLeft());
            m_field->appendChildNode(node);
        } else {
            node->setTexture(next.get());
        }
        kept = std::move(next);
    }
    forgetUnused();
}

void EnvelopeNode::drawVentSheet() {
    const QSizeF size(m_grid.size().width(), m_grid.vent);
    m_vent = texture(paint(size, [&](QPainter& painter) { drawVent(painter, QRectF({0, 0}, size), m_tones); }));
    m_field->appendChildNode(placed(*m_vent, {0, 0}));
}

void EnvelopeNode::frame(std::optional<Panel> at, bool held) {
    if (!at) {
        delete std::exchange(m_frame, nullptr); // leaves its parent by itself
        return;
    }
    const auto reach = m_grid.area(*at).adjusted(-frameReach, -frameReach, frameReach, frameReach);
    auto& kept = m_frames[held ? 1 : 0];
    if (kept == nullptr)
        kept = texture(paint(reach.size(), [&](QPainter& painter) {
            drawChosenFrame(painter, QRectF(QPointF(frameReach, frameReach), m_grid.panel), held, m_tones);
        }));
    if (m_frame == nullptr) {
        m_frame = placed(*kept, reach.topLeft());
        appendChildNode(m_frame);
    }
    if (m_frame->texture() != kept.get())
        m_frame->setTexture(kept.get());
    if (m_frame->rect().topLeft() != reach.topLeft())
        m_frame->setRect(QRectF(reach.topLeft(), m_frame->rect().size()));
}

}

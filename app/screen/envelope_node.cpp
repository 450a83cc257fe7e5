// SPDX-License-Identifier: GPL-3.0-or-later
#include "envelope_node.h"

#include <QPainter>
#include <QQuickWindow>
#include <QSGImageNode>
#include <QSGRectangleNode>

#include <algorithm>
#include <cmath>

namespace crownring::screen {

namespace {

/// How far the frame of the chosen panel reaches over its edges.
constexpr double frameReach = 4;

QSGNode* layerIn(QSGNode& parent) {
    auto* layer = new QSGTransformNode;
    parent.appendChildNode(layer);
    return layer;
}

/// Two marks of equal look have the same signs; empty without any.
QString lookOf(const PanelMark* mark) {
    if (mark == nullptr)
        return {};
    const bool bare = mark->reading == panel::Reading::None && mark->text.isEmpty() && mark->count < 2 &&
                      !mark->asked && !mark->repaired && !mark->defect;
    if (bare)
        return {};
    return QStringLiteral("%1 %2 %3%4%5 %6")
        .arg(static_cast<int>(mark->reading))
        .arg(mark->count)
        .arg(int{mark->asked})
        .arg(int{mark->repaired})
        .arg(int{mark->defect})
        .arg(mark->text);
}

}

EnvelopeNode::EnvelopeNode(QQuickWindow& window, const PanelGrid& grid, const MapTones& tones)
    : m_window(window), m_grid(grid), m_tones(tones), m_panels(static_cast<std::size_t>(grid.gores * grid.rows)),
      m_grounds(layerIn(*this)), m_seams(layerIn(*this)), m_signs(layerIn(*this)) {
    auto* paper = window.createRectangleNode();
    paper->setRect(grid.field());
    paper->setColor(tones.paper);
    m_grounds->appendChildNode(paper);
    drawSeams();
    if (grid.vent > 0)
        drawVentSheet();
}

EnvelopeNode::~EnvelopeNode() = default;

std::unique_ptr<QSGTexture> EnvelopeNode::paint(QSizeF size, const std::function<void(QPainter&)>& draw) const {
    const double density = m_window.effectiveDevicePixelRatio();
    const QSize points(static_cast<int>(std::ceil(size.width() * density)),
                       static_cast<int>(std::ceil(size.height() * density)));
    QImage sheet(points, QImage::Format_ARGB32_Premultiplied);
    sheet.setDevicePixelRatio(density);
    sheet.fill(Qt::transparent);
    QPainter painter(&sheet);
    draw(painter);
    painter.end();
    sheet.setDevicePixelRatio(1);
    QQuickWindow::CreateTextureOptions options(QQuickWindow::TextureHasAlphaChannel);
    options.setFlag(QQuickWindow::TextureCanUseAtlas);
    return std::unique_ptr<QSGTexture>(m_window.createTextureFromImage(sheet, options));
}

QSGImageNode* EnvelopeNode::image(QSGTexture& texture, const QRectF& area) const {
    auto* node = m_window.createImageNode();
    node->setOwnsTexture(false);
    node->setTexture(&texture);
    node->setSourceRect(QRectF(QPointF(0, 0), QSizeF(texture.textureSize())));
    node->setRect(area);
    return node;
}

void EnvelopeNode::drawSeams() {
    const auto field = m_grid.field();
    const auto line = [this](const QRectF& area) {
        auto* node = m_window.createRectangleNode();
        node->setRect(area);
        node->setColor(m_tones.seam);
        m_seams->appendChildNode(node);
    };
    for (int gore = 0; gore <= m_grid.gores; ++gore)
        line(QRectF(std::min(gore * m_grid.panel.width(), field.right() - 1), field.top(), 1, field.height()));
    for (int row = 0; row <= m_grid.rows; ++row)
        line(QRectF(field.left(), std::min(field.top() + row * m_grid.panel.height(), field.bottom() - 1),
                    field.width(), 1));
}

void EnvelopeNode::drawVentSheet() {
    const QRectF area(0, 0, m_grid.size().width(), m_grid.vent);
    m_vent = paint(area.size(), [&](QPainter& painter) { drawVent(painter, area, m_tones); });
    m_seams->appendChildNode(image(*m_vent, area));
}

void EnvelopeNode::show(Panel at, const PanelMark* mark) {
    auto& shown = m_panels[static_cast<std::size_t>((at.row - 1) * m_grid.gores + at.gore - 1)];
    const auto area = m_grid.area(at);
    showGround(shown, area, mark);
    showSigns(shown, area, mark);
}

void EnvelopeNode::showGround(Shown& shown, const QRectF& area, const PanelMark* mark) {
    if (mark == nullptr || mark->reading == panel::Reading::None) {
        delete std::exchange(shown.ground, nullptr); // leaves its parent by itself
        return;
    }
    if (shown.ground == nullptr) {
        shown.ground = m_window.createRectangleNode();
        shown.ground->setRect(area);
        m_grounds->appendChildNode(shown.ground);
    }
    if (const auto tone = panelGround(*mark, m_tones); shown.ground->color() != tone)
        shown.ground->setColor(tone);
}

void EnvelopeNode::showSigns(Shown& shown, const QRectF& area, const PanelMark* mark) {
    auto look = lookOf(mark);
    if (look == shown.look)
        return;
    if (!shown.look.isEmpty())
        --m_sheets.value(shown.look)->users;
    shown.look = std::move(look);
    if (shown.look.isEmpty()) {
        delete std::exchange(shown.signs, nullptr);
        return;
    }
    auto& sheet = m_sheets[shown.look];
    if (sheet == nullptr) {
        sheet = std::make_shared<Sheet>();
        const QRectF own(QPointF(0, 0), area.size());
        sheet->texture = paint(own.size(), [&](QPainter& painter) { drawPanelSigns(painter, own, *mark, m_tones); });
    }
    ++sheet->users;
    if (shown.signs != nullptr) {
        shown.signs->setTexture(sheet->texture.get());
        return;
    }
    shown.signs = image(*sheet->texture, area);
    m_signs->appendChildNode(shown.signs);
}

void EnvelopeNode::frame(std::optional<Panel> at, bool held) {
    if (!at) {
        delete std::exchange(m_frame, nullptr);
        return;
    }
    const auto reach = m_grid.area(*at).adjusted(-frameReach, -frameReach, frameReach, frameReach);
    auto& texture = m_frames[held ? 1 : 0];
    if (texture == nullptr) {
        const QRectF own(QPointF(frameReach, frameReach), m_grid.panel);
        texture = paint(reach.size(), [&](QPainter& painter) { drawChosenFrame(painter, own, held, m_tones); });
    }
    if (m_frame == nullptr) {
        m_frame = image(*texture, reach);
        appendChildNode(m_frame);
    }
    if (m_frame->texture() != texture.get())
        m_frame->setTexture(texture.get());
    if (m_frame->rect() != reach)
        m_frame->setRect(reach);
}

void EnvelopeNode::forgetUnused() {
    if (m_sheets.size() <= imagesSpare + static_cast<qsizetype>(m_panels.size()))
        return;
    m_sheets.removeIf([](const auto& sheet) { return sheet.value()->users == 0; });
}

}

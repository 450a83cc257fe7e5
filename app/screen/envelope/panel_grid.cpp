// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/envelope/panel_grid.h"

#include <algorithm>
#include <cmath>

namespace crownring::screen {

bool PanelGrid::holds(Panel at) const { return at.gore >= 1 && at.gore <= gores && at.row >= 1 && at.row <= rows; }

QSizeF PanelGrid::size() const {
    return empty() ? QSizeF(0, 0) : QSizeF(gores * panel.width(), vent + rows * panel.height());
}

QRectF PanelGrid::field() const {
    return empty() ? QRectF() : QRectF(0, vent, gores * panel.width(), rows * panel.height());
}

QRectF PanelGrid::area(Panel at) const {
    return QRectF(QPointF((at.gore - 1) * panel.width(), vent + (rows - at.row) * panel.height()), panel);
}

std::optional<Panel> PanelGrid::at(QPointF point, double slop) const {
    if (empty() || panel.isEmpty() || !field().adjusted(-slop, -slop, slop, slop).contains(point))
        return std::nullopt;
    const int across = static_cast<int>(std::floor(point.x() / panel.width()));
    const int down = static_cast<int>(std::floor((point.y() - vent) / panel.height()));
    return Panel{std::clamp(across, 0, gores - 1) + 1, rows - std::clamp(down, 0, rows - 1)};
}

Panel PanelGrid::moved(Panel from, PanelStep step) const {
    switch (step) {
    case PanelStep::Left:
        return {from.gore > 1 ? from.gore - 1 : gores, from.row};
    case PanelStep::Right:
        return {from.gore < gores ? from.gore + 1 : 1, from.row};
    case PanelStep::ToCrown:
        return {from.gore, std::min(from.row + 1, rows)};
    case PanelStep::ToMouth:
        return {from.gore, std::max(from.row - 1, 1)};
    case PanelStep::FirstGore:
        return {1, from.row};
    case PanelStep::LastGore:
        return {gores, from.row};
    case PanelStep::Crown:
        return {from.gore, rows};
    case PanelStep::Mouth:
        return {from.gore, 1};
    }
    return from;
}

double panelLength(double room, int count, double least, double most) {
    const double shared = count > 0 ? std::floor(room / count) : 0;
    return std::max(least, std::min(shared, most));
}

}

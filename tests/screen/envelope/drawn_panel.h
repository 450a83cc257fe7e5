// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The signs of one panel as they are drawn.

#include "screen/envelope/panel_sign.h"

#include <QImage>
#include <QPainter>

namespace crownring::screen::sample {

inline QImage drawn(const PanelMark& mark, QSize size) {
    MapTones tones;
    tones.fails = QColor(60, 60, 60);
    QImage image(size, QImage::Format_Grayscale8);
    image.fill(tones.weak); // one ground for all, so that only shape can differ
    QPainter painter(&image);
    drawPanelSigns(painter, QRectF(QPointF(0, 0), QSizeF(size)), mark, tones);
    return image;
}

}

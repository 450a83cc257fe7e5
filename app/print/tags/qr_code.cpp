// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/tags/qr_code.h"

#include <QtGui/QPainter>
#include <qrencode.h>

#include <memory>

namespace crownring::print {

std::optional<QrCode> QrCode::of(const std::string& text) {
    if (text.empty())
        return std::nullopt;
    constexpr int smallestThatFits = 0;
    constexpr int lettersMatter = 1;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(
        QRcode_encodeString(text.c_str(), smallestThatFits, QR_ECLEVEL_M, QR_MODE_8, lettersMatter), &QRcode_free);
    if (!made)
        return std::nullopt;
    QrCode code;
    code.m_side = made->width;
    for (int at = 0; at < made->width * made->width; ++at)
        code.m_dark.push_back((made->data[at] & 1) != 0);
    return code;
}

void QrCode::draw(QPainter& painter, const QRectF& area) const {
    const double square = std::min(area.width(), area.height()) / (m_side + 2 * quietZone);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false); // no seams between squares
    painter.fillRect(area, Qt::white);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    for (int row = 0; row < m_side; ++row)
        for (int column = 0; column < m_side;) {
            int run = 0;
            while (column + run < m_side && isDark(column + run, row))
                ++run;
            if (run > 0)
                painter.drawRect(QRectF(area.left() + (column + quietZone) * square,
                                        area.top() + (row + quietZone) * square, run * square, square));
            column += std::max(run, 1);
        }
    painter.restore();
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A QR code (ISO/IEC 18004, laid out by libqrencode): squares that a camera reads.

#include <QtCore/QRectF>

#include <optional>
#include <string>
#include <vector>

class QPainter;

namespace crownring::print {

class QrCode {
public:
    /// Of level M: a seventh of it may be soiled or torn (15 %, the library's manual). Nothing where the text is empty
    /// or longer than a code holds.
    [[nodiscard]] static std::optional<QrCode> of(const std::string& text);

    /// Squares in a row, without the quiet zone.
    [[nodiscard]] int side() const { return m_side; }
    [[nodiscard]] bool isDark(int column, int row) const {
        return m_dark[static_cast<std::size_t>(row * m_side + column)];
    }
    /// Black on white, with the quiet zone of four squares that the standard asks for inside the area.
    void draw(QPainter& painter, const QRectF& area) const;

private:
    static constexpr int quietZone = 4;
    int m_side = 0;
    std::vector<bool> m_dark;
};

}

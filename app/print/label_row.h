// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Labels side by side, each in a frame to be cut along, as high as the highest of the row.

#include "paper/document.h"
#include "print/tags/qr_code.h"
#include "print/text_line.h"

#include <span>

namespace crownring::print {

class LabelRow final : public Piece {
public:
    static constexpr std::size_t abreast = 2;

    /// @param labels at most `abreast`
    LabelRow(std::span<const paper::Label> labels, double width);

    [[nodiscard]] double height() const override;
    void draw(QPainter& painter, QPointF topLeft) const override;

private:
    struct Set {
        TextLines title, subtitle, status, note;
        std::vector<std::pair<TextLines, TextLines>> facts;
        bool bars = false;
        std::optional<QrCode> code; ///< beside the texts, under the hole
        [[nodiscard]] double height() const;
    };
    void draw(QPainter& painter, QPointF topLeft, const Set& label) const;

    double m_width;
    std::vector<Set> m_labels;
};

}

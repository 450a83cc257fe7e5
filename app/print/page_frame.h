// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on every page: title and record id at the head; the caution, the record id and the number of the page at
/// the foot, which is as high as the caution needs.

#include "paper/document.h"
#include "print/sheet.h"
#include "print/text_line.h"

#include <QtCore/QString>

class QPainter;

namespace crownring::print {

class PageFrame {
public:
    PageFrame(const paper::Document& document, QRectF area);

    /// What is left for the text, in dots of the sheet.
    [[nodiscard]] QRectF body() const;

    /// @param page from 1
    void draw(QPainter& painter, int page, int pages) const;

private:
    void drawHead(QPainter& painter) const;

    QString m_title, m_record;
    TextLines m_caution;
    QRectF m_area;
};

}

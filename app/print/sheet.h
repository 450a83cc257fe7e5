// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The sheet and its measures. All lengths of this folder are in dots, 600 an inch, whatever is drawn on: so a document
/// breaks its lines and pages alike on paper, on the screen and in the tests, and fonts have whole sizes.

#include <QtCore/QRectF>
#include <QtCore/QSizeF>

namespace crownring::print {

enum class PageFormat { A4, Letter };

inline constexpr int dotsPerInch = 600;

constexpr double millimetres(double length) { return length * dotsPerInch / 25.4; }
constexpr double points(double length) { return length * dotsPerInch / 72.0; }

/// Between the line of a box and what stands in it.
inline constexpr double boxPad = millimetres(2.6);

/// ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: Letter (A) is 8.5 x 11 in.
constexpr QSizeF sheetMillimetres(PageFormat format) {
    return format == PageFormat::A4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4);
}

/// Where is drawn: the left margin leaves room for the holes of a binder.
inline QRectF typeArea(PageFormat format) {
    const QSizeF sheet = sheetMillimetres(format);
    return QRectF(millimetres(25), millimetres(14), millimetres(sheet.width() - 25 - 19),
                  millimetres(sheet.height() - 14 - 14));
}

}

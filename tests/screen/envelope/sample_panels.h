// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Marks as an inspection half done would give them, for 24 gores of 14 rows; the figures are invented.

#include "screen/envelope/panel_mark.h"

#include <vector>

namespace crownring::screen::sample {

inline constexpr int gores = 24;
inline constexpr int rows = 14;

inline PanelMark held(int gore, int row, int newtons, double share) {
    PanelMark mark;
    mark.gore = gore;
    mark.row = row;
    mark.reading = panel::Reading::Held;
    mark.share = share;
    mark.text = QString::number(newtons);
    mark.says = QStringLiteral("held at %1 N").arg(newtons);
    mark.count = 1;
    return mark;
}
inline PanelMark broke(int gore, int row, int newtons, double share) {
    auto mark = held(gore, row, newtons, share);
    mark.reading = share < 1 ? panel::Reading::Fails : panel::Reading::Value;
    mark.says = QStringLiteral("broke at %1 N").arg(newtons);
    return mark;
}
inline PanelMark wanted(int gore, int row) {
    PanelMark mark;
    mark.gore = gore;
    mark.row = row;
    mark.asked = true;
    return mark;
}
inline PanelMark expected(int gore, int row, int newtons, double share) {
    PanelMark mark;
    mark.gore = gore;
    mark.row = row;
    mark.reading = panel::Reading::Forecast;
    mark.share = share;
    mark.text = QString::number(newtons);
    mark.says = QStringLiteral("%1 N").arg(newtons);
    return mark;
}
/// A panel of which only the lot is known.
inline PanelMark ofLot(int gore, int row, int lot) {
    PanelMark mark;
    mark.gore = gore;
    mark.row = row;
    mark.lot = lot;
    mark.lotName = lot > 0 ? QStringLiteral("A-%1").arg(16 + lot) : QString();
    return mark;
}
/// Lots of fabric as a maker cuts them, in blocks of gores.
inline void cutFrom(PanelMark& mark, int lots) {
    mark.lot = (mark.gore - 1) / 3 % lots + 1;
    mark.lotName = QStringLiteral("A-%1").arg(16 + mark.lot);
}
/// What is expected of every panel: the crown ages fastest, and falls below its limit.
inline std::vector<PanelMark> allExpected(int lots) {
    std::vector<PanelMark> marks;
    for (int row = 1; row <= rows; ++row)
        for (int gore = 1; gore <= gores; ++gore) {
            const int newtons = 290 - 12 * row - (gore * 29) % 50;
            marks.push_back(expected(gore, row, newtons, newtons / 133.0));
            marks.back().count = gore % 5;
            cutFrom(marks.back(), lots);
        }
    return marks;
}
inline std::vector<PanelMark> halfDone() {
    std::vector<PanelMark> marks;
    for (int gore = 1; gore <= gores; gore += 2)
        marks.push_back(gore < 14 ? held(gore, 14, 133, 1.0) : wanted(gore, 14));
    for (int gore = 2; gore <= gores; gore += 4)
        marks.push_back(broke(gore, 11, 150 + 6 * gore, (150 + 6 * gore) / 133.0));
    for (int gore = 1; gore <= gores; gore += 6)
        marks.push_back(held(gore, 6, 200, 200 / 133.0));
    marks.push_back(broke(4, 13, 98, 98 / 133.0));
    marks.push_back(wanted(9, 9));
    marks.back().repaired = true;
    marks[2].count = 3;
    marks[3].repaired = true;
    marks[5].defect = true;
    return marks;
}

}

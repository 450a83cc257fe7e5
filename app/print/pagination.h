// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The flow on its pages: what keeps together stays together, the head of a table is repeated.

#include "paper/document.h"
#include "print/piece.h"

#include <QtCore/QSizeF>

namespace crownring::print {

struct Placed {
    PiecePtr piece;
    double top = 0;   ///< below the top of the text, in dots
    double scale = 1; ///< below 1: a piece that is higher than a page is drawn smaller, not cut
};

using Page = std::vector<Placed>;

/// At least one page. A run of pieces that keep to each other and are higher than a page is broken where it must.
/// @param height of a page, in dots
[[nodiscard]] std::vector<Page> paginate(const Flow& flow, double height);

/// All parts of a document, each beginning on a page of its own. One that goes on to a second page by little is set
/// smaller, by up to a sixth: a certificate is one page. So is, by less, one of several pages of which the last would
/// be nearly empty.
/// @param body size of a page without its head and foot, in dots
[[nodiscard]] std::vector<Page> setOnPages(const paper::Document& document, QSizeF body);

}

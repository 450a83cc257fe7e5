// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A document set in type: its pieces in order, not yet on pages.

#include "paper/document.h"
#include "print/piece.h"

#include <QtCore/QSizeF>

namespace crownring::print {

/// A heading keeps to what follows it, a statement to the signature; short paragraphs stay whole, of longer ones at
/// least two lines stand on a page.
/// @param body size of a page without its head and foot, in dots
/// @return the parts between page breaks
[[nodiscard]] std::vector<Flow> compose(const paper::Document& document, QSizeF body);

}

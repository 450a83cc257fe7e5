// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tables as rows in the flow: ruled by hairlines, the head repeated on every page. A row is one piece unless it is
/// higher than a third of a page: then it goes on where it must.

#include "paper/document.h"
#include "print/piece.h"

#include <QtCore/QSizeF>

namespace crownring::print {

/// @param body of a page, in dots; tables are as wide
void addTable(Flow& flow, const paper::Table& table, QSizeF body);
void addChecks(Flow& flow, const paper::Checks& checks, QSizeF body);
void addFacts(Flow& flow, const paper::Facts& facts, QSizeF body);

}

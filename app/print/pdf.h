// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Paper: a document drawn to a PDF file, or to pictures of its pages. Needs a QGuiApplication (without a screen: the
/// platform "offscreen"); any thread may call, one at a time.

#include "paper/document.h"
#include "print/sheet.h"
#include "problem/problem.h"
#include "writing/target.h"

#include <QtGui/QImage>

#include <string>
#include <vector>

namespace crownring::print {

/// Whoever reads the file finds all of the old or all of the new; what is never written over, writing/target.h says.
/// The file asks for PDF/A-1b (ISO 19005-1): every font is inside, so that it reads the same in ten years.
/// @return FileExists, FileUnwritable
[[nodiscard]] Result<void> writePdf(const paper::Document& document, PageFormat format, const std::string& file,
                                    Replace replace);

/// The same pages as pictures on white, for a preview.
/// @param dotsPerInch of the pictures, e.g. 96
[[nodiscard]] std::vector<QImage> renderPages(const paper::Document& document, PageFormat format, double dotsPerInch);

}

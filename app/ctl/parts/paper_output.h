// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A paper that a call writes to a PDF file.

#include "paper/document.h"
#include "problem/problem.h"

#include <string>

namespace crownring::ctl {

/// A paper that is asked for as a PDF.
struct PaperAsked {
    std::string to; ///< the file; empty: none is asked for
    std::string paper = "a4";
    bool force = false; ///< an older file that is there is replaced
};

/// @return the exit status
[[nodiscard]] int writePaper(const Result<paper::Document>& document, const PaperAsked& asked);

}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The status of directives of one balloon as a paper: for each its number, revision and effective day, the method of
/// compliance, and where it recurs when it is due next (14 CFR 91.417(a)(2)(v), gist read; ML.A.305(c), from memory).

#include "civil/civil_date.h"
#include "measure/name.h"
#include "measure/usage.h"
#include "paper/document.h"
#include "problem/argument.h"
#include "problem/speech.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

struct DirectiveStatusLine {
    DirectiveId directive;
    std::string revision, title, issuer;
    CivilDate effective;
    bool recommended = false;
    ItemId item;
    std::string standing; ///< "lapsed", "not-bound" … as crownringctl says
    bool atOnce = false;  ///< lapsed because it comes before the next flight: nothing is late yet
    Argument why;         ///< it is bound or not, or why nobody knows
    std::string method;   ///< of the last compliance that counts; empty: none
    std::string by;       ///< by other means: that document
    std::optional<CivilDate> on;
    std::optional<Minutes> hours;
    Argument next; ///< a day or a clock; empty: never
};

[[nodiscard]] paper::Document directiveStatus(const Registration& balloon, CivilDate on,
                                              const std::vector<DirectiveStatusLine>& lines, const Speech& in);

}

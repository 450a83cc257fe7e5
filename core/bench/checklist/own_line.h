// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One line that an organisation adds to every checklist of its own accord: a document (`checklist.adopted`) of that
/// line alone, so that each can be corrected and voided by itself.

#include "bench/checklist/checklist.h"
#include "civil/civil_date.h"

namespace crownring {

struct OwnLine {
    std::string section; ///< of the lists on the shelf: "envelope" …
    std::vector<ItemKind> kinds;
    std::string title;
    std::string lookFor;
    std::string source; ///< what asks for it; it holds under every regime
    bool required = true;
};

/// @param name different from that of any other own line of the record
/// @param on the day, which is its revision
[[nodiscard]] Checklist ownLine(const std::string& name, CivilDate on, const OwnLine& line);

/// The sections that a line can stand in, in working order.
[[nodiscard]] std::vector<ChecklistSection> sectionsOfShelf();

}

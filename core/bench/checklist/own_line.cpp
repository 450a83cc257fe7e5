// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/own_line.h"

#include "bench/checklist/shelf.h"

#include <algorithm>

namespace crownring {

Checklist ownLine(const std::string& name, CivilDate on, const OwnLine& line) {
    const auto sections = sectionsOfShelf();
    const auto section = std::ranges::find(sections, line.section, &ChecklistSection::id);
    Checklist own;
    own.id = name;
    own.revision = on.iso();
    own.title = line.title;
    own.source = line.source;
    own.sections = {section == sections.end() ? ChecklistSection{line.section, line.section} : *section};
    ChecklistLine made;
    made.id = name;
    made.section = line.section;
    made.kinds = line.kinds;
    made.title = line.title;
    made.lookFor = line.lookFor;
    for (const auto regime : allRegimes)
        made.sources.emplace_back(regime, line.source);
    made.required = line.required;
    own.lines = {std::move(made)};
    return own;
}

std::vector<ChecklistSection> sectionsOfShelf() {
    std::vector<ChecklistSection> sections;
    for (const auto& checklist : shelfRead())
        if (checklist.id == "hot-air-inspection")
            sections = checklist.sections;
    return sections;
}

}

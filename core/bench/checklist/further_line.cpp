// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/further_line.h"

#include "bench/checklist/shelf.h"
#include "bench/reading/quantity.h"

#include <algorithm>

namespace crownring {

namespace {

std::vector<AskedReading> readingsOf(const RequirementId& test) {
    for (const auto& checklist : shelfRead())
        for (const auto& line : checklist.lines)
            if (line.isTest() && std::ranges::find(line.serves, test) != line.serves.end())
                return line.readings;
    return readingsOfFabric();
}

}

ChecklistLine lineFor(const Requirement& requirement, ItemKind kind, Regime regime) {
    const auto& source = requirement.source.written();
    const auto& note = requirement.note.written();
    ChecklistLine line;
    line.id = "do/" + requirement.id.text();
    line.kinds = {kind};
    line.title = requirement.title.written();
    line.lookFor = note.empty() ? source : note;
    line.sources = {{regime, source}};
    line.onlyWith = {requirement.id};
    if (isTestOfFabric(requirement, kind)) {
        line.tester = true;
        line.readings = readingsOf(requirement.id);
    }
    return line;
}

bool isTestOfFabric(const Requirement& requirement, ItemKind kind) {
    return requirement.action == Action::Test && kind == ItemKind::Envelope;
}

const std::vector<AskedReading>& readingsOfFabric() {
    static const auto all = [] {
        std::vector<AskedReading> asked;
        for (const auto& quantity : allQuantities())
            if (quantity.traits.placed && quantity.traits.tester)
                asked.push_back({std::string(quantity.slug), false, true});
        return asked;
    }();
    return all;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/further_line.h"

#include "bench/checklist/shelf.h"
#include "bench/reading/quantity.h"

#include <algorithm>

namespace crownring {

namespace {

/// The line that ships for a test; null where none does.
const ChecklistLine* lineThatServes(const RequirementId& test) {
    for (const auto& checklist : shelfRead())
        for (const auto& line : checklist.lines)
            if (line.isTest() && std::ranges::find(line.serves, test) != line.serves.end())
                return &line;
    return nullptr;
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
        const auto* ships = lineThatServes(requirement.id);
        line.readings = ships ? ships->readings : readingsOfFabric();
    }
    return line;
}

bool isTestOfFabric(const Requirement& requirement, ItemKind kind) {
    return requirement.action == Action::Test && kind == ItemKind::Envelope;
}

std::vector<AskedReading> askedByWork(const ChecklistLine& line, std::span<const Work> work) {
    if (!line.isTest() || line.onlyWith.size() < 2)
        return line.readings;
    std::vector<AskedReading> asked;
    for (const auto& each : work) {
        if (std::ranges::find(line.onlyWith, each.requirement) == line.onlyWith.end())
            continue;
        const auto* ships = lineThatServes(each.requirement);
        if (!ships)
            return line.readings;
        for (const auto& reading : line.readings)
            if (std::ranges::find(ships->readings, reading.quantity, &AskedReading::quantity) !=
                    ships->readings.end() &&
                std::ranges::find(asked, reading.quantity, &AskedReading::quantity) == asked.end())
                asked.push_back(reading);
    }
    return asked.empty() ? line.readings : asked;
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

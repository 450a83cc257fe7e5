// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/shelf.h"

#include <algorithm>

namespace crownring {

namespace {

std::vector<Checklist> read(const std::vector<std::string>& texts) {
    std::vector<Checklist> checklists;
    for (const auto& text : texts)
        if (auto checklist = keptChecklist(text))
            checklists.push_back(std::move(*checklist));
    return checklists;
}

}

const std::vector<Checklist>& shelfRead() {
    static const auto checklists = read(checklistShelf());
    return checklists;
}

const Checklist* shelved(std::string_view id, std::string_view revision) {
    static const auto former = read(formerChecklists());
    for (const auto* checklists : {&shelfRead(), &former}) {
        const auto found = std::ranges::find_if(
            *checklists, [&](const Checklist& each) { return each.id == id && each.revision == revision; });
        if (found != checklists->end())
            return &*found;
    }
    return nullptr;
}

}

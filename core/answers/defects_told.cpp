// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/defects_told.h"

#include "rules/due/defects.h"

namespace crownring {

Result<std::vector<std::string>> photographsOf(Books& books, const DefectMark& found) {
    const auto told =
        books.told({Subject::Defect, found.defect.text(), {kindName<DefectFound>()}, found.stamp.at.on()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* body = std::get_if<DefectFound>(&nowOf(line).body); body && line.entry.id == found.stamp.id)
            return body->photographs;
    return std::vector<std::string>();
}

Result<std::map<DefectId, Said<DefectDeferred>>> deferralsOf(Books& books, std::span<const ItemFacts> items) {
    std::map<DefectId, Said<DefectDeferred>> deferrals;
    for (const auto& item : items)
        for (const auto& open : openDefects(item)) {
            if (!open.deferred)
                continue;
            const auto& stamp = open.deferred->stamp;
            const auto told =
                books.told({Subject::Defect, open.found->defect.text(), {kindName<DefectDeferred>()}, stamp.at.on()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told)
                if (const auto* body = std::get_if<DefectDeferred>(&nowOf(line).body);
                    body && line.entry.id == stamp.id)
                    deferrals.insert_or_assign(
                        body->defect,
                        Said<DefectDeferred>{line.entry.id, stamp, nowOf(line).by, nowOf(line).note, *body, {}});
        }
    return deferrals;
}

}

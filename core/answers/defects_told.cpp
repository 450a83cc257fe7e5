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

Result<std::optional<Graded>> gradingOf(Books& books, const EntryId& found) {
    const auto told = books.amendments(found);
    if (!told)
        return tl::unexpected(told.error());
    const auto* first = std::get_if<DefectFound>(&told->front().body);
    std::optional<Graded> graded;
    for (const auto& each : *told) {
        const auto* correction = std::get_if<EntryCorrected>(&each.body);
        const auto stated = correction ? textUnder(*correction, "severity") : std::nullopt;
        const auto severity = stated ? severityFrom(*stated) : std::nullopt;
        if (!first || !severity)
            continue;
        graded.reset();
        if (rankOf(*severity) < rankOf(first->severity))
            graded = Graded{PersonId(each.by), each.note};
    }
    return graded;
}

Result<std::vector<TakenOut>> takenOutOf(Books& books, const Inspection& inspection) {
    auto all = books.takenOut(kindName<DefectFound>());
    if (!all)
        return all;
    std::erase_if(*all, [&](const TakenOut& each) {
        const auto* found = std::get_if<DefectFound>(&each.entry.body);
        const bool atTheBench = voidReasonFrom(std::get<EntryVoided>(each.taken.body).reason) &&
                                each.taken.by == each.entry.by &&
                                (!inspection.closed || stampOf(each.taken) < inspection.closed->stamp);
        return !found || found->inspection != inspection.id || atTheBench;
    });
    return all;
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

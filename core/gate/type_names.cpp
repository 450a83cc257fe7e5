// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

struct Stated {
    std::string type;
    bool confirmed = false;
};

std::optional<Stated> statedBy(const Body& body) {
    if (const auto* described = std::get_if<TypeDescribed>(&body))
        return Stated{described->type.text(), described->confirmed};
    if (const auto* limit = std::get_if<LimitStated>(&body))
        return Stated{limit->type.text(), limit->confirmed};
    return std::nullopt;
}

/// Without separators and in small letters: what is left when one writes a name from memory.
std::string folded(std::string_view name) {
    std::string left;
    for (const char c : name)
        if (std::string_view(" -_./").find(c) == std::string_view::npos)
            left += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return left;
}

/// The types of which something is stated before what stands at `line` of the batch.
Result<std::set<std::string>> typesBefore(const Batch& batch, int line) {
    const auto told = batch.books.told({Subject::Type, {}, {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::set<std::string> types;
    for (const auto& each : *told) {
        const auto later = std::ranges::find_if(batch.entries, [&](const NumberedEntry& numbered) {
            return numbered.line >= line && numbered.entry.id == each.entry.id;
        });
        if (const auto stated = statedBy(nowOf(each).body); stated && later == batch.entries.end())
            types.insert(stated->type);
    }
    return types;
}

Result<std::set<std::string>> typesOfItems(const Batch& batch) {
    const auto facts = batch.books.facts({}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    std::set<std::string> types;
    for (const auto& item : *facts)
        if (item.type)
            types.insert(*item.type);
    return types;
}

std::optional<std::string> nearOf(const std::string& name, const std::set<std::string>& known) {
    if (known.contains(name))
        return std::nullopt;
    const auto near = std::ranges::find(known, folded(name), folded);
    return near == known.end() ? std::nullopt : std::optional(*near);
}

}

Findings askTypeNames(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<TypeDescribed, LimitStated>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto stated = *now ? statedBy((*now)->body) : std::nullopt;
        if (!stated || stated->confirmed)
            continue;
        const auto before = typesBefore(batch, line);
        if (!before)
            return tl::unexpected(atLine(before.error(), line));
        if (before->contains(stated->type))
            continue;
        auto near = nearOf(stated->type, *before);
        if (!near) {
            const auto ofItems = typesOfItems(batch);
            if (!ofItems)
                return tl::unexpected(atLine(ofItems.error(), line));
            near = nearOf(stated->type, *ofItems);
        }
        if (near)
            problems.push_back(
                asAmended(Problem{EntryFault::NearlyATypeKnown, {stated->type, *near}, {{}, line, "type"}}, entry));
    }
    return problems;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"

#include <algorithm>
#include <map>
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

constexpr int beforeTheBatch = -1;

/// The line of the batch at which each type is first stated, or that it was so before.
Result<std::map<std::string, int>> firstStatedIn(const Batch& batch) {
    const auto told = batch.books.told({Subject::Type, {}, {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::map<EntryId, int> lines;
    for (const auto& [entry, line] : batch.entries)
        lines.insert_or_assign(entry.id, line);
    std::map<std::string, int> first;
    for (const auto& each : *told) {
        const auto stated = statedBy(nowOf(each).body);
        if (!stated)
            continue;
        const auto posted = lines.find(each.entry.id);
        const int line = posted == lines.end() ? beforeTheBatch : posted->second;
        const auto [place, isNew] = first.emplace(stated->type, line);
        if (!isNew)
            place->second = std::min(place->second, line);
    }
    return first;
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
    std::optional<std::map<std::string, int>> first;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<TypeDescribed, LimitStated>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto stated = *now ? statedBy((*now)->body) : std::nullopt;
        if (!stated || stated->confirmed)
            continue;
        if (!first) {
            auto asked = firstStatedIn(batch);
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            first = std::move(*asked);
        }
        std::set<std::string> before;
        for (const auto& [type, where] : *first)
            if (where < line)
                before.insert(type);
        if (before.contains(stated->type))
            continue;
        auto near = nearOf(stated->type, before);
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/named_kit.h"

#include "answers/kit_at.h"
#include "registry/spelling.h"

#include <algorithm>
#include <map>
#include <set>

namespace crownring {

namespace {

/// Items by their names and serial numbers, in any spelling.
class ItemNames {
public:
    explicit ItemNames(const std::vector<ItemFacts>& items) {
        for (const auto& item : items)
            m_kinds.emplace(item.id, item.kind);
        for (const auto& item : items)
            if (item.serial)
                m_bySerial[bareName(*item.serial)].push_back(item.id);
        for (const auto& item : items)
            m_byName.insert_or_assign(bareName(item.id.text()), item.id);
    }
    [[nodiscard]] std::optional<ItemId> find(std::string_view written, std::optional<ItemKind> kind) const {
        const auto bare = bareName(written);
        if (const auto named = m_byName.find(bare); named != m_byName.end() && fits(named->second, kind))
            return named->second;
        std::optional<ItemId> found;
        if (const auto serial = m_bySerial.find(bare); serial != m_bySerial.end())
            for (const auto& item : serial->second) {
                if (!fits(item, kind))
                    continue;
                if (found)
                    return std::nullopt; // two of one serial number: nobody can say which
                found = item;
            }
        return found;
    }
    [[nodiscard]] ItemKind kindOf(const ItemId& item) const {
        const auto kind = m_kinds.find(item);
        return kind == m_kinds.end() ? ItemKind::Other : kind->second;
    }

private:
    [[nodiscard]] bool fits(const ItemId& item, std::optional<ItemKind> kind) const {
        return !kind || kindOf(item) == *kind;
    }
    std::map<ItemId, ItemKind> m_kinds;
    std::map<std::string, ItemId> m_byName;
    std::map<std::string, std::vector<ItemId>> m_bySerial;
};

std::vector<std::string> wordsOf(std::string_view written) {
    std::vector<std::string> words(1);
    for (const char letter : written)
        if (letter != ' ')
            words.back().push_back(letter);
        else if (!words.back().empty())
            words.emplace_back();
    if (words.back().empty())
        words.pop_back();
    return words;
}

/// The items that a part of a cell names: one name, or several with blanks between them. Nothing when one is not known.
std::optional<std::vector<ItemId>> itemsIn(const ItemNames& names, std::string_view written,
                                           std::optional<ItemKind> kind) {
    if (const auto item = names.find(written, kind))
        return std::vector{*item};
    std::vector<ItemId> items;
    for (const auto& word : wordsOf(written)) {
        const auto item = names.find(word, kind);
        if (!item)
            return std::nullopt;
        items.push_back(*item);
    }
    return items;
}

Result<std::set<ItemId>> fittedFor(Books& books, const FlightProposal& proposal) {
    const Moment at(proposal.on, proposal.time.value_or(Kind<FlightLogged>::time));
    const auto fitted = kitAt(books, proposal.balloon, {at, EntryId("~")}); // after all that is of that minute
    if (!fitted)
        return tl::unexpected(fitted.error());
    return std::set<ItemId>(fitted->begin(), fitted->end());
}

Result<void> nameKit(Books& books, const ItemNames& names, JudgedProposal& judged) {
    auto& proposal = judged.proposal;
    const bool whole = std::ranges::any_of(proposal.named, [](const NamedItems& each) { return !each.kind; });
    std::set<ItemId> kit;
    if (!whole) {
        auto fitted = fittedFor(books, proposal);
        if (!fitted)
            return tl::unexpected(fitted.error());
        kit = std::move(*fitted);
    }
    for (const auto& named : proposal.named) {
        std::erase_if(kit, [&](const ItemId& item) { return named.kind && names.kindOf(item) == *named.kind; });
        for (const auto& written : named.written) {
            const auto items = itemsIn(names, written, named.kind);
            if (!items) {
                judged.state = ProposalState::UnknownItem;
                judged.unknown = written;
                return {};
            }
            kit.insert(items->begin(), items->end());
        }
    }
    proposal.flight.kit = std::vector<ItemId>(kit.begin(), kit.end());
    return {};
}

}

Result<void> nameKits(Books& books, std::vector<JudgedProposal>& judged) {
    if (std::ranges::all_of(judged, [](const JudgedProposal& each) { return each.proposal.named.empty(); }))
        return {};
    const auto facts = books.facts({}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    const ItemNames names(*facts);
    for (auto& each : judged)
        if (each.state == ProposalState::New && !each.proposal.named.empty())
            if (const auto done = nameKit(books, names, each); !done)
                return done;
    return {};
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/told.h"
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"

#include <algorithm>

namespace crownring {

namespace {

/// What else is said of an item than what stands by now.
struct SaidBefore {
    ItemId item;
    std::optional<JournalLine> root; ///< of an amendment
    std::vector<ItemEntered> said;   ///< before it, and by entries that stand aside
};

Result<std::optional<SaidBefore>> saidBefore(const Batch& batch, const Entry& entry,
                                             const std::vector<Entry>& enteredAgain) {
    SaidBefore before;
    if (const auto* entered = std::get_if<ItemEntered>(&entry.body)) {
        before.item = entered->item;
    } else {
        auto root = amendedRoot(batch.journal, entry);
        if (!root)
            return tl::unexpected(root.error());
        const auto* of = *root && !(*root)->unread ? std::get_if<ItemEntered>(&(*root)->entry.body) : nullptr;
        if (!of)
            return std::nullopt;
        before.item = of->item;
        const auto was = batch.journal.before(entry.id);
        if (!was)
            return tl::unexpected(was.error());
        if (*was && std::holds_alternative<ItemEntered>((*was)->body))
            before.said.push_back(std::get<ItemEntered>((*was)->body));
        before.root = std::move(*root);
    }
    for (const auto& each : enteredAgain)
        if (const auto& other = std::get<ItemEntered>(each.body); each.id != entry.id && other.item == before.item)
            before.said.push_back(other);
    return before.said.empty() ? std::nullopt : std::optional(std::move(before));
}

/// Whom the mandatory directives of the record bind, of an item and all that it is on a balloon with.
class Bindings {
public:
    static Result<std::optional<Bindings>> read(Books& books) {
        auto issued = directivesIssued(books, CivilDate::last());
        if (!issued)
            return tl::unexpected(issued.error());
        std::erase_if(*issued, [](const auto& each) { return each.body.recommended; });
        if (issued->empty())
            return std::nullopt;
        auto facts = books.facts({}, CivilDate::last());
        auto parts = PartsKnown::read(books, CivilDate::last());
        if (!facts || !parts)
            return tl::unexpected(facts ? parts.error() : facts.error());
        return Bindings(std::move(*issued), std::move(*facts), std::move(*parts));
    }

    /// A directive that would bind if the item were as it was said to be, and does not as it is by now.
    [[nodiscard]] std::optional<DirectiveId> letGo(const ItemId& id, const ItemEntered& said) const {
        const auto item = std::ranges::find(m_items, id, &ItemFacts::id);
        if (item == m_items.end())
            return std::nullopt;
        auto was = *item;
        was.kind = said.kind;
        was.type = said.type;
        was.serial = said.serial;
        std::vector<const ItemFacts*> now, then;
        for (const auto& each : m_items)
            if (each.id == id || (item->balloon && each.balloon == item->balloon)) {
                now.push_back(&each);
                then.push_back(each.id == id ? &was : &each);
            }
        for (const auto& directive : m_issued)
            for (std::size_t at = 0; at < now.size(); ++at)
                if (appliesTo(directive.body.applies, *then[at], then, m_parts).applies == Truth::Yes &&
                    appliesTo(directive.body.applies, *now[at], now, m_parts).applies != Truth::Yes)
                    return directive.body.directive;
        return std::nullopt;
    }

private:
    Bindings(std::vector<Said<DirectiveIssued>> issued, std::vector<ItemFacts> items, PartsKnown parts)
        : m_issued(std::move(issued)), m_items(std::move(items)), m_parts(std::move(parts)) {}

    std::vector<Said<DirectiveIssued>> m_issued;
    std::vector<ItemFacts> m_items;
    PartsKnown m_parts;
};

bool mayLetGo(const Entry& entry) {
    return std::holds_alternative<ItemEntered>(entry.body) || std::holds_alternative<EntryCorrected>(entry.body) ||
           std::holds_alternative<EntryVoided>(entry.body);
}

}

Findings askLetGo(const Batch& batch) {
    std::vector<Problem> problems;
    if (std::ranges::none_of(batch.entries, [](const auto& each) { return mayLetGo(each.entry); }))
        return problems;
    const auto again = batch.books.enteredAgain();
    if (!again)
        return tl::unexpected(again.error());
    std::optional<std::optional<Bindings>> bound;
    for (const auto& [entry, line] : batch.entries) {
        if (!mayLetGo(entry))
            continue;
        const auto before = saidBefore(batch, entry, *again);
        if (!before)
            return tl::unexpected(atLine(before.error(), line));
        if (!*before)
            continue;
        if (!bound) {
            auto read = Bindings::read(batch.books);
            if (!read)
                return tl::unexpected(atLine(read.error(), line));
            bound = std::move(*read);
        }
        if (!*bound)
            return problems;
        std::optional<DirectiveId> freed;
        for (const auto& said : (*before)->said)
            if (!freed)
                freed = (*bound)->letGo((*before)->item, said);
        if (!freed)
            continue;
        JournalLine written;
        written.entry = entry;
        const auto& root = (*before)->root ? *(*before)->root : written;
        const TakenBack taken{root, {}, (*before)->item, ReleaseFault::GroundUnsaid, *freed};
        const auto asked =
            (*before)->root ? askWhoTakesBack(batch, entry, taken, line) : askWhoDecides(batch, entry, taken, line);
        if (!asked)
            return tl::unexpected(atLine(asked.error(), line));
        problems.insert(problems.end(), asked->begin(), asked->end());
    }
    return problems;
}

}

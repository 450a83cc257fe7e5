// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/components/item_said.h"
#include "gate/defects/deciding.h"
#include "gate/defects/read_again.h"
#include "gate/refusing.h"
#include "registry/reading_said.h"

#include <algorithm>

namespace crownring {

namespace {

/// By what the items of a type are judged, before and after.
struct Rejudged {
    std::vector<LimitSpan> before, after;
};

/// The first reading of an item that failed and would no longer.
Result<std::optional<ReadingTaken>> noLongerFailing(Books& books, const ItemId& item,
                                                    std::span<const Rejudged> judges) {
    std::optional<ReadingTaken> found;
    const auto read = books.fabric({item}, CivilDate::last(), [&](const FabricHistory& history) {
        for (const auto& reading : history.readings)
            for (const auto& [before, after] : judges)
                if (!found && judgedAsTaken(reading.body, reading.stamp.at, before) == Judgement::Fails &&
                    judgedAsTaken(reading.body, reading.stamp.at, after) != Judgement::Fails)
                    found = reading.body;
    });
    if (!read)
        return tl::unexpected(read.error());
    return found;
}

/// Of the limits that a batch states: all of them together, against what was stated without them.
Findings askedOfLimits(const Batch& batch) {
    std::set<EntryId> stated;
    for (const auto& [entry, line] : batch.entries)
        if (std::holds_alternative<LimitStated>(entry.body))
            stated.insert(entry.id);
    std::vector<Problem> problems;
    if (stated.empty())
        return problems;
    const auto without = typeBook(batch.books, CivilDate::last(), stated);
    const auto with = typeBook(batch.books, CivilDate::last());
    const auto facts = batch.books.facts({}, CivilDate::last());
    if (!without || !with || !facts)
        return tl::unexpected(!without ? without.error() : !with ? with.error() : facts.error());
    for (const auto& item : *facts) {
        const Rejudged judge{without->spansOf(item.kind, item.type), with->spansOf(item.kind, item.type)};
        if (judge.before.empty() || judge.before.size() == judge.after.size())
            continue;
        const auto reading = noLongerFailing(batch.books, item.id, {&judge, 1});
        if (!reading)
            return tl::unexpected(reading.error());
        for (const auto& [entry, line] : batch.entries) {
            const auto* limit = *reading ? std::get_if<LimitStated>(&entry.body) : nullptr;
            if (!limit || limit->kind != item.kind || limit->type.text() != item.type.value_or("") ||
                limit->quantity != (*reading)->quantity)
                continue;
            JournalLine root;
            root.entry = entry;
            const auto asked =
                askWhoDecides(batch, entry, {root, {}, item.id, ReleaseFault::ReadingUnsaid, said(**reading)}, line);
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            problems.insert(problems.end(), asked->begin(), asked->end());
        }
        if (!problems.empty())
            break; // one item says it for all
    }
    return problems;
}

/// Of an item that is said to be of another type, or of none.
Findings askedOfItem(const Batch& batch, const Entry& entry, int line) {
    const auto of = enteredBy(batch, entry);
    if (!of)
        return tl::unexpected(of.error());
    if (!*of)
        return std::vector<Problem>{};
    bool isRead = false;
    const auto read = batch.books.fabric({(*of)->item}, CivilDate::last(),
                                         [&](const FabricHistory& history) { isRead = !history.readings.empty(); });
    if (!read)
        return tl::unexpected(read.error());
    if (!isRead)
        return std::vector<Problem>{};
    const auto others = saidOtherwise(batch, entry, **of);
    const auto book = typeBook(batch.books, CivilDate::last());
    const auto now = limitsEver(batch.books, (*of)->item);
    if (!others || !book || !now)
        return tl::unexpected(!others ? others.error() : !book ? book.error() : now.error());
    std::vector<Rejudged> judges;
    for (const auto& other : *others)
        judges.push_back({book->spansOf(other.kind, other.type), *now});
    const auto reading = noLongerFailing(batch.books, (*of)->item, judges);
    if (!reading)
        return tl::unexpected(reading.error());
    if (!*reading)
        return std::vector<Problem>{};
    JournalLine root;
    root.entry = entry;
    return askWhoDecides(
        batch, entry,
        {(*of)->root ? *(*of)->root : root, {}, (*of)->item, ReleaseFault::ReadingUnsaid, said(**reading)}, line);
}

}

Findings askJudgedAnew(const Batch& batch) {
    auto problems = askedOfLimits(batch);
    if (!problems)
        return problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto found = askedOfItem(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        problems->insert(problems->end(), found->begin(), found->end());
    }
    return problems;
}

}

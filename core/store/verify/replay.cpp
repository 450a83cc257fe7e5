// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verify/replay.h"

#include "record/amendment.h"

#include <algorithm>
#include <map>
#include <unordered_map>

namespace crownring {

namespace {

struct Amendment {
    EntryId target;
    std::int64_t number = 0;
    Entry entry;
};

/// All amendments of a journal, and what each is about in the end.
class Amendments {
public:
    void add(const EntryId& target, std::int64_t number, Entry&& entry) {
        m_byId.emplace(entry.id, m_all.size());
        m_of[target].push_back(m_all.size());
        m_all.push_back({target, number, std::move(entry)});
    }

    /// The entries that are amended, each once.
    [[nodiscard]] std::vector<EntryId> roots() const {
        std::vector<EntryId> roots;
        for (const auto& each : m_all)
            if (!m_byId.contains(each.target) &&
                std::ranges::find(m_of.at(each.target), std::size_t(&each - m_all.data())) ==
                    m_of.at(each.target).begin())
                roots.push_back(each.target);
        return roots;
    }

    /// Those of one entry, directly or through one another, in the order of their arrival.
    [[nodiscard]] std::vector<Entry> of(const EntryId& root) const {
        std::vector<std::size_t> found;
        std::vector<EntryId> ahead{root};
        while (!ahead.empty()) {
            const auto next = m_of.find(ahead.back());
            ahead.pop_back();
            if (next == m_of.end())
                continue;
            for (const auto at : next->second) {
                found.push_back(at);
                ahead.push_back(m_all[at].entry.id);
            }
        }
        std::ranges::sort(found);
        std::vector<Entry> entries;
        entries.reserve(found.size());
        for (const auto at : found)
            entries.push_back(m_all[at].entry);
        return entries;
    }

    [[nodiscard]] AmendmentTargets targets() const {
        AmendmentTargets targets;
        targets.reserve(m_all.size());
        for (const auto& each : m_all)
            targets.emplace_back(each.target, each.number);
        return targets;
    }

private:
    std::vector<Amendment> m_all;
    std::unordered_map<EntryId, std::size_t> m_byId;
    std::map<EntryId, std::vector<std::size_t>> m_of;
};

}

AmendmentTargets replay(JournalTable& journal, Projector& into, const std::function<bool()>& goOn) {
    constexpr std::int64_t step = 5000;
    Amendments amendments;
    bool stopped = false;
    std::unordered_map<EntryId, Written> unread;
    journal.each([&](Written&& written) {
        stopped = stopped || (goOn && written.number % step == 0 && !goOn());
        if (stopped)
            return;
        if (written.unread)
            unread.emplace(written.entry.id, std::move(written));
        else if (const auto target = amends(written.entry))
            amendments.add(*target, written.number, std::move(written.entry));
        else
            into.project(written.entry);
    });
    for (const auto& [id, written] : unread)
        into.noteUnread(written.entry, !amended(written.entry, amendments.of(id)).entry);
    for (const auto& id : amendments.roots()) {
        if (stopped)
            break;
        if (unread.contains(id))
            continue;
        auto root = journal.find(id);
        if (!root)
            throw StoreError(StoreFault::JournalLacks, {id});
        AmendmentTree tree(std::move(root->entry));
        for (auto& amendment : amendments.of(id))
            tree.add(std::move(amendment));
        into.withdraw(tree.original());
        if (tree.now())
            into.project(*tree.now(), tree.original());
        into.noteIdle(tree);
    }
    into.settle();
    return amendments.targets();
}

void remake(JournalTable& journal, Projector& projector, Tallies& tallies) {
    projector.clear();
    for (const auto& [target, number] : replay(journal, projector))
        journal.noteAmendment(target, number);
    static_cast<void>(projector.takeTold()); // all of it is in what is made anew
    tallies.makeAnew();
}

}

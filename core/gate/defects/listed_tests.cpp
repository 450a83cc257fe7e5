// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "bench/checklist/further_line.h"
#include "bench/checklist/inspection.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// The gist of 91.405 was read; that a statement alone answers no test is our reading of them.
constexpr const char* listedRule = "14 CFR 43.11(b), 91.405; ML.A.403 (from memory)";

struct ListedTest {
    InspectionId list;
    Argument title;
};

/// What the lists that are pending by now say of an item, asked once of a batch.
class Pending {
public:
    explicit Pending(Books& books) : m_books(books) {}

    /// The list that the test is on, itself or what it counts for; nothing where it is no test, or on none.
    Result<std::optional<ListedTest>> listed(const RequirementDone& done, CivilDate on) {
        const auto item = known(done.item);
        if (!item)
            return tl::unexpected(item.error());
        if (!*item)
            return std::nullopt;
        for (const auto& pending : (*item)->lists) {
            const auto told = m_books.told(
                {Subject::Inspection, pending.inspection.text(), {kindName<InspectionClosed>()}, CivilDate::last()});
            if (!told)
                return tl::unexpected(told.error());
            for (const auto& line : *told) {
                const auto& entry = nowOf(line);
                const auto* closed = std::get_if<InspectionClosed>(&entry.body);
                if (!closed || on < entry.on)
                    continue;
                const auto test = testOn(*closed, **item, done);
                if (!test)
                    return tl::unexpected(test.error());
                if (*test)
                    return ListedTest{pending.inspection, (*test)->title};
            }
        }
        return std::nullopt;
    }

private:
    Result<const ItemFacts*> known(const ItemId& id) {
        auto at = m_items.find(id);
        if (at == m_items.end()) {
            auto facts = m_books.facts({std::nullopt, {id}}, CivilDate::last());
            if (!facts)
                return tl::unexpected(facts.error());
            at = m_items.emplace(id, facts->empty() ? std::nullopt : std::optional(std::move(facts->front()))).first;
        }
        return at->second && !at->second->lists.empty() ? &*at->second : nullptr;
    }
    /// Null where none of what was excepted is such a test.
    Result<const Requirement*> testOn(const InspectionClosed& closed, const ItemFacts& item,
                                      const RequirementDone& done) {
        if (!m_obligations) {
            auto obligations = obligationsOn(m_books, CivilDate::last());
            if (!obligations)
                return tl::unexpected(obligations.error());
            m_obligations = std::move(*obligations);
        }
        for (const auto& each : closed.excepted) {
            const auto* asked =
                each.item == item.id ? m_obligations->of(item.id, item.balloon).find(each.requirement) : nullptr;
            if (asked && isTestOfFabric(*asked, item.kind) &&
                (asked->id == done.requirement ||
                 std::ranges::find(asked->satisfiedBy, done.requirement) != asked->satisfiedBy.end()))
                return asked;
        }
        return nullptr;
    }

    Books& m_books;
    std::optional<Obligations> m_obligations;
    std::map<ItemId, std::optional<ItemFacts>> m_items;
};

}

Findings askListedTests(const Batch& batch) {
    std::vector<Problem> problems;
    Pending pending(batch.books);
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<RequirementDone>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* done = *now ? std::get_if<RequirementDone>(&(*now)->body) : nullptr;
        if (!done)
            continue;
        const auto test = pending.listed(*done, (*now)->on);
        if (!test)
            return tl::unexpected(atLine(test.error(), line));
        if (!*test)
            continue;
        const auto visit = accomplishedBy(batch.books, *done);
        if (!visit)
            return tl::unexpected(atLine(visit.error(), line));
        const bool onPaper = !done->ref.empty() && done->signatory && !done->licence.empty();
        if (!*visit && !onPaper) // of a visit `askAccomplishments` asks
            problems.push_back(asAmended(Problem{ReleaseFault::TestNotRead,
                                                 {(*test)->title, done->item, (*test)->list},
                                                 {{}, line, "requirement"},
                                                 listedRule},
                                         entry));
    }
    return problems;
}

}

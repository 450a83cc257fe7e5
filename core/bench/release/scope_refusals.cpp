// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/scope_refusals.h"

#include "bench/checklist/shelf.h"
#include "bench/release/accomplished.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* lookedAtRule = "ML.A.801(a); 14 CFR 43.15(c)(1) (from memory)";
constexpr const char* inspectedRule = "14 CFR 43.11(a)(4), (a)(5)";

bool isGone(ServiceState state) {
    return state == ServiceState::Scrapped || state == ServiceState::Lost || state == ServiceState::Condemned;
}

class CertifiedScope {
public:
    explicit CertifiedScope(const BenchFile& file) : m_file(file), m_lines(workLines(file.inspection, file.items)) {}

    std::vector<Refusal> ask() && {
        askThere();
        askChecklist();
        askLookedAt();
        askInspected();
        return std::move(m_refusals);
    }

private:
    void refuse(ReleaseFault fault, Arguments arguments, const char* rule, std::optional<ItemId> item = {}) {
        m_refusals.push_back({Refusal::Kind::Scope, fault, std::move(arguments), rule, {}, std::move(item)});
    }

    /// What was scrapped, lost or condemned, or flies with another balloon, is no part of this aircraft.
    void askThere() {
        const auto& balloon = m_file.inspection.opened.body.balloon;
        for (const auto& item : m_file.items) {
            if (item.out && isGone(item.out->state))
                refuse(ReleaseFault::OutOfService, {item.id, reasonOf(*item.out)}, lookedAtRule, item.id);
            else if (balloon && item.balloon && *item.balloon != *balloon)
                refuse(ReleaseFault::FittedElsewhere, {item.id, *item.balloon, *balloon}, lookedAtRule, item.id);
        }
    }

    /// Under its name and revision all that comes in every such visit is there; an organisation's own may be more.
    void askChecklist() {
        const auto& used = m_file.inspection.checklist;
        const auto* whole = shelved(used.id, used.revision);
        if (!whole)
            return;
        const auto lines = linesFor(*whole, m_file.visit());
        const auto lacking = std::ranges::count_if(lines, [&](const ChecklistLine* line) {
            return comesAlways(*line) && std::ranges::none_of(used.lines, [&](const ChecklistLine& each) {
                       return each.id == line->id && each.kinds == line->kinds && each.readings == line->readings &&
                              each.required == line->required;
                   });
        });
        if (lacking > 0)
            refuse(ReleaseFault::ChecklistCut, {used.title, used.revision, static_cast<int>(lacking)}, lookedAtRule);
    }
    [[nodiscard]] bool comesAlways(const ChecklistLine& line) const {
        const auto isHere = [&](ItemKind kind) {
            return std::ranges::find(m_file.items, kind, &ItemFacts::kind) != m_file.items.end();
        };
        return line.onlyWith.empty() && line.after.empty() &&
               (line.kinds.empty() || std::ranges::any_of(line.kinds, isHere));
    }

    [[nodiscard]] static bool isDone(const WorkLine& work) { return work.state() == LineState::Done; }

    /// Where every line is not applicable nothing was inspected. What is open is said line by line.
    void askLookedAt() {
        if (std::ranges::any_of(m_lines, &WorkLine::isMissing))
            return;
        if (std::ranges::none_of(m_lines, isDone))
            return m_refusals.push_back({Refusal::Kind::LineOpen, ReleaseFault::NothingLookedAt, {}, lookedAtRule});
        if (!isUsInspection())
            return;
        for (const auto& item : m_file.items) {
            const auto isOfItem = [&](const WorkLine& work) { return work.item && work.item->id == item.id; };
            const auto isDoneOnIt = [&](const WorkLine& work) { return isOfItem(work) && isDone(work); };
            if (std::ranges::any_of(m_lines, isOfItem) && std::ranges::none_of(m_lines, isDoneOnIt))
                refuse(ReleaseFault::NothingLookedAtOn, {item.id}, inspectedRule, item.id);
        }
    }

    /// The words of 43.11 say that each item was inspected so: then that inspection is in the work and was carried out.
    void askInspected() {
        if (!isUsInspection() || std::ranges::any_of(m_lines, &WorkLine::isMissing))
            return;
        const auto done = accomplishments(m_file);
        for (const auto& owed : m_file.owed)
            if (std::ranges::find(done, owed) == done.end())
                refuse(ReleaseFault::NotInspected, {titleOf(m_file, owed.requirement), owed.item}, inspectedRule,
                       owed.item);
    }

    [[nodiscard]] bool isUsInspection() const {
        return regimeOf(m_file.visit()) == Regime::Us14Cfr && isPeriodic(m_file.visit()) &&
               isOfItsVisit(m_file.visit(), m_file.inspection.opened.body.work);
    }

    const BenchFile& m_file;
    std::vector<WorkLine> m_lines;
    std::vector<Refusal> m_refusals;
};

}

std::vector<Refusal> refusalsOfScope(const BenchFile& file) { return CertifiedScope(file).ask(); }

}

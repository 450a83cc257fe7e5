// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/discrepancies.h"
#include "bench/release/accomplished.h"
#include "bench/release/signed_phrase.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "measure/duration_text.h"
#include "problem/faults/release_fault.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// What each inspection that is released in a batch accomplishes, or whose return to service is approved in it, and
/// when.
class Released {
public:
    explicit Released(const Batch& batch) : m_batch(batch) {}

    struct Answer {
        std::optional<CivilDate> on; ///< of the closing; nothing where the batch makes nothing of it count
        std::vector<Work> work;
        std::vector<ItemFacts> items; ///< with the clocks that are signed for
    };
    Result<const Answer*> by(const InspectionId& inspection) {
        const auto known = m_known.find(inspection);
        if (known != m_known.end())
            return &known->second;
        Answer answer;
        for (const auto& [entry, line] : m_batch.entries) {
            const auto* closing = std::get_if<InspectionClosed>(&entry.body);
            const auto* approval = std::get_if<ReturnApproved>(&entry.body);
            if (closing && closing->inspection == inspection && closing->outcome == Outcome::Released) {
                const auto file = benchFileBefore(m_batch.books, inspection, entry.id, entry.on);
                if (!file)
                    return tl::unexpected(file.error());
                answer = {entry.on, accomplishments(*file), file->items};
            } else if (approval && approval->inspection == inspection) {
                const auto file = returnFile(m_batch.books, inspection, entry.on, &entry);
                if (!file && file.error().fault == Fault(ReleaseFault::ListAnswered))
                    continue; // `askReturns` says so
                if (!file)
                    return tl::unexpected(file.error());
                answer = {file->list.closed.at.on(), file->accomplishments, file->then.items};
            }
        }
        return &m_known.emplace(inspection, std::move(answer)).first->second;
    }

private:
    const Batch& m_batch;
    std::map<InspectionId, Answer> m_known;
};

/// @param asWritten whether it says so itself, and not what a correction made of another
Findings judged(Released& released, const InspectionId& inspection, const Entry& entry, int line, bool asWritten) {
    const auto& done = std::get<RequirementDone>(entry.body);
    const auto answer = released.by(inspection);
    if (!answer)
        return tl::unexpected(answer.error());
    if (!asWritten || (*answer)->on != entry.on)
        return std::vector{Problem{ReleaseFault::NotWithItsSignature, {inspection}, {{}, line, "ref"}}};
    if (std::ranges::find((*answer)->work, Work{done.item, done.requirement}) == (*answer)->work.end())
        return std::vector{Problem{
            ReleaseFault::NotAccomplished, {done.requirement, done.item, inspection}, {{}, line, "requirement"}}};
    const auto item = std::ranges::find((*answer)->items, done.item, &ItemFacts::id);
    const auto differs = [](const auto& stated, const auto& shown) { return stated && stated != shown; };
    if (item != (*answer)->items.end() &&
        (differs(done.clock.minutes, item->clock.minutes) || differs(done.clock.landings, item->clock.landings) ||
         differs(done.clock.inflations, item->clock.inflations)))
        return std::vector{Problem{ReleaseFault::OtherText,
                                   {Phrase{SignedPhrase::Clocks, {}},
                                    item->clock.minutes ? Argument(hoursAndMinutes(*item->clock.minutes)) : Argument()},
                                   {{}, line, "clock"}}};
    return std::vector<Problem>{};
}

/// An inspection under a name that accomplished something before it was there.
Findings takenNames(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* opened = std::get_if<InspectionOpened>(&entry.body);
        if (!opened)
            continue;
        const auto under = batch.books.doneUnder(opened->inspection.text());
        if (!under)
            return tl::unexpected(atLine(under.error(), line));
        const auto isOfBatch = [&](const DoneUnder& each) {
            return std::ranges::any_of(batch.entries,
                                       [&](const NumberedEntry& other) { return other.entry.id == each.entry; });
        };
        if (!std::ranges::all_of(*under, isOfBatch))
            problems.push_back(Problem{ReleaseFault::NamedBefore, {opened->inspection}, {{}, line, "inspection"}});
    }
    return problems;
}

/// What an inspection accomplished counts from its approval on: all of it, or what was done would stay undone unseen.
Findings leftOut(const Batch& batch, Released& released) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* approval = std::get_if<ReturnApproved>(&entry.body);
        if (!approval)
            continue;
        const auto answer = released.by(approval->inspection);
        if (!answer)
            return tl::unexpected(atLine(answer.error(), line));
        const auto written = batch.books.doneUnder(approval->inspection.text());
        if (!written)
            return tl::unexpected(atLine(written.error(), line));
        for (const auto& work : (*answer)->work)
            if (std::ranges::none_of(*written, [&](const DoneUnder& each) {
                    return each.item == work.item && each.requirement == work.requirement;
                }))
                problems.push_back(Problem{
                    ReleaseFault::LeftOut, {work.requirement, work.item, approval->inspection}, {{}, line, {}}});
    }
    return problems;
}

/// A correction that leaves what was accomplished, and by which inspection, as it was written adds nothing.
Result<bool> addsNothing(Journal& journal, const Entry& entry, const RequirementDone& now) {
    const auto* correction = std::get_if<EntryCorrected>(&entry.body);
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!correction && !taken)
        return false;
    const auto root = rootOf(journal, correction ? correction->replaces : taken->voids);
    if (!root)
        return tl::unexpected(root.error());
    const auto* written = std::get_if<RequirementDone>(&root->entry.body);
    return written && written->ref == now.ref;
}

}

Findings askAccomplishments(const Batch& batch) {
    auto taken = takenNames(batch);
    if (!taken)
        return taken;
    auto problems = std::move(*taken);
    Released released(batch);
    auto missing = leftOut(batch, released);
    if (!missing)
        return missing;
    std::ranges::move(*missing, std::back_inserter(problems));
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<RequirementDone>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* done = *now ? std::get_if<RequirementDone>(&(*now)->body) : nullptr;
        if (!done)
            continue;
        const auto inspection = accomplishedBy(batch.books, *done);
        if (!inspection)
            return tl::unexpected(atLine(inspection.error(), line));
        const auto same = addsNothing(batch.journal, entry, *done);
        if (!same)
            return tl::unexpected(atLine(same.error(), line));
        if (!*inspection || *same)
            continue;
        auto found = judged(released, **inspection, **now, line, std::holds_alternative<RequirementDone>(entry.body));
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}

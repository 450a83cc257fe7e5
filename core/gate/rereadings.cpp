// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/type_book.h"
#include "bench/release/bench_file.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "registry/reading_said.h"

#include <algorithm>

namespace crownring {

namespace {

/// The reading that a defect on an item was found by, as it stands now; nothing where none found it, or where that was
/// taken back.
Result<std::optional<Entry>> failedReading(const Batch& batch, const DefectCleared& cleared) {
    const auto told =
        batch.books.told({Subject::Defect, cleared.defect.text(), {kindName<DefectFound>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    for (auto line = told->rbegin(); line != told->rend(); ++line) {
        const auto* found = std::get_if<DefectFound>(&nowOf(*line).body);
        if (!found || found->item != cleared.item || !found->reading)
            continue;
        const auto reading = batch.journal.line(*found->reading);
        if (!reading)
            return tl::unexpected(reading.error());
        if (*reading && !(*reading)->voided && !(*reading)->unread &&
            std::holds_alternative<ReadingTaken>(nowOf(**reading).body))
            return nowOf(**reading);
    }
    return std::optional<Entry>();
}

Result<bool> isReadAgain(const Batch& batch, const Entry& clearing, const Entry& failed) {
    const auto& reading = std::get<ReadingTaken>(failed.body);
    const auto facts = batch.books.facts({{}, {reading.item}}, clearing.on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty() || facts->front().out) // out of service: nothing flies on it
        return true;
    const auto& item = facts->front();
    const auto book = typeBook(batch.books, clearing.on);
    if (!book)
        return tl::unexpected(book.error());
    std::vector<StatedLimit> limits;
    for (const auto& limit : book->limits)
        if (limit.kind == item.kind && item.type && limit.type.text() == *item.type)
            limits.push_back(limit);
    if (stateOf(reading, limits).judgement != Judgement::Fails) // as it says by now
        return true;
    bool passes = false;
    const auto taken = batch.books.fabric({reading.item}, clearing.on, [&](const FabricHistory& history) {
        for (const auto& later : history.readings)
            passes = passes || (later.stamp.id != failed.id && !(later.stamp.at < momentOf(failed)) &&
                                takesThePlaceOf(later.body, reading) &&
                                stateOf(later.body, limits).judgement == Judgement::Passes);
    });
    if (!taken)
        return tl::unexpected(taken.error());
    return passes;
}

}

Findings askRereadings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectCleared>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* cleared = *now ? std::get_if<DefectCleared>(&(*now)->body) : nullptr;
        if (!cleared)
            continue;
        const auto failed = failedReading(batch, *cleared);
        if (!failed)
            return tl::unexpected(atLine(failed.error(), line));
        const auto again = *failed ? isReadAgain(batch, **now, **failed) : true;
        if (!again)
            return tl::unexpected(atLine(again.error(), line));
        if (!*again)
            problems.push_back(Problem{ReleaseFault::NotReadAgain,
                                       {cleared->defect, said(std::get<ReadingTaken>((*failed)->body))},
                                       {{}, line, "defect"},
                                       "ML.A.403(a); 14 CFR 43.13(b) (from memory)"});
    }
    return problems;
}

}

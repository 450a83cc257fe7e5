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

/// One defect as it stands at its clearing.
struct Answered {
    const Entry* found = nullptr; ///< the latest finding that names a reading; null where none does
    bool worked = false;          ///< a repair or a replaced part was written down for it since
};

Answered answered(const std::vector<JournalLine>& told, const Entry& clearing) {
    Answered answer;
    for (const auto& line : told) {
        const auto& now = nowOf(line);
        if (clearing.on < now.on)
            continue;
        if (const auto* found = std::get_if<DefectFound>(&now.body))
            answer = {found->reading ? &now : nullptr, false};
        else if (answer.found && answer.found->on <= now.on)
            answer.worked = true;
    }
    return answer;
}

Result<std::vector<StatedLimit>> limitsOf(Books& books, const ItemId& item, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    auto book = typeBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    std::erase_if(book->limits, [&](const StatedLimit& limit) {
        return facts->empty() || facts->front().kind != limit.kind || facts->front().type != limit.type.text();
    });
    return std::move(book->limits);
}

/// A later reading in its place is inside.
Result<bool> isReadAgain(Books& books, const Entry& failed, std::span<const StatedLimit> limits, CivilDate on) {
    const auto& reading = std::get<ReadingTaken>(failed.body);
    bool passes = false;
    const auto told = books.fabric({reading.item}, on, [&](const FabricHistory& history) {
        passes = passes || std::ranges::any_of(history.readings, [&](const Stamped<ReadingTaken>& later) {
                     return stampOf(failed) < later.stamp && takesThePlaceOf(later.body, reading) &&
                            stateOf(later.body, limits).judgement == Judgement::Passes;
                 });
    });
    if (!told)
        return tl::unexpected(told.error());
    return passes;
}

/// The reading that the clearing leaves beyond its limit; nothing where none is.
Result<std::optional<ReadingTaken>> stillBeyond(const Batch& batch, const Entry& clearing) {
    const auto& defect = std::get<DefectCleared>(clearing.body).defect;
    const auto told = batch.books.told({Subject::Defect,
                                        defect.text(),
                                        {kindName<DefectFound>(), kindName<RepairMade>(), kindName<PartReplaced>()},
                                        clearing.on});
    if (!told)
        return tl::unexpected(told.error());
    const auto answer = answered(*told, clearing);
    if (!answer.found || answer.worked)
        return std::nullopt;
    const auto root = rootOf(batch.journal, *std::get<DefectFound>(answer.found->body).reading);
    if (!root)
        return tl::unexpected(root.error());
    if (root->voided || root->unread || !std::holds_alternative<ReadingTaken>(nowOf(*root).body))
        return std::nullopt;
    const auto& failed = nowOf(*root);
    const auto& reading = std::get<ReadingTaken>(failed.body);
    const auto limits = limitsOf(batch.books, reading.item, clearing.on);
    if (!limits)
        return tl::unexpected(limits.error());
    if (stateOf(reading, *limits).judgement != Judgement::Fails)
        return std::nullopt;
    const auto again = isReadAgain(batch.books, failed, *limits, clearing.on);
    if (!again)
        return tl::unexpected(again.error());
    return *again ? std::nullopt : std::optional(reading);
}

}

Findings askPutRight(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectCleared>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto beyond = stillBeyond(batch, **now);
        if (!beyond)
            return tl::unexpected(atLine(beyond.error(), line));
        if (*beyond)
            problems.push_back(Problem{ReleaseFault::NotPutRight,
                                       {std::get<DefectCleared>((*now)->body).defect, said(**beyond)},
                                       {{}, line, "defect"},
                                       "ML.A.403(a) (from memory); 14 CFR 91.405"});
    }
    return problems;
}

}

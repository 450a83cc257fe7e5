// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/defects/read_again.h"

#include "answers/bench_file.h"
#include "answers/type_book.h"
#include "answers/visit/retest.h"
#include "bench/release/bench_file.h"

namespace crownring {

Result<std::vector<StatedLimit>> limitsOn(Books& books, const ItemId& id, CivilDate on) {
    std::vector<StatedLimit> limits;
    const auto facts = books.facts({{}, {id}}, on);
    const auto book = typeBook(books, on);
    if (!facts || !book)
        return tl::unexpected(facts ? book.error() : facts.error());
    if (facts->empty() || !facts->front().type)
        return limits;
    const auto& item = facts->front();
    for (const auto& limit : book->limits)
        if (limit.kind == item.kind && limit.type.text() == *item.type)
            limits.push_back(limit);
    return limits;
}

Result<std::vector<LimitSpan>> limitsEver(Books& books, const ItemId& id) {
    const auto facts = books.facts({{}, {id}}, CivilDate::last());
    const auto book = typeBook(books, CivilDate::last());
    if (!facts || !book)
        return tl::unexpected(facts ? book.error() : facts.error());
    return facts->empty() ? std::vector<LimitSpan>() : book->spansOf(facts->front().kind, facts->front().type);
}

Result<std::optional<Entry>> failedReading(const Batch& batch, const DefectId& defect, const ItemId& item) {
    const auto told = batch.books.told({Subject::Defect, defect.text(), {kindName<DefectFound>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    for (auto line = told->rbegin(); line != told->rend(); ++line) {
        const auto* found = std::get_if<DefectFound>(&nowOf(*line).body);
        if (!found || found->item != item || !found->reading)
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
    const auto limits = limitsEver(batch.books, reading.item);
    if (!limits)
        return tl::unexpected(limits.error());
    if (judgedAsTaken(reading, momentOf(failed), *limits) != Judgement::Fails) // as it says by now
        return true;
    const auto calibrations = calibrationsOn(batch.books, CivilDate::last());
    if (!calibrations)
        return tl::unexpected(calibrations.error());
    bool passes = false;
    const auto taken = batch.books.fabric({reading.item}, clearing.on, [&](const FabricHistory& history) {
        for (const auto& later : history.readings)
            passes = passes || (later.stamp.id != failed.id && !(later.stamp.at < momentOf(failed)) &&
                                takesThePlaceOf(later.body, reading) && isRetest(later, reading, *calibrations) &&
                                judgedAsTaken(later.body, later.stamp.at, *limits) == Judgement::Passes);
    });
    if (!taken)
        return tl::unexpected(taken.error());
    return passes;
}

}

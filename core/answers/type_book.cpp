// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/type_book.h"

#include "bench/release/latest_word.h"

#include <algorithm>

namespace crownring {

namespace {

/// Puts a statement among those that stand.
template <class Stated>
void hear(std::vector<Stated>& standing, const Stated& said) {
    std::erase_if(standing, [&](const Stated& earlier) { return takesThePlaceOf(said, earlier); });
    standing.push_back(said);
}

}

namespace {

struct Heard {
    LimitStated limit;
    Moment from;
    std::optional<Moment> until;
};

Decision decideBy(const Measured& reading, std::span<const LimitSpan> spans, auto&& counts) {
    std::vector<StatedLimit> limits;
    std::vector<const LimitSpan*> of;
    for (const auto& span : spans)
        if (counts(span)) {
            limits.push_back(span.limit);
            of.push_back(&span);
        }
    auto decision = decide(reading, limits);
    if (decision.limit)
        decision.limit = &of[static_cast<std::size_t>(decision.limit - limits.data())]->limit;
    return decision;
}

}

std::vector<LimitSpan> TypeBook::spansOf(ItemKind kind, const std::optional<std::string>& type) const {
    std::vector<LimitSpan> of;
    for (const auto& span : spans)
        if (type && span.isOf(kind, *type))
            of.push_back(span);
    return of;
}

Result<TypeBook> typeBook(Books& books, CivilDate on, const std::set<EntryId>& without) {
    const auto told = books.told({Subject::Type, {}, {}, on});
    if (!told)
        return tl::unexpected(told.error());
    TypeBook book;
    std::vector<Heard> heard;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* type = std::get_if<TypeDescribed>(&now.body))
            hear(book.types, *type);
        else if (const auto* stated = std::get_if<LimitStated>(&now.body); stated && !without.contains(now.id)) {
            for (auto& earlier : heard)
                if (!earlier.until && takesThePlaceOf(*stated, earlier.limit))
                    earlier.until = momentOf(now);
            heard.push_back({*stated, momentOf(now), {}});
        }
    }
    for (const auto& each : heard)
        if (auto limit = limitFrom(each.limit)) {
            if (!each.until)
                book.limits.push_back(*limit);
            book.spans.push_back({std::move(*limit), each.from, each.until});
        }
    return book;
}

Decision decideAsTaken(const Measured& reading, Moment at, std::span<const LimitSpan> spans) {
    auto now = decideBy(reading, spans, [](const LimitSpan& span) { return !span.until; });
    if (now.judgement == Judgement::Fails)
        return now;
    const auto then = decideBy(reading, spans, [&](const LimitSpan& span) { return span.covers(at); });
    return then.judgement == Judgement::Fails ? then : now;
}

Judgement judgedAsTaken(const ReadingTaken& reading, Moment at, std::span<const LimitSpan> spans) {
    const auto measured = measuredFrom(reading);
    return measured ? decideAsTaken(*measured, at, spans).judgement : Judgement::NoLimit;
}

}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/components/part_fault.h"
#include "record/kinds/service.h"

#include <set>

namespace crownring {

namespace {

Result<std::optional<ItemFacts>> factsOf(Books& books, const ItemId& item, CivilDate on) {
    auto facts = books.facts({std::nullopt, {item}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    return facts->empty() ? std::nullopt : std::optional(std::move(facts->front()));
}

/// Up from what it is fitted to: whether the item itself is met.
Result<bool> carriesItself(Books& books, const ItemId& item, ItemId at, CivilDate on) {
    for (std::set<ItemId> met; met.insert(at).second;) {
        if (at == item)
            return true;
        const auto facts = factsOf(books, at, on);
        if (!facts)
            return tl::unexpected(facts.error());
        if (!*facts || !(*facts)->carrier)
            return false;
        at = *(*facts)->carrier;
    }
    return false;
}

/// Not with what it is on.
bool isApartItself(const OutOfService& out) {
    return !out.with && (!out.part || out.takenOut) && isKeptApart(out.state);
}
/// What was in its place when it was overheated was fitted before, whenever that paper comes.
bool wasHotAfter(const OutOfService& out, CivilDate day) { return out.hottest && day < out.since; }

/// What is wrong on the day: a part of itself, or kept apart and fitted all the same.
Result<std::optional<Problem>> wrongOn(Books& books, const ItemFitted& fitted, CivilDate fittedOn, CivilDate on) {
    const auto facts = factsOf(books, fitted.item, on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (!*facts)
        return std::nullopt;
    const auto& item = **facts;
    const bool isFitted = item.balloon || item.carrier;
    if (isFitted && item.out && isApartItself(*item.out) && !wasHotAfter(*item.out, fittedOn))
        return item.out->state == ServiceState::Condemned
                   ? Problem{PartFault::Condemned, {item.id}, atKey("item")}
                   : Problem{PartFault::KeptApart, {item.id, reasonOf(*item.out)}, atKey("item")};
    if (!fitted.to)
        return std::nullopt;
    const auto itself = carriesItself(books, fitted.item, *fitted.to, on);
    if (!itself)
        return tl::unexpected(itself.error());
    return *itself ? std::optional(Problem{PartFault::CarriesItself, {fitted.item, *fitted.to}, atKey("to")})
                   : std::nullopt;
}

}

Findings askFittings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ItemFitted>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& fitted = std::get<ItemFitted>((*now)->body);
        for (const auto day : {(*now)->on, CivilDate::last()}) {
            const auto wrong = wrongOn(batch.books, fitted, (*now)->on, day);
            if (!wrong)
                return tl::unexpected(atLine(wrong.error(), line));
            if (*wrong) {
                problems.push_back(asAmended(atLine(**wrong, line), entry));
                break;
            }
        }
    }
    return problems;
}

}

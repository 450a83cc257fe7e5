// SPDX-License-Identifier: GPL-3.0-or-later

/// What the facts of an item rest on beyond its rows: what it is on, and what its clock began with.

#include "registry/clock.h"
#include "store/queries/facts_reader.h"

#include <algorithm>

namespace crownring {

void FactsReader::readOperations(CivilDate on) {
    for (auto& working : m_working)
        if (const auto* operations = m_balloons.operations(working.balloon, on))
            working.facts.operations = *operations;
}

StateWords FactsReader::wordsOf(const ItemId& item, Moment end) {
    const auto number = m_names.look(item);
    return number ? m_service.wordsOf(*number, end) : StateWords();
}

std::optional<OutOfService> FactsReader::takenOut(const Working& working, Moment end) {
    const auto isPast = [&](const Carried& each) { return each.until && each.until->at < end; };
    if (std::ranges::none_of(working.carried, isPast))
        return std::nullopt;
    return takenOutBefore(Stamp::before(end), working.carried, m_service.wordsOf(working.item, end),
                          [&](const ItemId& carrier) { return wordsOf(carrier, end); });
}

/// An item is out of service by itself, with what it is a part of, with what it was taken out of, or with the balloon
/// that it is on.
void FactsReader::readService(Moment end) {
    using Out = std::unordered_map<std::int64_t, OutOfService>;
    const auto items = m_one ? Out() : m_service.allOut(Subject::Item, end);
    const auto balloons = m_one ? Out() : m_service.allOut(Subject::Balloon, end);
    const auto outOf = [&](Subject sort, std::int64_t number) -> std::optional<OutOfService> {
        if (m_one)
            return m_service.outOf(sort, number, end);
        const auto& out = sort == Subject::Item ? items : balloons;
        const auto found = out.find(number);
        return found == out.end() ? std::nullopt : std::optional(found->second);
    };
    for (auto& working : m_working) {
        auto& out = working.facts.out;
        out = outOf(Subject::Item, working.item);
        // Of several the same one is told, whatever came first.
        std::ranges::sort(working.carriers, {}, [&](std::int64_t each) { return m_names.text(each); });
        for (const auto carrier : working.carriers) {
            if (out)
                break;
            out = outOf(Subject::Item, carrier);
            if (out)
                out->part = ItemId(m_names.text(carrier));
        }
        if (!out)
            out = takenOut(working, end);
        if (out || working.balloon == 0)
            continue;
        out = outOf(Subject::Balloon, working.balloon);
        if (out)
            out->with = working.facts.balloon;
    }
}

void FactsReader::finishClock(Working& working, Moment end) {
    auto& facts = working.facts;
    const auto& forward = facts.broughtForward;
    facts.clock = forward + working.use;
    if (forward.minutes && forward.landings && forward.inflations)
        return;
    m_use.load(working.item, facts.entered);
    facts.clock = clockBefore(Stamp::before(end), {facts.entered, forward}, facts.done,
                              [&](const Stamp& stamp) { return m_use.before(stamp); });
}

}

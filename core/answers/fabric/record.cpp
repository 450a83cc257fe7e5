// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/record.h"

#include "answers/fabric/gathering.h"
#include "problem/faults/fabric_fault.h"

#include <algorithm>
#include <limits>

namespace crownring {

namespace {

constexpr int monthsOfPace = 24;

/// Both directions of the cloth are one series; the harder bound of the two is that of the fabric.
bool isHarder(const StatedLimit& a, const StatedLimit& b, bool rises) {
    return rises ? boundOf(a) < boundOf(b) : boundOf(a) > boundOf(b);
}

const StatedLimit* limitFor(const TypeBook& book, const std::string& type, const FabricChannel& channel) {
    const StatedLimit* hardest = nullptr;
    for (const auto& limit : book.limits)
        if (limit.type.text() == type && channelOf(limit) == channel &&
            (!hardest || isHarder(limit, *hardest, channel.rises)))
            hardest = &limit;
    return hardest;
}

using ToldOfItems = std::map<ItemId, FabricTold>;

/// What was stated and repaired of all items, and the cloths of lots.
Result<void> readWorks(Books& books, CivilDate on, ToldOfItems& told, ClothOfLot& cloths) {
    const auto lines = books.told({Subject::Item, {}, {kindName<RepairMade>(), kindName<FabricStated>()}, on});
    if (!lines)
        return tl::unexpected(lines.error());
    for (const auto& line : *lines) {
        const auto& entry = nowOf(line);
        if (const auto* stated = std::get_if<FabricStated>(&entry.body)) {
            told[stated->item].stated.push_back(entry);
            if (!stated->fabric.empty())
                cloths[stated->lot] = stated->fabric;
        } else if (const auto* made = std::get_if<RepairMade>(&entry.body); made && made->place.gore && made->place.row)
            told[made->item].repairs.push_back(entry);
    }
    return {};
}

/// The over-temperatures of which heat and length were reported; few items have any.
Result<std::vector<Entry>> heatsOf(Books& books, const ItemFacts& item, CivilDate on) {
    std::vector<Entry> heats;
    if (std::ranges::none_of(item.events, [](const Occurrence& each) { return each.event == "over-temperature"; }))
        return heats;
    const auto history = books.history(std::nullopt, item.id, on, std::numeric_limits<int>::max());
    if (!history)
        return tl::unexpected(history.error());
    for (const auto& line : *history) {
        const auto* event = std::get_if<EventReported>(&nowOf(line).body);
        if (!line.voided && event && event->event == "over-temperature" && event->hottest && event->lasted)
            heats.push_back(nowOf(line));
    }
    return heats;
}

}

Result<FabricRecord> fabricRecord(Books& books, const FabricChannel& channel, CivilDate on) {
    const auto book = typeBook(books, on);
    const auto facts = books.facts({}, on);
    ToldOfItems told;
    ClothOfLot cloths;
    const auto works = readWorks(books, on, told, cloths);
    if (!book || !facts || !works)
        return tl::unexpected(!book ? book.error() : !facts ? facts.error() : works.error());
    FabricRecord record;
    record.channel = channel;
    record.on = on;
    FabricGathering gathering(books, record, *book, cloths);
    for (const auto& item : *facts) {
        const auto* limit =
            item.kind == ItemKind::Envelope && item.type ? limitFor(*book, *item.type, channel) : nullptr;
        if (!limit)
            continue;
        auto readings = books.readings(item.id, on);
        auto heats = heatsOf(books, item, on);
        if (!readings || !heats)
            return tl::unexpected(readings ? heats.error() : readings.error());
        auto& ofItem = told[item.id];
        ofItem.readings = std::move(*readings);
        ofItem.heats = std::move(*heats);
        if (const auto taken = gathering.take(item, *limit, ofItem); !taken)
            return tl::unexpected(taken.error());
    }
    if (record.envelopes.empty())
        return problem(FabricFault::NoManualBoundsIt, {testedAs(channel.series)});
    gathering.finish();
    return record;
}

FabricRecord before(const FabricRecord& record, CivilDate day) {
    auto earlier = record;
    earlier.readings.clear();
    earlier.fleet.readings.clear();
    for (std::size_t at = 0; at < record.readings.size(); ++at)
        if (record.readings[at].on < day) {
            earlier.readings.push_back(record.readings[at]);
            earlier.fleet.readings.push_back(record.fleet.readings[at]);
        }
    return earlier;
}

Result<YearlyPace> paceOfItem(Books& books, const ItemId& item, CivilDate on) {
    FlownHours hours(books, item);
    const auto last = endOfMonth(addMonths(on, -1, DayRule::Same)); // the last whole month
    std::vector<double> flown;
    std::optional<Hours> before;
    for (int back = monthsOfPace; back >= 0; --back) {
        const auto at = hours.at(endOfMonth(addMonths(last, -back, DayRule::Same)));
        if (!at)
            return tl::unexpected(at.error());
        if (before && *at)
            flown.push_back((**at - *before).value());
        before = *at;
    }
    const auto months = static_cast<std::int64_t>(flown.size());
    return paceOf(flown, addMonths(last, 1 - months, DayRule::Same).month());
}

}

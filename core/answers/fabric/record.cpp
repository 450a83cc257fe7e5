// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/record.h"

#include "answers/fabric/gathering.h"
#include "problem/faults/fabric_fault.h"

#include <algorithm>
#include <iterator>
#include <unordered_map>

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
        if (limit.type.text() == type && limit.asksIn() == Zone::Envelope && channelOf(limit) == channel &&
            (!hardest || isHarder(limit, *hardest, channel.rises)))
            hardest = &limit;
    return hardest;
}

/// An envelope that is followed, by the limit of its type's manual.
struct Followed {
    const ItemFacts* item = nullptr;
    const StatedLimit* limit = nullptr;
    FabricHistory history; ///< of the quantity that is followed
};

std::vector<Followed> followedAmong(const std::vector<ItemFacts>& facts, const TypeBook& book,
                                    const FabricChannel& channel) {
    std::vector<Followed> followed;
    for (const auto& item : facts)
        if (item.kind == ItemKind::Envelope && item.type)
            if (const auto* limit = limitFor(book, *item.type, channel))
                followed.push_back({&item, limit, {item.id, {}, {}, {}}});
    return followed;
}

/// The cloths of lots, by the latest statement about each.
ClothOfLot clothsOf(std::vector<Stamped<FabricStated>> stated) {
    std::ranges::sort(stated, {}, &Stamped<FabricStated>::stamp);
    ClothOfLot cloths;
    for (const auto& [stamp, body] : stated)
        if (!body.fabric.empty())
            cloths[body.lot] = body.fabric;
    return cloths;
}

/// Reads the histories of what is followed. @return what was stated of the lots of all envelopes
Result<ClothOfLot> readHistories(Books& books, CivilDate on, const std::string& quantity,
                                 std::vector<Followed>& followed) {
    std::unordered_map<ItemId, Followed*> byId;
    for (auto& each : followed)
        byId.emplace(each.item->id, &each);
    std::vector<Stamped<FabricStated>> stated;
    auto told = books.fabric({}, on, [&](const FabricHistory& history) {
        stated.insert(stated.end(), history.stated.begin(), history.stated.end());
        const auto found = byId.find(history.item);
        if (found == byId.end())
            return;
        auto& mine = found->second->history;
        mine.stated = history.stated;
        std::ranges::copy_if(history.readings, std::back_inserter(mine.readings), [&](const auto& reading) {
            return reading.body.quantity == quantity && reading.body.place.zone == Zone::Envelope;
        });
        std::ranges::copy_if(history.repairs, std::back_inserter(mine.repairs), [](const auto& repair) {
            const auto& place = repair.body.place;
            return place.gore && place.row && place.zone == Zone::Envelope;
        });
    });
    if (!told)
        return tl::unexpected(told.error());
    return clothsOf(std::move(stated));
}

Result<FlownHours> hoursOf(Books& books, const std::vector<Followed>& followed) {
    FlownHours hours;
    for (const auto& envelope : followed) {
        const auto want = [&](const auto& stamped) {
            for (const auto& each : stamped)
                hours.want(envelope.item->id, each.stamp.at.on());
        };
        want(envelope.history.readings);
        want(envelope.history.repairs);
        want(overheatingsOf(*envelope.item));
    }
    if (auto read = hours.read(books); !read)
        return tl::unexpected(read.error());
    return hours;
}

}

Result<FabricRecord> fabricRecord(Books& books, const FabricChannel& channel, CivilDate on) {
    const auto book = typeBook(books, on);
    const auto facts = books.facts({}, on);
    if (!book || !facts)
        return tl::unexpected(!book ? book.error() : facts.error());
    auto followed = followedAmong(*facts, *book, channel);
    const auto cloths = readHistories(books, on, channel.quantity, followed);
    if (!cloths)
        return tl::unexpected(cloths.error());
    const auto hours = hoursOf(books, followed);
    if (!hours)
        return tl::unexpected(hours.error());
    FabricRecord record;
    record.channel = channel;
    record.on = on;
    FabricGathering gathering(record, *book, *cloths, *hours);
    for (const auto& each : followed)
        if (const auto taken = gathering.take(*each.item, *each.limit, each.history); !taken)
            return tl::unexpected(taken.error());
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
    const auto last = endOfMonth(addMonths(on, -1, DayRule::Same)); // the last whole month
    const auto monthsBack = [&](int back) { return endOfMonth(addMonths(last, -back, DayRule::Same)); };
    FlownHours hours;
    for (int back = monthsOfPace; back >= 0; --back)
        hours.want(item, monthsBack(back));
    if (const auto read = hours.read(books); !read)
        return tl::unexpected(read.error());
    std::vector<double> flown;
    std::optional<Hours> before;
    for (int back = monthsOfPace; back >= 0; --back) {
        const auto at = hours.at(item, monthsBack(back));
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

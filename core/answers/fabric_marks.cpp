// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric_marks.h"

#include "answers/fabric_channel.h"
#include "bench/release/bench_file.h"
#include "registry/reading_said.h"
#include "rules/due/defects.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

using State = FabricMark::State;

struct Judgeable {
    Stamp stamp;
    ReadingTaken body;
    ReadingState state;
};

/// What else than readings bears on the fabric of an item.
struct Works {
    std::vector<Entry> repairs; ///< with a place
    std::map<EntryId, DefectId> defectOfReading;
};

Result<Works> worksOn(Books& books, const ItemFacts& item, CivilDate on) {
    Works works;
    const auto repairs = books.told({Subject::Item, item.id.text(), {kindName<RepairMade>()}, on});
    if (!repairs)
        return tl::unexpected(repairs.error());
    for (const auto& line : *repairs)
        if (const auto* made = std::get_if<RepairMade>(&nowOf(line).body); made && made->place.gore && made->place.row)
            works.repairs.push_back(nowOf(line));
    for (const auto& mark : item.defects) {
        if (mark.kind != DefectMark::Kind::Found)
            continue;
        const auto found = books.told({Subject::Defect, mark.defect.text(), {kindName<DefectFound>()}, on});
        if (!found)
            return tl::unexpected(found.error());
        for (const auto& line : *found)
            if (const auto* defect = std::get_if<DefectFound>(&nowOf(line).body); defect && defect->reading)
                works.defectOfReading[*defect->reading] = defect->defect;
    }
    return works;
}

bool isOpen(const ItemFacts& item, const DefectId& defect) {
    return std::ranges::any_of(openDefects(item), [&](const OpenDefect& open) { return open.found->defect == defect; });
}

bool isReplaced(const Judgeable& reading, const std::vector<Entry>& repairs) {
    return std::ranges::any_of(repairs, [&](const Entry& entry) {
        return std::get<RepairMade>(entry.body).place == reading.body.place && reading.stamp < stampOf(entry);
    });
}

/// "98 N, gore 3, row 12; at least 133.4 N"
Argument said(const Judgeable& reading) {
    const auto& body = reading.body;
    Argument what = InUnit{body.value, body.unit};
    if (body.held)
        what = Phrase{ReadingPhrase::HeldAt, {std::move(what)}};
    what = inPlace(std::move(what), body.place);
    return reading.state.limit ? Phrase{ReadingPhrase::WithLimit, {std::move(what), *reading.state.limit}} : what;
}

/// What speaks of one channel, in the order of stamps.
std::vector<Judgeable> speaking(const std::vector<Judgeable>& all, const std::vector<Entry>& repairs) {
    std::vector<Judgeable> latest;
    for (const auto& reading : all) {
        std::erase_if(latest, [&](const Judgeable& earlier) { return takesThePlaceOf(reading.body, earlier.body); });
        latest.push_back(reading);
    }
    std::erase_if(latest, [&](const Judgeable& reading) { return isReplaced(reading, repairs); });
    return latest;
}

class Weighing {
public:
    Weighing(const ItemFacts& item, const Works& works) : m_item(item), m_works(works) {}

    State stateOf(const Judgeable& reading) const {
        switch (reading.state.judgement) {
        case Judgement::Fails:
            return reading.state.retires == Retired::Item ? State::Item
                   : isSettled(reading)                   ? State::Undecided
                                                          : State::Panel;
        case Judgement::Passes:
            return !reading.body.held && reading.state.share.value_or(0) < closeToBound ? State::Near : State::Within;
        default:
            return State::Undecided;
        }
    }

private:
    /// The defect that was found with it is cleared.
    bool isSettled(const Judgeable& reading) const {
        const auto defect = m_works.defectOfReading.find(reading.stamp.id);
        return defect != m_works.defectOfReading.end() && !isOpen(m_item, defect->second);
    }

    const ItemFacts& m_item;
    const Works& m_works;
};

/// Of two readings the one that the mark tells of: the worse state, then the smaller share. Undecided is the least,
/// since one reading that decides is enough to know something.
std::pair<int, double> weightOf(State state, const Judgeable& reading) {
    const int rank = state == State::Undecided ? -1 : static_cast<int>(state);
    return {rank, -reading.state.share.value_or(0)};
}

std::optional<FabricMark> markOf(const ItemFacts& item, const Works& works, const FabricChannel& channel,
                                 const std::vector<Judgeable>& all) {
    const Weighing weighing(item, works);
    const auto latest = speaking(all, works.repairs);
    const Judgeable* worst = nullptr;
    State state = State::Undecided;
    const auto weigh = [&](const Judgeable& reading) {
        const auto of = weighing.stateOf(reading);
        if (!worst || weightOf(of, reading) > weightOf(state, *worst)) {
            worst = &reading;
            state = of;
        }
    };
    for (const auto& reading : latest)
        weigh(reading);
    for (const auto& reading : all) // what retires the envelope is not outlived by a later reading
        if (weighing.stateOf(reading) == State::Item)
            weigh(reading);
    if (!worst)
        return std::nullopt;
    FabricMark mark;
    mark.state = state;
    mark.quantity = channel.quantity;
    mark.title = testedAs(channel.series);
    mark.what = said(*worst);
    mark.source = worst->state.source;
    mark.stamp = worst->stamp;
    mark.share = worst->body.held ? 0 : worst->state.share.value_or(0);
    return mark;
}

Result<void> addTo(ItemFacts& item, Books& books, const TypeBook& book, CivilDate on) {
    const auto channels = channelsOf(book, *item.type);
    if (channels.empty())
        return {};
    const auto readings = books.readings(item.id, on);
    if (!readings)
        return tl::unexpected(readings.error());
    if (readings->empty())
        return {};
    const auto works = worksOn(books, item, on);
    if (!works)
        return tl::unexpected(works.error());
    for (const auto& channel : channels) {
        std::vector<StatedLimit> limits;
        for (const auto& limit : book.limits)
            if (limit.kind == item.kind && limit.type.text() == *item.type && limit.quantity == channel.quantity &&
                seriesOf(limit.quantity, limit.conditions) == channel.series)
                limits.push_back(limit);
        std::vector<Judgeable> judged;
        for (const auto& entry : *readings) {
            const auto& body = std::get<ReadingTaken>(entry.body);
            if (body.quantity != channel.quantity)
                continue;
            auto state = stateOf(body, limits);
            if (state.judgement != Judgement::NoLimit && state.judgement != Judgement::Incomparable)
                judged.push_back({stampOf(entry), body, std::move(state)});
        }
        if (auto mark = markOf(item, *works, channel, judged))
            item.fabric.push_back(std::move(*mark));
    }
    return {};
}

}

Result<void> addFabricMarks(Books& books, std::vector<ItemFacts>& facts, CivilDate on) {
    const auto book = typeBook(books, on);
    if (!book)
        return tl::unexpected(book.error());
    if (book->limits.empty())
        return {};
    for (auto& item : facts)
        if (item.kind == ItemKind::Envelope && item.type)
            if (auto added = addTo(item, books, *book, on); !added)
                return added;
    return {};
}

}

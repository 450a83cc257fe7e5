// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/fleet_sheet.h"

#include "answers/due.h"
#include "words/sentence.h"

#include <algorithm>
#include <limits>
#include <set>

namespace crownring::screen {

namespace {

/// So much mended is asked for anew as a whole: a sheet copies what was mended before.
constexpr std::size_t mostMended = 2000;

template <class Key, class Value>
const Value* found(const std::unordered_map<Key, Value>& map, const Key& key) {
    const auto at = map.find(key);
    return at == map.end() ? nullptr : &at->second;
}

const std::vector<Adoption>& adoptionsOf(const DueList& list) {
    static const std::vector<Adoption> none;
    return list.obligations ? list.obligations->adoptions() : none;
}

/// The rows of each item, by counting, in the order of the list.
void sortOutRows(ListedFleet& fleet) {
    const auto& items = fleet.due.items;
    const auto& rows = fleet.due.rows;
    const auto* first = items.data();
    fleet.firstRow.assign(items.size() + 1, 0);
    for (const auto& row : rows)
        ++fleet.firstRow[static_cast<std::size_t>(row.item - first) + 1];
    for (std::size_t at = 1; at < fleet.firstRow.size(); ++at)
        fleet.firstRow[at] += fleet.firstRow[at - 1];
    auto next = fleet.firstRow;
    fleet.rowsOfItems.resize(rows.size());
    for (std::uint32_t number = 0; number < rows.size(); ++number)
        fleet.rowsOfItems[next[static_cast<std::size_t>(rows[number].item - first)]++] = number;
}

void sortOutItems(ListedFleet& fleet) {
    const auto& items = fleet.due.items;
    fleet.places.reserve(items.size());
    for (std::uint32_t place = 0; place < items.size(); ++place) {
        fleet.places.emplace(items[place].id, place);
        if (items[place].balloon)
            fleet.itemsOfBalloon[*items[place].balloon].push_back(place);
    }
    for (auto& [balloon, places] : fleet.itemsOfBalloon)
        std::ranges::sort(places, {}, [&](std::uint32_t place) {
            return std::tie(items[place].kind, items[place].place, items[place].id);
        });
}

void nameRequirements(ListedFleet& fleet) {
    fleet.titles = std::make_shared<const words::Titles>(words::titlesOf(adoptionsOf(fleet.due)));
}

template <class Thing>
std::vector<const Thing*> pointersTo(const std::vector<Thing>& things) {
    std::vector<const Thing*> pointers;
    pointers.reserve(things.size());
    for (const auto& each : things)
        pointers.push_back(&each);
    return pointers;
}

bool before(const DueRow* a, const DueRow* b) { return comesBefore(*a, *b); }

}

FleetSheet::FleetSheet(DueList due, GovernedFleet governed, std::int64_t upTo) : m_upTo(upTo) {
    ListedFleet listed;
    listed.due = std::move(due);
    listed.upTo = upTo;
    m_rowCount = listed.due.rows.size();
    sortOutRows(listed);
    sortOutItems(listed);
    nameRequirements(listed);
    m_listed = std::make_shared<const ListedFleet>(std::move(listed));
    m_governed = std::make_shared<const GovernedFleet>(std::move(governed));
}

Result<Sheet> FleetSheet::listed(Record& record, CivilDate on) {
    const auto upTo = latestNumber(record);
    if (!upTo)
        return tl::unexpected(upTo.error());
    auto list = crownring::due(record, {}, on);
    if (!list)
        return tl::unexpected(list.error());
    return std::make_shared<const FleetSheet>(std::move(*list), GovernedFleet{}, *upTo);
}

Result<Sheet> FleetSheet::governed(const Sheet& listed, Record& record) {
    GovernedFleet governed;
    auto cards = record.balloons(listed->on());
    if (!cards)
        return tl::unexpected(cards.error());
    governed.balloons = std::move(*cards);
    std::ranges::sort(governed.balloons, {}, &BalloonCard::balloon);
    auto governing = crownring::governing(record, listed->m_listed->due, true);
    if (!governing)
        return tl::unexpected(governing.error());
    governed.headlines = std::move(governing->balloons);
    governed.items = std::move(governing->items);
    const Sheet sheet(
        new FleetSheet(listed->m_listed, std::make_shared<const GovernedFleet>(std::move(governed)), listed->m_upTo));
    static_cast<void>(sheet->rows()); // gathered here and not on the screen's thread
    return sheet;
}

Result<Sheet> FleetSheet::mended(const Sheet& sheet, Record& record) {
    const auto touched = touchedSince(record, record, sheet->m_upTo);
    if (!touched)
        return tl::unexpected(touched.error());
    if (touched->upTo == sheet->m_upTo)
        return sheet;
    const bool known =
        std::ranges::all_of(touched->items, [&](const ItemId& id) { return sheet->item(id); }) &&
        std::ranges::all_of(touched->balloons, [&](const Registration& each) { return sheet->card(each); });
    if (touched->everything || !known || sheet->m_again.size() > mostMended)
        return Sheet();
    std::shared_ptr<FleetSheet> next(new FleetSheet(sheet->m_listed, sheet->m_governed, touched->upTo));
    next->m_again = sheet->m_again;
    next->m_cards = sheet->m_cards;
    next->m_headlines = sheet->m_headlines;
    next->m_rowCount = sheet->m_rowCount;
    next->m_mend = sheet->mendFor(*touched);
    next->m_mend.of = sheet;
    if (const auto answered = next->ask(record, next->m_mend.items); !answered)
        return tl::unexpected(answered.error());
    for (const auto& balloon : touched->balloons)
        if (const auto answered = next->askCard(record, *sheet->card(balloon)); !answered)
            return tl::unexpected(answered.error());
    return Sheet(std::move(next));
}

FleetSheet::Mend FleetSheet::mendFor(const Touched& touched) const {
    auto balloons = touched.balloons;
    Mend mend;
    for (const auto& id : touched.items)
        if (const auto& balloon = item(id)->balloon)
            balloons.insert(*balloon);
        else
            mend.items.push_back(id);
    for (const auto& balloon : balloons)
        for (const auto* item : itemsOf(balloon))
            mend.items.push_back(item->id);
    mend.balloons.assign(balloons.begin(), balloons.end());
    return mend;
}

/// Whole balloons and loose items: what governs a balloon is seen from all that is on it.
Result<void> FleetSheet::ask(Books& books, const std::vector<ItemId>& items) {
    if (items.empty())
        return {};
    auto list = crownring::due(books, {{}, items}, on());
    if (!list)
        return tl::unexpected(list.error());
    const auto due = std::make_shared<const DueList>(std::move(*list));
    const auto governing = crownring::governing(books, *due, false);
    if (!governing)
        return tl::unexpected(governing.error());
    for (const auto& item : due->items) {
        m_rowCount -= rowsOf(item.id).size();
        const auto governs = governing->items.find(item.id);
        m_again[item.id] = {due, &item, {}, governs == governing->items.end() ? nullptr : governs->second};
        if (item.balloon)
            m_headlines[*item.balloon] = {};
    }
    for (const auto& row : due->rows)
        m_again[row.item->id].rows.push_back(&row);
    m_rowCount += due->rows.size();
    for (const auto& [balloon, headline] : governing->balloons)
        m_headlines[balloon] = headline;
    return {};
}

/// What it has flown; what is on it stays as it was.
Result<void> FleetSheet::askCard(Books& books, const BalloonCard& before) {
    const auto ever = CivilDate::fromDayNumber(std::numeric_limits<std::int32_t>::min());
    const auto flights = books.flights(before.balloon, ever, on());
    if (!flights)
        return tl::unexpected(flights.error());
    auto card = before;
    card.flights = std::ssize(*flights);
    card.flown = {};
    card.lastFlight.reset();
    for (const auto& flight : *flights) {
        card.flown = card.flown + flight.use;
        card.lastFlight = flight.stamp.at.on();
    }
    m_cards[before.balloon] = std::make_shared<const BalloonCard>(std::move(card));
    return {};
}

void FleetSheet::gather() const {
    const auto& due = m_listed->due;
    DueRows mended;
    for (const auto& [id, again] : m_again)
        mended.insert(mended.end(), again.rows.begin(), again.rows.end());
    std::ranges::sort(mended, before);
    std::vector<bool> isMended(due.items.size());
    auto items = pointersTo(due.items);
    for (const auto& [id, again] : m_again) {
        const auto place = m_listed->places.at(id);
        isMended[place] = true;
        items[place] = again.item;
    }
    DueRows rows;
    rows.reserve(due.rows.size() + mended.size());
    auto next = mended.begin();
    for (const auto& row : due.rows) {
        if (isMended[static_cast<std::size_t>(row.item - due.items.data())])
            continue;
        for (; next != mended.end() && comesBefore(**next, row); ++next)
            rows.push_back(*next);
        rows.push_back(&row);
    }
    rows.insert(rows.end(), next, mended.end());
    auto balloons = pointersTo(m_governed->balloons);
    for (auto& each : balloons)
        if (const auto* card = found(m_cards, each->balloon))
            each = card->get();
    m_rows = Row(std::move(rows));
    m_items = Row(std::move(items));
    m_balloons = Row(std::move(balloons));
}

const std::vector<Adoption>& FleetSheet::adoptions() const { return adoptionsOf(m_listed->due); }

const Row<DueRow>& FleetSheet::rows() const {
    std::call_once(m_gathered, [this] { gather(); });
    return m_rows;
}

const Row<ItemFacts>& FleetSheet::items() const {
    std::call_once(m_gathered, [this] { gather(); });
    return m_items;
}

const Row<BalloonCard>& FleetSheet::balloons() const {
    std::call_once(m_gathered, [this] { gather(); });
    return m_balloons;
}

const ItemFacts* FleetSheet::item(const ItemId& item) const {
    if (const auto* again = found(m_again, item))
        return again->item;
    const auto* place = found(m_listed->places, item);
    return place ? &m_listed->due.items[*place] : nullptr;
}

DueRows FleetSheet::rowsOf(const ItemId& item) const {
    if (const auto* again = found(m_again, item))
        return again->rows;
    DueRows rows;
    if (const auto* place = found(m_listed->places, item))
        for (auto at = m_listed->firstRow[*place]; at < m_listed->firstRow[*place + 1]; ++at)
            rows.push_back(&m_listed->due.rows[m_listed->rowsOfItems[at]]);
    return rows;
}

DueRows FleetSheet::rowsOf(const Registration& balloon) const {
    DueRows rows;
    for (const auto* item : itemsOf(balloon))
        std::ranges::copy(rowsOf(item->id), std::back_inserter(rows));
    std::ranges::sort(rows, before);
    return rows;
}

std::vector<const ItemFacts*> FleetSheet::itemsOf(const Registration& balloon) const {
    std::vector<const ItemFacts*> items;
    if (const auto* places = found(m_listed->itemsOfBalloon, balloon))
        for (const auto place : *places)
            items.push_back(item(m_listed->due.items[place].id));
    return items;
}

const BalloonCard* FleetSheet::card(const Registration& balloon) const {
    if (const auto* card = found(m_cards, balloon))
        return card->get();
    const auto& cards = m_governed->balloons;
    const auto at = std::ranges::lower_bound(cards, balloon, {}, &BalloonCard::balloon);
    return at == cards.end() || at->balloon != balloon ? nullptr : &*at;
}

const DueRow* FleetSheet::worstOf(const ItemId& item) const {
    if (const auto* again = found(m_again, item))
        return again->governs;
    if (const auto* row = found(m_governed->items, item))
        return *row;
    const auto atNoPace = [](const ItemFacts&) { return RecentUse{{}, Days(0)}; }; // nothing else is known yet
    return crownring::headlineOf(rowsOf(item), atNoPace, on()).row;
}

const Headline& FleetSheet::headlineOf(const Registration& balloon) const {
    static const Headline none;
    if (const auto* again = found(m_headlines, balloon))
        return *again;
    const auto* headline = found(m_governed->headlines, balloon);
    return headline ? *headline : none;
}

}
